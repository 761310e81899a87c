/** A whole yard out and in again: the same yard. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { v7 } from 'uuid'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { exportLines } from '../../../src/features/data/yard-export.ts'
import { importYard } from '../../../src/features/data/yard-import.ts'
import type { EntryId } from '../../../src/ids.ts'
import { run as exportCommand } from '../../../src/node/commands/export.ts'
import { run as importCommand } from '../../../src/node/commands/import.ts'
import { EMPTY_SHEET } from '../../../src/records/removal-sheet.ts'
import type { Store } from '../../../src/store/index.ts'
import { openConnection, openStore, storeOn } from '../../../src/store/node.ts'
import { add, inspection, intake, memoryStore, outcome, projectionBytes, TODAY } from '../../store/helpers.ts'
import { byDay, Dice, randomFrom, story } from '../../store/yard.ts'
import { testYard } from '../../support/yard-app.ts'

const AT = { today: TODAY, zone: 'UTC', now: new Date(`${TODAY}T12:00:00Z`) }

const exported = (store: Store, withPrivate = true): string =>
  [...exportLines(store, { private: withPrivate })].join('')

const lines = (text: string) => () => text.split('\n')

/** A season with corrections, withdrawals, and tags used again. */
function season(store: Store, seed: number): void {
  const dice = new Dice(randomFrom(seed))
  const colonies = Array.from({ length: 12 }, (_, n) =>
    story(dice, {
      tag: `C-${n % 5}`,
      intakeOn: `2026-0${1 + Math.floor(n / 5)}-01`,
      until: '2026-05-31',
      stay: 20,
      leaves: 1,
    }),
  )
  for (const { day, entries } of byDay(colonies.flat())) {
    const result = store.append(entries, {
      today: day,
      recordedAt: `${day}T18:00:00.000Z`,
      recordedBy: 'Odalys',
    })
    if (!result.ok) throw new Error(JSON.stringify(result.problems))
  }
  store.settings.set('yardName', 'Quarry yard')
  store.settings.set('protocol', { holdDays: 35 })
  store.refresh(TODAY)
}

test.each([1, 2, 3])(
  'round trip of a random season, seed %i: the same file, the same journal, the same plans',
  (seed) => {
    const [from, to] = [openConnection(':memory:'), openConnection(':memory:')]
    const [a, b] = [storeOn(from), storeOn(to)]
    season(a, seed)
    const text = exported(a)
    expect(importYard(b, lines(text), AT)).toMatchObject({ ok: true, already: 0, settings: 2 })
    expect(exported(b)).toBe(text)
    expect([...b.journal()]).toEqual([...a.journal()])
    expect(projectionBytes(to)).toBe(projectionBytes(from))
    expect(b.verify()).toMatchObject({ ok: true })
    // Taking it in again changes nothing.
    expect(importYard(b, lines(text), AT)).toMatchObject({ ok: true, accepted: 0, settings: 0 })
    expect(exported(b)).toBe(text)
  },
)

test('removal sheets in every version, their boxes, and the history of the protocol go along', () => {
  const [a, b] = [memoryStore(), memoryStore()]
  const id = add(a, intake('A-1'))
  const second = add(a, intake('A-2'))
  const stamp = { savedAt: '2026-05-10T09:00:00.000Z', savedBy: 'Odalys' }
  a.removals.save(id, 0, { ...EMPTY_SHEET, job: { name: 'Ottoline' } }, stamp)
  a.removals.save(id, 1, { ...EMPTY_SHEET, job: { name: 'Ottoline F.' } }, stamp)
  a.removals.link(id, second, stamp)
  a.protocols.change({ holdDays: 35 }, { changedAt: stamp.savedAt, changedBy: 'Odalys', reason: 'Cold.' })
  while (a.protocols.remakeSome(10) !== null);
  const text = exported(a)
  expect(importYard(b, lines(text), AT)).toMatchObject({ ok: true })
  expect(exported(b)).toBe(text)
  expect(b.removals.get(id)).toEqual(a.removals.get(id))
  expect(b.protocols.changes()).toEqual(a.protocols.changes())
  expect(importYard(b, lines(text), AT)).toMatchObject({ ok: true })
  expect(exported(b)).toBe(text)
  expect(exported(a, false)).not.toContain('Ottoline')
  // A sheet that is another one here is never overwritten.
  const other = importYard(b, lines(text.replaceAll('Ottoline F.', 'Persis')), AT)
  expect(other).toEqual({ ok: false, problems: [`version 2 of removal sheet ${id} is another one here`] })
  expect(
    importYard(memoryStore(), () => text.split('\n').filter((l) => !l.includes('"line":"box"')), AT),
  ).toMatchObject({
    ok: false,
    problems: [expect.stringContaining('says 4 other lines, but there are 3')],
  })
})

