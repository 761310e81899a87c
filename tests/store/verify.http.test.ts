/** Damage is reported in a sentence, and the rest of the yard stays readable. */
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { run as rebuild } from '../../src/node/commands/rebuild.ts'
import { run as verify } from '../../src/node/commands/verify.ts'
import { openConnection, openStore, storeOn } from '../../src/store/node.ts'
import { add, inspection, intake, outcome, projectionBytes, TODAY } from './helpers.ts'

let connection = openConnection(':memory:')
let store = storeOn(connection)
let first = ''

beforeEach(() => {
  connection = openConnection(':memory:')
  store = storeOn(connection)
  first = add(store, intake('A-1'), inspection('A-1', '2026-05-15', { note: 'Quiet.' }))
  add(store, intake('B-1'), outcome('B-1', '2026-05-20'))
})

const insertRow = (seq: number, payload: string, colony = first): void => {
  connection.raw
    .prepare(
      `INSERT INTO entry (seq, id, colony, kind, on_day, recorded_at, recorded_by, payload)
       VALUES (?, ?, ?, 'inspection', '2026-05-16', '', '', ?)`,
    )
    .run(seq, `row-${seq}`, colony, payload)
}

test('a whole store has nothing to report', () => {
  expect(store.verify()).toEqual({ ok: true, problems: [], compared: true, colonies: 2, entries: 4 })
})

