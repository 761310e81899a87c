/** From any earlier schema to this one: no entry lost, all or nothing, never silently. */
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import Database from 'better-sqlite3'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { MIGRATIONS_FOLDER } from '../../src/store/migrate.ts'
import { openConnection, openStore } from '../../src/store/node.ts'
import { add, inspection, intake } from './helpers.ts'

const FIXTURES = fileURLToPath(new URL('./fixtures', import.meta.url))

interface Ledger {
  entries: { idx: number; version: string; when: number; tag: string; breakpoints: boolean }[]
}
const ledger = (folder = MIGRATIONS_FOLDER): Ledger =>
  JSON.parse(readFileSync(join(folder, 'meta', '_journal.json'), 'utf8')) as Ledger

let folder = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'resettle-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

test('migrations are stamped in rising order, or the later ones would never run', () => {
  const stamps = ledger().entries.map((e) => e.when)
  expect(stamps.length).toBeGreaterThan(0)
  expect(stamps).toEqual([...new Set(stamps)].sort((a, b) => a - b))
})

test('there is a small database of every schema so far', () => {
  expect(
    readdirSync(FIXTURES)
      .filter((f) => f.endsWith('.db'))
      .sort(),
  ).toEqual(
    ledger()
      .entries.map((e) => `${e.tag}.db`)
      .sort(),
  )
})

const JOURNAL = 'SELECT id, colony, recorded_at, recorded_by, payload FROM entry ORDER BY seq'

test.each(ledger().entries.map((e) => e.tag))(
  'from %s: every entry is kept and the store is whole',
  (tag) => {
    const file = join(folder, 'resettle.db')
    cpSync(join(FIXTURES, `${tag}.db`), file)
    const old = new Database(file, { readonly: true })
    const before = old.prepare(JOURNAL).all()
    old.close()
    expect(before.length).toBeGreaterThan(5)
    const connection = openConnection(file)
    expect(connection.raw.prepare(JOURNAL).all()).toEqual(before)
    connection.raw.close()
    const store = openStore(file)
    // Projections of an older version are its own; a rebuild makes ours.
    store.rebuild('2026-06-15')
    expect(store.verify()).toMatchObject({ ok: true, problems: [] })
    add(store, intake('NEW-1'))
    store.close()
  },
)

/** A copy of the migrations with one more. */
function withMigration(sql: string): string {
  const copy = join(folder, 'migrations')
  rmSync(copy, { recursive: true, force: true })
  cpSync(MIGRATIONS_FOLDER, copy, { recursive: true })
  const { entries, ...rest } = ledger()
  const when = Math.max(...entries.map((e) => e.when)) + 1000
  const next = { idx: entries.length, version: '6', when, tag: '9999_next', breakpoints: true }
  writeFileSync(join(copy, 'meta', '_journal.json'), JSON.stringify({ ...rest, entries: [...entries, next] }))
  writeFileSync(join(copy, '9999_next.sql'), sql)
  return copy
}

function yardFile(): string {
  const file = join(folder, 'resettle.db')
  const store = openStore(file)
  add(store, intake('A-1'), inspection('A-1', '2026-05-15'))
  store.close()
  return file
}

const REBUILT = `CREATE TABLE __new_entry (seq INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, id TEXT NOT NULL UNIQUE,
    colony TEXT NOT NULL, kind TEXT NOT NULL, on_day TEXT NOT NULL, replaces TEXT REFERENCES entry(id),
    recorded_at TEXT NOT NULL, recorded_by TEXT NOT NULL, payload TEXT NOT NULL, digest TEXT) STRICT;
  INSERT INTO __new_entry SELECT * FROM entry;
  DROP TABLE entry;
  ALTER TABLE __new_entry RENAME TO entry;`

const guards = (): string =>
  readFileSync(join(MIGRATIONS_FOLDER, '0000_journal.sql'), 'utf8')
    .split('--> statement-breakpoint')
    .filter((s) => s.includes('CREATE TRIGGER'))
    .join('--> statement-breakpoint')

test('a rebuild of the journal that forgets its triggers is undone', () => {
  const file = yardFile()
  expect(() => openStore(file, { folder: withMigration(REBUILT) })).toThrow(
    'leaves the journal without its guard entry_no_delete, entry_no_overwrite, entry_no_update; nothing was changed',
  )
  const store = openStore(file, { migrate: false })
  expect(store.verify()).toMatchObject({ ok: true, entries: 2 })
  store.close()
})