test('entries that the journal would not have go along, settled ones as settled; without private data none does', () => {
  const [a, b] = [memoryStore(), memoryStore()]
  add(a, intake('A-1'))
  const at = '2026-05-10T09:00:00.000Z'
  const refusedOne = (id: string) => ({
    id: id as EntryId,
    person: 'Teuila',
    sentBy: 'Odalys',
    receivedAt: at,
    tag: 'A-1',
    entry: { id, kind: 'inspection', note: 'three capped cells' },
    problems: [{ field: 'on', message: 'is after the colony left' }],
  })
  const [open, settled] = [refusedOne(v7()), refusedOne(v7())]
  a.refused.keep([open, settled])
  a.refused.settle([settled.id], { at, by: 'Odalys' })
  const text = exported(a)
  expect(importYard(b, lines(text), AT)).toMatchObject({ ok: true })
  expect(exported(b)).toBe(text)
  expect(b.refused.open()).toEqual([open])
  expect(importYard(b, lines(text), AT)).toMatchObject({ ok: true })
  expect(b.refused.everything()).toHaveLength(2)
  expect(exported(a, false)).not.toContain('three capped cells')
})

test('letters, move-out records and what came with a spreadsheet go along; their own people keep what is private', () => {
  const [a, b] = [memoryStore(), memoryStore()]
  const id = add(a, intake('A-1'))
  const at = '2026-05-10T09:00:00.000Z'
  const letter = { colony: id, asOf: '2026-05-31', createdAt: at, createdBy: 'Odalys' }
  const good = {
    ...letter,
    id: v7(),
    digest: 'd1',
    words: 'Dear Ottoline',
    expiresAt: '2027-05-10T09:00:00.000Z',
  }
  const back = { ...letter, id: v7(), digest: 'd2', words: null, expiresAt: '2027-05-10T09:00:00.000Z' }
  a.after.letters.add(good)
  a.after.letters.add(back)
  a.after.letters.revoke(back.id, at)
  const stamp = { savedAt: at, savedBy: 'Odalys' }
  a.after.records.save(id, 0, { buyer: { name: 'Persis' } }, stamp)
  a.after.records.save(id, 1, { buyer: { name: 'Persis F.' }, price: 213.79 }, stamp)
  const batch = { id: v7(), source: 'ottoline.csv', colonies: 1 }
  const more = intake('A-2', { id: v7() })
  expect(a.imports.take(batch, [more], { today: TODAY, recordedAt: at }).ok).toBe(true)

  const text = exported(a)
  expect(importYard(b, lines(text), AT)).toMatchObject({ ok: true })
  expect(exported(b)).toBe(text)
  expect(b.after.letters.open('d1', at)).toMatchObject({ words: 'Dear Ottoline' })
  expect(b.after.letters.open('d2', at)).toBeNull()
  expect(b.after.records.of(id)).toEqual(a.after.records.of(id))
  expect(b.imports.entries(batch.id)).toEqual([more.id])
  // Again changes nothing, and what was taken back here since stays so.
  b.after.letters.revoke(good.id, at)
  expect(importYard(b, lines(text), AT)).toMatchObject({ ok: true, accepted: 0 })
  expect(b.after.letters.open('d1', at)).toBeNull()
  expect(exported(a, false)).not.toMatch(/ottoline|persis|213\.79/i)
  expect(importYard(b, lines(text.replaceAll('Persis F.', 'Wilhelmina')), AT)).toEqual({
    ok: false,
    problems: [`version 2 of the move-out record of colony ${id} is another one here`],
  })
})