test('rows that cannot be read are reported; reading, planning and writing go on without them', () => {
  insertRow(10, '{"kind":"inspection","opened":"perhaps"}')
  connection.raw.pragma('ignore_check_constraints = ON')
  insertRow(11, 'not json')
  connection.raw.pragma('ignore_check_constraints = OFF')
  expect(store.verify().problems).toEqual([
    expect.stringMatching(/^integrity check: CHECK constraint failed/),
    'entry 10 (row-10) has no digest: something else than this program wrote it',
    'entry 11 (row-11) has no digest: something else than this program wrote it',
    expect.stringMatching(/^entry 10 \(row-10\) does not fit the schema \(id: /),
    'entry 11 (row-11) is not JSON',
  ])
  expect(store.colony('A-1')?.history.entries).toHaveLength(2)
  expect(store.entry('row-10')).toBeNull()
  expect(store.changes()).toHaveLength(4)
  expect([...store.journal()]).toHaveLength(4)
  expect([...store.histories()]).toHaveLength(2)
  add(store, inspection('A-1', '2026-05-17'))
  expect(store.today(TODAY).map((c) => c.tag)).toEqual(['A-1'])
  expect(store.rebuild(TODAY)).toEqual({ colonies: 2, entries: 7 })
})

test('an unreadable intake keeps its colony on the round until somebody rebuilds', () => {
  connection.raw.exec(`DROP TRIGGER entry_no_update;
    UPDATE entry SET payload = json_remove(payload, '$.yard') WHERE id = '${first}'`)
  // Found when the book is opened: a store that has read the row before has no reason to read it again.
  store = storeOn(connection)
  expect(store.verify().problems).toEqual([
    'the journal has lost its guard entry_no_update',
    expect.stringContaining('is not as it was written, or one before it is missing'),
    expect.stringMatching(/does not fit the schema \(yard: /),
    expect.stringContaining('has a projection but no intake'),
  ])
  expect(store.refresh('2026-06-02')).toBe(1)
  expect(store.today('2026-06-02').map((c) => c.tag)).toEqual(['A-1'])
  expect(store.colony('A-1')).toBeNull()
})

test.each([
  [
    'a field changed',
    "UPDATE colony SET yard = 'Elsewhere' WHERE tag = 'A-1'",
    'colony A-1: its projection differs from a rebuild in yard; "resettle rebuild" makes it again',
  ],
  [
    'a plan changed',
    "UPDATE colony SET plan = '{}' WHERE tag = 'B-1'",
    'colony B-1: its projection differs from a rebuild in plan',
  ],
  [
    'a plan of a day after it left',
    "UPDATE colony SET as_of = '2026-06-01' WHERE tag = 'B-1'",
    'colony B-1: its projection differs from a rebuild in asOf',
  ],
  [
    'a check lost',
    'DELETE FROM planned_check WHERE place = 0',
    'colony A-1: its planned checks differ from a rebuild',
  ],
  [
    'a stay changed',
    "UPDATE stay SET queens = 5, path = 'lost' WHERE tag = 'B-1'",
    'colony B-1: its stay differs from a rebuild in path, queens; "resettle rebuild" makes it again',
  ],
  ['a stay lost', 'DELETE FROM stay', 'colony B-1: has no row of its stay'],
  [
    'a stay too many',
    'INSERT INTO stay SELECT (SELECT id FROM colony WHERE tag = \'A-1\'), tag, removal_type, yard, intake_on, recorded_at, queen, brood_salvaged, outdoor_c, hours_open_to_boxed, method, removed_by, looked_after_by, last_seen, outcome, left_on, day_unknown, "into", path, queenright_on, queens, feed, other, frames, unpriced_queens, unpriced_feed, visits, phase_before_loss FROM stay',
    'colony A-1: has a row of a stay that is not over',
  ],
  ['a colony lost', "DELETE FROM colony WHERE tag = 'A-1'", 'colony A-1: has no projection'],
  [
    'an unknown setting',
    "INSERT INTO setting VALUES ('colour', '1')",
    'setting "colour" is not one this version knows',
  ],
  [
    'a setting that cannot be',
    "INSERT INTO setting VALUES ('timeZone', '5')",
    'setting "timeZone" cannot be read: 5',
  ],
  [
    'a column that disagrees',
    "DROP TRIGGER entry_no_update; UPDATE entry SET on_day = '2026-05-14' WHERE seq = 2",
    ': day disagrees with its payload',
  ],
])('found: %s', (_what, damage, sentence) => {
  connection.raw.exec(damage)
  const { ok, problems } = store.verify()
  expect(ok).toBe(false)
  expect(problems.join('\n')).toContain(sentence)
})

test('a rebuild mends the projections', () => {
  const whole = projectionBytes(connection)
  connection.raw.exec("DELETE FROM planned_check; UPDATE colony SET plan = 'x', to_do = 0")
  expect(store.verify().ok).toBe(false)
  // A plan that cannot be read is recomputed from the journal.
  expect(store.colony('A-1')?.summary.plan.tag).toBe('A-1')
  expect(store.rebuild(TODAY)).toEqual({ colonies: 2, entries: 4 })
  expect(projectionBytes(connection)).toBe(whole)
})

test('entries without an intake, and two colonies under one tag', () => {
  insertRow(20, JSON.stringify({ ...inspection('X', '2026-05-16'), id: 'row-20' }), 'nobody')
  expect(store.verify().problems.join('\n')).toContain('belongs to a colony without an intake: nobody')
  connection.raw.exec("DROP TRIGGER entry_no_delete; DELETE FROM entry WHERE kind = 'outcome' OR seq = 20")
  const twin = intake('a-1')
  connection.raw
    .prepare(
      `INSERT INTO entry (id, colony, kind, on_day, recorded_at, recorded_by, payload)
       VALUES (?, ?, 'intake', ?, '', '', ?)`,
    )
    .run(twin.id, twin.id, twin.on, JSON.stringify(twin))
  store.rebuild(TODAY)
  expect(store.verify().problems.join('\n')).toContain('two colonies in the yard have the tag a-1')
  expect(store.colony('A-1')).not.toBeNull()
})

let folder = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'resettle-'))
  vi.stubEnv('RESETTLE_DATA', folder)
})
afterEach(() => {
  vi.unstubAllEnvs()
  vi.restoreAllMocks()
  rmSync(folder, { recursive: true, force: true })
})

interface Said {
  code: number
  out: string
  err: string
}

async function said(command: (args: string[]) => Promise<number>, ...args: string[]): Promise<Said> {
  const [out, err] = [process.stdout, process.stderr].map((s) => vi.spyOn(s, 'write').mockReturnValue(true))
  const code = await command(args)
  const text = (spy: typeof out): string => spy?.mock.calls.map((c) => String(c[0])).join('') ?? ''
  const result = { code, out: text(out), err: text(err) }
  vi.restoreAllMocks()
  return result
}

