/**
 * Today's query with 1,000 colonies in the yard, on a file, with 10,000 and with 100,000 entries of colonies that left.
 * Goal: under 50 ms, and no slower for the past. Also what one entry costs, and the first look of a new day.
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { addDays, type Day } from '../../src/days.ts'
import type { Store } from '../../src/store/index.ts'
import { openStore } from '../../src/store/node.ts'
import { byDay, Dice, type Entered, randomFrom, story } from '../store/yard.ts'
import { report, timed } from './clock.ts'

const TODAY = '2026-07-01'
const OPEN = 1000
const PAST = [10_000, 100_000]

function yard(past: number): Entered[] {
  const dice = new Dice(randomFrom(past))
  const entered: Entered[] = []
  for (let n = 1; entered.length < past; n++) {
    const intakeOn = addDays('2023-04-01', dice.int(0, 900))
    entered.push(...story(dice, { tag: `C-${n}`, intakeOn, until: TODAY, stay: dice.int(10, 45), leaves: 1 }))
  }
  for (let n = 1; n <= OPEN; n++) {
    const stay = dice.int(1, 40)
    entered.push(
      ...story(dice, { tag: `O-${n}`, intakeOn: addDays(TODAY, -stay), until: TODAY, stay, leaves: 0 }),
    )
  }
  return entered
}

function fill(store: Store, entered: Entered[]): void {
  const lines = byDay(entered).flatMap(({ day, entries }) =>
    entries.map((raw) => ({ raw, recordedAt: `${day}T18:00:00.000Z`, recordedBy: raw.by })),
  )
  const result = store.load(lines, TODAY)
  if (!result.ok) throw new Error(JSON.stringify(result.problems.slice(0, 3)))
}

function measure(past: number, folder: string): number {
  const store = openStore(join(folder, `${past}.db`))
  fill(store, yard(past))
  const name = `${past.toLocaleString('en')} past entries`
  process.stdout.write(
    `${name}: ${store.colonies({ open: true }).length} in the yard, ${store.today(TODAY).length} with something to do\n`,
  )
  const query = report(
    `  Today's query`,
    timed(() => store.today(TODAY), 200),
    'under 50 ms',
  )
  report(
    `  Today's query, every plan looked at`,
    timed(() => store.today(TODAY).map((c) => c.plan.quiet), 50),
  )
  report(
    '  one colony with its journal',
    timed(() => store.colony('O-500'), 500),
  )
  appends(store, TODAY)
  const morning = timed(() => store.refresh(nextDay()), 3, 0)
  report('  first look of a new day: every plan again', morning)
  store.close()
  return query
}

let days = 0
const nextDay = (): Day => addDays(TODAY, ++days)

function appends(store: Store, today: Day): void {
  const dice = new Dice(randomFrom(1))
  let n = 0
  const one = (): void => {
    n++
    // The first eight digits are outside those of the stories, so no id comes twice.
    const id = `f${dice.id().slice(1)}`
    const entry = {
      id,
      colony: `O-${1 + (n % OPEN)}`,
      kind: 'inspection',
      on: today,
      by: 'Bram',
      opened: false,
    }
    const result = store.append([entry], { today, recordedAt: `${today}T18:00:00.000Z` })
    if (!result.ok) throw new Error(JSON.stringify(result.problems))
  }
  report('  one entry appended, durable on this disk', timed(one, 300))
}

export function bench(): void {
  const folder = mkdtempSync(join(tmpdir(), 'resettle-bench-'))
  try {
    const [few = 0, many = 0] = PAST.map((past) => measure(past, folder))
    process.stdout.write(
      `Today's query, ten times the past: ratio ${(many / few).toFixed(2)}   (goal: about 1)\n`,
    )
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
