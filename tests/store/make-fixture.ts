/**
 * Saves a small database of the present schema in fixtures/, named after the last migration, for the tests of all
 * migrations to come: npx tsx tests/store/make-fixture.ts. Refuses to change one that is there.
 */
import { existsSync, mkdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { peopleOn } from '../../src/people/node.ts'
import { MIGRATIONS_FOLDER } from '../../src/store/migrate.ts'
import { openConnection, storeOn } from '../../src/store/node.ts'
import { byDay, Dice, randomFrom, story } from './yard.ts'

const journal = JSON.parse(readFileSync(join(MIGRATIONS_FOLDER, 'meta', '_journal.json'), 'utf8')) as {
  entries: { tag: string }[]
}
const file = fileURLToPath(new URL(`./fixtures/${journal.entries.at(-1)?.tag}.db`, import.meta.url))
if (existsSync(file)) throw new Error(`${file} is there already; a fixture is never changed`)
mkdirSync(dirname(file), { recursive: true })

const connection = openConnection(':memory:')
const store = storeOn(connection)
const dice = new Dice(randomFrom(7))
const until = '2026-06-15'
const entered = ['F-1', 'F-2', 'F-3'].flatMap((tag, n) =>
  story(dice, { tag, intakeOn: `2026-05-0${n + 1}`, until, stay: 8 + 20 * n, leaves: n === 0 ? 1 : 0 }),
)
for (const { day, entries } of byDay(entered)) {
  const result = store.append(entries, { today: day, recordedAt: `${day}T18:00:00.000Z` })
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
}
store.settings.set('yardName', 'Quarry yard and others')
const people = peopleOn(connection, {
  clock: () => new Date(`${until}T18:00:00.000Z`),
  cost: { n: 16, r: 8, p: 1 },
})
await people.setUp('Odalys', 'slow lantern over gravel')
people.invite({ name: 'Bram', role: 'beekeeper', by: 'Odalys' })
people.invite({ name: 'Teuila', role: 'helper', by: 'Odalys' })
connection.raw.prepare('VACUUM INTO ?').run(file)
store.close()
process.stdout.write(`${file}\n`)
