/**
 * The pages that show forecasts, whole (store, forecast, page), with 500 colonies in the yard and 200 that left: the first
 * look after a start, later ones, one after a new entry, and the first of the next day. Goal: Supplies under 500 ms, a colony's page under 50 ms.
 */
import { addDays } from '../../src/days.ts'
import { byDay, Dice, type Entered, randomFrom, story } from '../store/yard.ts'
import { type TestYard, testYard } from '../support/yard-app.ts'

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
  const result = yard.services.store.load(lines, TODAY)
  if (!result.ok) throw new Error(JSON.stringify(result.problems.slice(0, 3)))
  yard.services.store.settings.set(
    'stands',
    Object.fromEntries(yard.services.store.yards().map((y) => [y.yard, 400])),
  )
  return yard
}

/** Milliseconds on the clock, and of the processor: on a busy machine the second says what a quiet one would take. */
interface Took {
  ms: number
  cpu: number
}

async function asked(yard: TestYard, path: string): Promise<Took> {
  const [start, cpu] = [process.hrtime.bigint(), process.cpuUsage()]
  const answer = await yard.ask('operator', path)
  await answer.text()
  if (answer.status !== 200) throw new Error(`${path}: ${answer.status}`)
  const { user, system } = process.cpuUsage(cpu)
  return { ms: Number(process.hrtime.bigint() - start) / 1e6, cpu: (user + system) / 1e3 }
}

const middle = (took: Took[]): Took =>
  took.sort((a, b) => a.ms - b.ms)[Math.floor(took.length / 2)] ?? { ms: Number.NaN, cpu: Number.NaN }

const line = (name: string, { ms, cpu }: Took, goal = ''): void => {
  process.stdout.write(
    `  ${name.padEnd(56)} ${ms.toFixed(1)} ms (processor ${cpu.toFixed(1)} ms)${goal && `   (goal: ${goal})`}\n`,
  )
}

/** The first look after a start, the median of later ones, and one after an entry at one colony. */
async function page(yard: TestYard, path: string, goal: string, first = goal): Promise<void> {
  line(`${path}, first look after a start`, await asked(yard, path), first)
  const later: Took[] = []
  for (let i = 0; i < 7; i++) later.push(await asked(yard, path))
  line(`${path}, later`, middle(later), goal)
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

/** Until somebody looks at Supplies after opening another page. */
const WARM_MS = 5000

/** The first look of the next morning, plans already made. */
async function nextMorning(yard: TestYard, paths: readonly string[]): Promise<void> {
  yard.at(`${addDays(TODAY, 1)}T12:00:00Z`)
  await asked(yard, '/yard')
  // The needs are being reckoned meanwhile, as after the first page of any morning.
  await new Promise((done) => setTimeout(done, WARM_MS))
  for (const path of paths) line(`${path}, first look of the next day`, await asked(yard, path))
}

export async function bench(): Promise<void> {
  const yard = filled()
  // Signed in, and the plans of the day made.
  await asked(yard, '/yard')
  await asked(yard, '/colony/O-1')
  process.stdout.write(`pages with forecasts, ${OPEN} colonies in the yard\n`)
  await page(yard, '/supplies', 'under 500 ms', 'reckoned in slices, others are answered meanwhile')
  await page(yard, '/supplies/stands', 'under 500 ms', 'reckoned in slices, others are answered meanwhile')
  await page(yard, '/', '')
  await page(yard, '/rates', '', 'learned in slices')
  const cold: Took[] = []
  for (let n = 11; n < 51; n++) cold.push(await asked(yard, `/colony/O-${n}`))
  line("a colony's page, first look (median of 40)", middle(cold), 'under 50 ms')
  const warm: Took[] = []
  for (let n = 11; n < 51; n++) warm.push(await asked(yard, `/colony/O-${n}`))
  line("a colony's page, later (median of 40)", middle(warm))
  await nextMorning(yard, ['/supplies', '/supplies/stands', '/'])
}