test('the commands: whole, damaged, mended, missing', async () => {
  const file = join(folder, 'resettle.db')
  expect(await said(verify)).toEqual({ code: 2, out: '', err: `resettle verify: no database at ${file}\n` })
  expect((await said(rebuild)).code).toBe(2)
  const real = openStore(file)
  add(real, intake('A-1'))
  real.close()
  expect(await said(verify)).toEqual({ code: 0, out: 'whole: 1 entries, 1 colonies\n', err: '' })
  const damaged = openConnection(file)
  damaged.raw.exec("UPDATE colony SET yard = 'Elsewhere'")
  damaged.raw.close()
  expect(await said(verify)).toMatchObject({ code: 1, out: '', err: expect.stringContaining('colony A-1: ') })
  expect(await said(rebuild, '--as-of', 'soon')).toMatchObject({
    code: 2,
    err: expect.stringContaining('"soon"'),
  })
  expect(await said(rebuild)).toEqual({ code: 0, out: 'made again: 1 colonies from 1 entries\n', err: '' })
  expect((await said(verify)).code).toBe(0)
  expect((await said(verify, '--nonsense')).code).toBe(2)
})

test('plans that other rules made are not compared, and that is said, not called damage', async () => {
  const file = join(folder, 'resettle.db')
  const real = openStore(file)
  add(real, intake('A-1'))
  real.close()
  const other = openConnection(file)
  other.raw.exec("UPDATE colony SET plan = json_set(plan, '$.day', 99); PRAGMA user_version = 12345")
  other.raw.close()
  for (const args of [[], [file]])
    expect(await said(verify, ...args)).toEqual({
      code: 0,
      out: 'whole: 1 entries, 1 colonies\n',
      err: expect.stringContaining('plans in it were not compared'),
    })
})

const FIXTURES = join(import.meta.dirname, 'fixtures')

test.each(readdirSync(FIXTURES))('a backup of any schema is verified and left as it is: %s', async (name) => {
  const backup = join(folder, name)
  cpSync(join(FIXTURES, name), backup)
  const before = readFileSync(backup)
  const { code, out, err } = await said(verify, backup)
  expect([code, out], err).toEqual([0, expect.stringMatching(/^whole: \d+ entries, [1-9]/)])
  expect(err).not.toContain('start the server')
  expect(readFileSync(backup).equals(before)).toBe(true)
  expect(readdirSync(folder)).toEqual([name])
})

test('damage in a backup of an earlier schema is found all the same', async () => {
  const backup = join(folder, 'old.sqlite')
  cpSync(join(FIXTURES, '0000_journal.db'), backup)
  const spoilt = new Database(backup)
  spoilt.exec("DROP TRIGGER entry_no_update; UPDATE entry SET on_day = '2020-01-01' WHERE seq = 2")
  spoilt.exec(`CREATE TRIGGER entry_no_update BEFORE UPDATE ON entry BEGIN SELECT RAISE(ABORT, 'no'); END`)
  spoilt.close()
  const { code, err } = await said(verify, backup)
  expect(code).toBe(1)
  expect(err).toContain('is of an earlier version: a copy of it, brought up to date, is verified')
  expect(err).toContain('day disagrees with its payload')
})

test('a torn file is reported, not read as if it were whole', async () => {
  const file = join(folder, 'resettle.db')
  const real = openStore(file)
  for (let n = 1; n < 40; n++) add(real, intake(`A-${n}`))
  real.close()
  const torn = join(folder, 'torn.db')
  cpSync(file, torn)
  const bytes = readFileSync(torn)
  bytes.fill(0xff, 4096 * 3, statSync(torn).size - 4096)
  writeFileSync(torn, bytes)
  const { code, err } = await said(verify, torn)
  expect(code).toBeGreaterThan(0)
  expect(err).toMatch(/integrity check|cannot be read through|is damaged/)
})