test('a rebuild of the journal with its triggers is taken, and rows of other tables that refer to it are kept', () => {
  const file = yardFile()
  const connection = openConnection(file, {
    folder: withMigration(`${REBUILT}\n--> statement-breakpoint\n${guards()}`),
  })
  expect(connection.raw.prepare('SELECT count(*) FROM entry').pluck().get()).toBe(2)
  expect(connection.raw.prepare('SELECT count(*) FROM colony').pluck().get()).toBe(1)
  expect(connection.raw.pragma('foreign_keys', { simple: true })).toBe(1)
  expect(() => connection.raw.exec('DELETE FROM entry')).toThrow('append-only')
  connection.raw.close()
})

test('a rebuild of a parent table keeps its children', () => {
  const file = yardFile()
  const migration = `CREATE TABLE __new_colony AS SELECT * FROM colony;
    DROP TABLE colony;
    CREATE TABLE colony (id TEXT PRIMARY KEY, tag TEXT) STRICT;
    INSERT INTO colony SELECT id, tag FROM __new_colony;
    DROP TABLE __new_colony;`
  const count = 'SELECT count(*) FROM planned_check'
  const before = new Database(file)
  const checks = before.prepare(count).pluck().get()
  before.close()
  expect(checks).toBeGreaterThan(0)
  const connection = openConnection(file, { folder: withMigration(migration) })
  expect(connection.raw.prepare(count).pluck().get()).toBe(checks)
  connection.raw.close()
})

test.each([
  [
    'loses an entry',
    'DROP TRIGGER entry_no_delete; DELETE FROM planned_check; DELETE FROM colony; DELETE FROM entry WHERE seq = 2;',
    'changes or loses entries',
  ],
  [
    'rewrites an entry',
    "DROP TRIGGER entry_no_update; UPDATE entry SET recorded_by = 'x';",
    'changes or loses entries',
  ],
  ['leaves orphans', 'DELETE FROM colony;', 'leaves rows without their parent'],
  ['fails half way', "INSERT INTO setting VALUES ('yardName', '\"x\"'); SELECT nonsense;", 'no such column'],
])('a migration that %s is undone', (_what, sql, message) => {
  const file = yardFile()
  expect(() => openStore(file, { folder: withMigration(sql) })).toThrow(message)
  const store = openStore(file, { migrate: false })
  expect(store.verify()).toMatchObject({ ok: true, entries: 2, colonies: 1 })
  expect(store.settings.get('yardName')).toBe('')
  store.close()
})

test('before a database with entries is changed, a copy is put beside it', () => {
  const file = yardFile()
  const more = withMigration('CREATE TABLE extra (x INTEGER) STRICT;')
  const store = openStore(file, { folder: more })
  store.close()
  const copies = readdirSync(join(folder, 'backups'))
  expect(copies).toHaveLength(1)
  const name = join(folder, 'backups', copies[0] ?? '')
  const bytes = readFileSync(name)
  const copy = openStore(name, { migrate: false })
  expect(copy.verify()).toMatchObject({ ok: true, entries: 2 })
  copy.close()
  // Looking at a backup leaves it as it was.
  expect(readFileSync(name).equals(bytes)).toBe(true)
  openStore(file, { folder: more }).close()
  expect(readdirSync(join(folder, 'backups'))).toHaveLength(1)
})

test('a database of a newer version, an older one when told not to touch it, a file that is none: refused in words', () => {
  const file = yardFile()
  const more = withMigration('CREATE TABLE extra (x INTEGER) STRICT;')
  expect(() => openStore(file, { folder: more, migrate: false })).toThrow('is from an older version')
  openStore(file, { folder: more }).close()
  expect(() => openStore(file)).toThrow('made by a newer version of Resettle')
  const junk = join(folder, 'junk.db')
  writeFileSync(junk, 'not a database at all, but long enough to be looked at as if it were one'.repeat(20))
  expect(() => openStore(junk)).toThrow('is damaged or is not a database')
  const nowhere = join(folder, 'nowhere.db')
  expect(() => openStore(nowhere, { migrate: false })).toThrow('cannot be opened')
  expect(existsSync(nowhere)).toBe(false)
})