test('entries that the journal would not have go along, settled or not; files from before have none', () => {
  const [a, b] = [memoryStore(), memoryStore()]
  add(a, intake('A-1'))
  const at = '2026-05-10T09:00:00.000Z'
  const [open, settled] = [v7() as EntryId, v7() as EntryId]
  const asked = { person: 'Juno', sentBy: 'Odalys', receivedAt: at, tag: 'A-1' }
  const entry = { kind: 'intake', removal: { site: 'Ottoline, 4 Invented Row' }, photos: 'none' }
  a.refused.keep([
    { ...asked, id: open, entry, problems: [{ entry: 1, field: 'on', message: 'is in the future' }] },
    { ...asked, id: settled, entry: 'no entry at all', problems: [] },
  ])
  a.refused.settle([settled], { at, by: 'Odalys' })
  const text = exported(a)
  expect(importYard(b, lines(text), AT)).toMatchObject({ ok: true })
  expect(exported(b)).toBe(text)
  expect(b.refused.open()).toEqual(a.refused.open())
  expect(b.refused.open().map((e) => e.id)).toEqual([open])
  // Again changes nothing, and what was settled here since stays so.
  b.refused.settle([open], { at, by: 'Persis' })
  expect(importYard(b, lines(text), AT)).toMatchObject({ ok: true, accepted: 0 })
  expect(b.refused.count()).toBe(0)
  expect(exported(a, false)).not.toMatch(/ottoline|"refused"/i)
  // A file of a release that knew none.
  const before = text.split('\n').filter((l) => !l.includes('"line":"refused"'))
  const old = before.map((l) => l.replace('"others":2', '"others":0'))
  expect(importYard(memoryStore(), () => old, AT)).toMatchObject({ ok: true, accepted: 1 })
})

test('a journal written under a clock that ran ahead comes in whole', () => {
  const a = memoryStore()
  a.append([intake('A-1', { on: '2027-01-01' })], {
    today: '2027-01-01',
    recordedAt: '2027-01-01T00:00:00.000Z',
  })
  const b = memoryStore()
  expect(importYard(b, lines(exported(a)), AT)).toMatchObject({ ok: true, accepted: 1 })
})

test('without what is private: no site, no cost, no destination, and still a yard', () => {
  const a = memoryStore()
  add(
    a,
    intake('A-1', { removal: { type: 'wall', site: '12 Nowhere Lane' } }),
    outcome('A-1', '2026-05-20', { destination: 'Nowhere Orchard' }),
  )
  const text = exported(a, false)
  expect(text).not.toContain('Nowhere')
  expect(exported(a)).toContain('Nowhere')
  const b = memoryStore()
  expect(importYard(b, lines(text), AT)).toMatchObject({ ok: true, accepted: 2 })
  expect(b.verify().ok).toBe(true)
})

