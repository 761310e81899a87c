/** The journal is append-only, whatever statement comes at it. */
import { beforeEach, expect, test } from 'vitest'
import { openConnection, storeOn } from '../../src/store/node.ts'
import { add, inspection, intake } from './helpers.ts'

let connection = openConnection(':memory:')
let store = storeOn(connection)

beforeEach(() => {
  connection = openConnection(':memory:')
  store = storeOn(connection)
  add(store, intake('A-1'), inspection('A-1', '2026-05-15'))
})

const rows = (): unknown[] => connection.raw.prepare('SELECT * FROM entry ORDER BY seq').all()

const COPY = `(seq, id, colony, kind, on_day, recorded_at, recorded_by, payload)
  SELECT seq, id, colony, kind, on_day, recorded_at, 'Mallory', payload FROM entry WHERE seq = 2`

const ATTEMPTS = {
  update: "UPDATE entry SET recorded_by = 'Mallory'",
  'update of nothing but the order': 'UPDATE entry SET seq = seq + 100',
  'update or replace': 'UPDATE OR REPLACE entry SET seq = 1 WHERE seq = 2',
  delete: 'DELETE FROM entry',
  'delete of one': 'DELETE FROM entry WHERE seq = 2',
  'insert or replace': `INSERT OR REPLACE INTO entry ${COPY}`,
  replace: `REPLACE INTO entry ${COPY}`,
  'insert or ignore over an id': `INSERT OR IGNORE INTO entry ${COPY}`,
  upsert: `INSERT INTO entry ${COPY} ON CONFLICT (id) DO UPDATE SET recorded_by = 'Mallory'`,
  'replace by another id on the same place': `INSERT OR REPLACE INTO entry
    SELECT seq, 'other', colony, kind, on_day, replaces, recorded_at, recorded_by, payload, digest FROM entry WHERE seq = 2`,
  'replace by the same id on another place': `INSERT OR REPLACE INTO entry
    SELECT 99, id, colony, kind, on_day, replaces, recorded_at, recorded_by, payload, digest FROM entry WHERE seq = 2`,
}

for (const recursive of ['ON', 'OFF'])
  test.each(Object.entries(ATTEMPTS))(
    `%s is stopped (recursive triggers ${recursive})`,
    (_name, statement) => {
      connection.raw.pragma(`recursive_triggers = ${recursive}`)
      const before = rows()
      expect(() => connection.raw.exec(statement)).toThrow('append-only')
      expect(rows()).toEqual(before)
    },
  )

test('the connection has the settings the journal relies on', () => {
  const pragma = (name: string): unknown => connection.raw.pragma(name, { simple: true })
  expect(pragma('synchronous')).toBe(2)
  expect(pragma('foreign_keys')).toBe(1)
  expect(pragma('recursive_triggers')).toBe(1)
  expect(pragma('busy_timeout')).toBe(5000)
})

test('every table is STRICT and has the columns drizzle thinks it has', async () => {
  const schema = {
    ...(await import('../../src/store/schema.ts')),
    ...(await import('../../src/people/schema.ts')),
    ...(await import('../../src/features/calendar/schema.ts')),
    ...(await import('../../src/people/calendar-address-schema.ts')),
    ...(await import('../../src/store/removal-schema.ts')),
    ...(await import('../../src/store/after-schema.ts')),
    ...(await import('../../src/store/import-schema.ts')),
    ...(await import('../../src/store/refused-schema.ts')),
    ...(await import('../../src/people/api-token-schema.ts')),
    ...(await import('../../src/features/messages/schema.ts')),
  }
  const { getTableConfig } = await import('drizzle-orm/sqlite-core')
  const { getTableColumns, is, Table } = await import('drizzle-orm')
  const listed = connection.raw.pragma('table_list') as { name: string; strict: number; type: string }[]
  const ours = listed.filter((t) => t.type === 'table' && !/^(sqlite_|__drizzle)/.test(t.name))
  expect(ours.filter((t) => t.strict === 0).map((t) => t.name)).toEqual([])
  const tables = Object.values(schema).filter((t) => is(t, Table))
  expect(tables.map((t) => getTableConfig(t).name).sort()).toEqual(ours.map((t) => t.name).sort())
  for (const table of tables) {
    const columns = connection.raw.pragma(`table_info(${getTableConfig(table).name})`) as { name: string }[]
    expect(columns.map((c) => c.name)).toEqual(Object.values(getTableColumns(table)).map((c) => c.name))
  }
})
