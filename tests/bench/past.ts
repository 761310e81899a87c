/** A book with a long past, for benches: invented colonies that have left, told once and then copied with other ids and tags. */
import type { Database } from 'better-sqlite3'
import { addDays, type Day } from '../../src/days.ts'
import { openConnection, storeOn } from '../../src/store/open.ts'
import { byDay, Dice, randomFrom, story } from '../store/yard.ts'

/** Colonies that are told through the store itself; the others are copies of these. */
const TOLD = 2000

/** Makes the book: so many colonies that have left by `today` and so many in the yard, with their projections. */
export function pastBook(
  file: string,
  { left, open = 0, today }: { left: number; open?: number; today: Day },
): void {
  const connection = openConnection(file)
  const store = storeOn(connection)
  store.settings.set('timeZone', 'UTC')
  const dice = new Dice(randomFrom(5))
  const entered = Array.from({ length: Math.min(left, TOLD) }, (_, n) =>
    story(dice, {
      tag: `C-${n + 1}`,
      intakeOn: addDays('2021-04-01', dice.int(0, 1800)),
      until: today,
      stay: dice.int(10, 45),
      leaves: 1,
    }),
  ).flat()
  for (let n = 1; n <= open; n++) {
    const stay = dice.int(1, 40)
    entered.push(
      ...story(dice, { tag: `O-${n}`, intakeOn: addDays(today, -stay), until: today, stay, leaves: 0 }),
    )
  }
  const lines = byDay(entered).flatMap(({ day, entries }) =>
    entries.map((raw) => ({ raw, recordedAt: `${day}T18:00:00.000Z`, recordedBy: raw.by })),
  )
  for (let at = 0; at < lines.length; at += 5000) {
    const result = store.load(lines.slice(at, at + 5000), today)
    if (!result.ok) throw new Error(JSON.stringify(result.problems.slice(0, 3)))
  }
  copyPast(connection.raw, left)
  store.close()
}

/**
 * Copies of the colonies told, with their entries and what is kept of them. Ids of the told begin with 0000 (Dice.id), so
 * every copy has four digits of its own; what stands in its plan is its model's.
 */
function copyPast(raw: Database, left: number): void {
  const most = `(SELECT id FROM colony WHERE id LIKE '0000%' AND closed_on IS NOT NULL ORDER BY id LIMIT :most)`
  const id = (column: string): string => `:k || substr(${column}, 5)`
  const renamed = `replace(replace(replace(payload, '"id":"0000', '"id":"' || :k), '"replaces":"0000', '"replaces":"' || :k), '"colony":"C-', '"colony":"C' || :k || '-')`
  const made: Record<string, Record<string, string>> = {
    entry: { id: id('id'), colony: id('colony'), replaces: id('replaces'), payload: renamed, digest: 'NULL' },
    colony: { id: id('id'), tag: `'C' || :k || substr(tag, 2)` },
    stay: { colony: id('colony'), tag: `'C' || :k || substr(tag, 2)` },
  }
  const statements = Object.entries(made).map(([table, others]) => {
    const columns = (raw.pragma(`table_info(${table})`) as { name: string }[])
      .map((c) => c.name)
      .filter((name) => name !== 'seq')
    const of = table === 'colony' ? 'id' : 'colony'
    return raw.prepare(
      `INSERT INTO ${table} (${columns.map((c) => `"${c}"`).join(', ')})
       SELECT ${columns.map((c) => others[c] ?? `"${c}"`).join(', ')} FROM ${table} WHERE ${of} IN ${most}`,
    )
  })
  const copies = Math.ceil(left / TOLD)
  for (let n = 1; n < copies; n++) {
    const values = { k: (0x1000 + n).toString(16), most: Math.min(TOLD, left - n * TOLD) }
    for (const statement of statements) statement.run(values)
  }
}
