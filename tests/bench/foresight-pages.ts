/**
 * The pages that show forecasts, whole (store, forecast, page), with 500 colonies in the yard and 200 that left: the first
 * look of a day and a later one, and one after a new entry. Goal: Supplies under 500 ms, a colony's page under 50 ms.
 */
import { addDays } from '../../src/days.ts'
import { byDay, Dice, type Entered, randomFrom, story } from '../store/yard.ts'
import { type TestYard, testYard } from '../support/yard-app.ts'
import { quantile } from './clock.ts'

const TODAY = '2026-07-01'
const OPEN = 500
const LEFT = 200

function filled(): TestYard {
  const yard = testYard({ day: TODAY })
  const dice = new Dice(randomFrom(5))
  const entered: Entered[] = []
  for (let n = 1; n <= LEFT; n++) {
    const intakeOn = addDays('2026-04-01', dice.int(0, 40))
    entered.push(...story(dice, { tag: `C-${n}`, intakeOn, until: TODAY, stay: dice.int(10, 45), leaves: 1 }))
  }
  for (let n = 1; n <= OPEN; n++) {
    const stay = dice.int(1, 40)
    entered.push(
      ...story(dice, { tag: `O-${n}`, intakeOn: addDays(TODAY, -stay), until: TODAY, stay, leaves: 0 }),
    )
  }
  const lines = byDay(entered).flatMap(({ day, entries }) =>
    entries.map((raw) => ({ raw, recordedAt: `${day}T18:00:00.000Z`, recordedBy: raw.by })),
  )
  const result = yard.house.store.load(lines, TODAY)
  if (!result.ok) throw new Error(JSON.stringify(result.problems.slice(0, 3)))
  yard.house.store.settings.set(
    'stands',
    Object.fromEntries(yard.house.store.yards().map((y) => [y.yard, 400])),
  )
  return yard
}

async function asked(yard: TestYard, path: string): Promise<number> {
  const start = process.hrtime.bigint()
  const answer = await yard.ask('operator', path)
  await answer.text()
  if (answer.status !== 200) throw new Error(`${path}: ${answer.status}`)
  return Number(process.hrtime.bigint() - start) / 1e6
}

const line = (name: string, ms: number, goal = ''): void => {
  process.stdout.write(`  ${name.padEnd(56)} ${ms.toFixed(1)} ms${goal && `   (goal: ${goal})`}\n`)
}

/** The first look of a day, the median of later ones, and one after an entry at one colony. */
async function page(yard: TestYard, path: string, goal: string, first = goal): Promise<void> {
  line(`${path}, first look of the day`, await asked(yard, path), first)
  const later: number[] = []
  for (let i = 0; i < 7; i++) later.push(await asked(yard, path))
  line(
    `${path}, later`,
    quantile(
      later.sort((a, b) => a - b),
      0.5,
    ),
    goal,
  )
  await yard.send('operator', [
    {
      id: crypto.randomUUID(),
      colony: 'O-7',
      kind: 'inspection',
      on: TODAY,
      by: 'Odalys',
      opened: true,
      eggs: 'none',
    },
  ])
  line(`${path}, after a new entry`, await asked(yard, path), goal)
}

export async function bench(): Promise<void> {
  const yard = filled()
  // Signed in, and the plans of the day made.
  await asked(yard, '/yard')
  await asked(yard, '/colony/O-1')
  process.stdout.write(`pages with forecasts, ${OPEN} colonies in the yard\n`)
  await page(yard, '/supplies', 'under 500 ms')
  await page(yard, '/stands', 'under 500 ms', 'reckoned in slices, others are answered meanwhile')
  await page(yard, '/', '')
  await page(yard, '/rates', '', 'learned in slices')
  const cold: number[] = []
  for (let n = 11; n < 51; n++) cold.push(await asked(yard, `/colony/O-${n}`))
  line(
    "a colony's page, first look (median of 40)",
    quantile(
      cold.sort((a, b) => a - b),
      0.5,
    ),
    'under 50 ms',
  )
  const warm: number[] = []
  for (let n = 11; n < 51; n++) warm.push(await asked(yard, `/colony/O-${n}`))
  line(
    "a colony's page, later (median of 40)",
    quantile(
      warm.sort((a, b) => a - b),
      0.5,
    ),
  )
}