describe('a file that is not right is refused whole, naming the line', () => {
  const whole = (): string[] => {
    const a = memoryStore()
    add(a, intake('A-1'), inspection('A-1', '2026-05-15'))
    return exported(a).trimEnd().split('\n')
  }
  test.each<[string, (lines: string[]) => string[], string]>([
    ['cut short', (l) => l.slice(0, -1), 'cut short'],
    ['cut within a line', (l) => [...l.slice(0, 2), (l[2] ?? '').slice(0, 40)], 'line 3: is not JSON'],
    ['without its beginning', (l) => l.slice(1), 'not the beginning of a yard'],
    ['with a line lost', (l) => [...l.slice(0, 1), ...l.slice(2)], 'says 2 entries, but there are 1'],
    [
      'of another version',
      (l) => [(l[0] ?? '').replace('"version":1', '"version":2'), ...l.slice(1)],
      'line 1: version',
    ],
    ['two in one', (l) => [...l, ...l], 'more than one yard'],
    [
      'with an unknown field',
      (l) => l.map((x) => x.replace('"line":"entry"', '"line":"entry","x":1')),
      'has no field "x"',
    ],
    [
      'with an entry that contradicts',
      (l) => l.map((x) => x.replace('2026-05-15', '2026-04-15')),
      'line 3: on: 2026-04-15 is before the intake',
    ],
    ['with an entry of no kind', (l) => l.map((x) => x.replace('"inspection"', '"dance"')), 'line 3: kind'],
    ['of nothing', () => [''], 'not the beginning of a yard'],
    [
      'with a wrong moment',
      (l) => l.map((x) => x.replaceAll(/"recordedAt":"[^"]*"/g, '"recordedAt":"noon"')),
      'line 2: recordedAt',
    ],
  ])('%s', (_what, spoil, why) => {
    const b = memoryStore()
    const result = importYard(b, () => spoil(whole()), AT)
    expect(result.ok).toBe(false)
    expect(result.ok ? '' : result.problems.join('\n')).toContain(why)
    expect([...b.journal()]).toEqual([])
  })
})

describe('at the terminal and on the page', () => {
  let folder = ''
  let err = ''
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'resettle-file-'))
    err = ''
    vi.spyOn(process.stdout, 'write').mockReturnValue(true)
    vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
      err += text
      return true
    })
  })
  afterEach(() => {
    vi.restoreAllMocks()
    vi.unstubAllEnvs()
    rmSync(folder, { recursive: true, force: true })
  })
  const at = (name: string): void => {
    vi.stubEnv('RESETTLE_DATA', join(folder, name))
  }

  test('export and import by the ending of the name; nothing is overwritten', async () => {
    at('one')
    const colonies =
      'tag,removal_type,intake_on,queen_at_intake,outcome,outcome_on\nA-1,wall,2026-05-01,unseen,moved-out,2026-05-30\nA-1,tree,2026-06-01,caged,,\n'
    writeFileSync(join(folder, 'in.csv'), colonies)
    expect(await importCommand([join(folder, 'in.csv')])).toBe(0)
    expect(await exportCommand([join(folder, 'out.jsonl')])).toBe(0)
    expect(await exportCommand([join(folder, 'out.csv')])).toBe(0)
    expect(await exportCommand([join(folder, 'out.csv')])).toBe(2)
    expect(err).toContain('is there already')
    at('two')
    expect(await importCommand([join(folder, 'out.jsonl')])).toBe(0)
    const [one, two] = ['one', 'two'].map((n) => openStore(join(folder, n, 'resettle.db')))
    if (one === undefined || two === undefined) throw new Error('no stores')
    expect(exported(two)).toBe(exported(one))
    one.close()
    two.close()
    expect(readFileSync(join(folder, 'out.csv'), 'utf8')).toContain('A-1,tree,')
  })

  test('a bad CSV is refused by line, or taken without its bad lines when told so', async () => {
    at('three')
    writeFileSync(
      join(folder, 'bad.csv'),
      'tag,removal_type,intake_on,queen_at_intake\nA-1,wall,2026-05-01,unseen\nA-2,wall,2026-13-01,unseen\n',
    )
    expect(await importCommand([join(folder, 'bad.csv')])).toBe(2)
    expect(err).toContain('line 3: intake_on')
    expect(await importCommand([join(folder, 'bad.csv'), '--skip-bad'])).toBe(0)
  })

  test('the page sends the same file, and takes it in', async () => {
    const yard = testYard()
    season(yard.services.store, 4)
    const response = await yard.ask('operator', '/data/export?private=yes')
    expect(response.headers.get('content-disposition')).toMatch(
      /^attachment; filename="yard-2026-06-01\.jsonl"$/,
    )
    const text = await response.text()
    expect(text).toBe(exported(yard.services.store))
    const other = testYard()
    const form = new FormData()
    form.set('file', new File([text], 'yard.jsonl'))
    const taken = await other.ask('operator', '/data/import', { method: 'POST', body: form })
    expect(taken.status).toBe(200)
    expect(exported(other.services.store)).toBe(text)
    const huge = new FormData()
    huge.set('file', new File(['x'.repeat(65 * 1024 * 1024)], 'yard.jsonl'))
    const much = await other.ask('operator', '/data/import', { method: 'POST', body: huge })
    expect(much.status).toBe(413)
    expect(await much.text()).toContain('resettle import FILE.jsonl')
    const bad = new FormData()
    bad.set('file', new File(['{"line":"<b>hello</b>"}'], '../../etc/passwd'))
    const refused = await other.ask('operator', '/data/import', { method: 'POST', body: bad })
    expect(refused.status).toBe(422)
    expect(await refused.text()).not.toContain('<b>hello')
  })
})
