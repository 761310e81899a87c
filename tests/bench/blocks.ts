/**
 * How long anything holds the one thread: the longest stretch without a turn of the event loop, for every long page and
 * chore, on a file with 1,000 colonies in the yard and 10,000 that left. Goal: 50 ms. Each page is asked for twice, the
 * first time with nothing kept.
 *
 *     npm run bench -- blocks            (BENCH_OPEN=1000 BENCH_LEFT=10000)
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { addDays } from '../../src/days.ts'
import { byDay, Dice, type Entered, randomFrom, story } from '../store/yard.ts'
import { type TestYard, testYard } from '../support/yard-app.ts'

const OPEN = Number(process.env.BENCH_OPEN ?? 1000)
const LEFT = Number(process.env.BENCH_LEFT ?? 10_000)
const TODAY = '2026-07-01'

function told(): Entered[] {
  const dice = new Dice(randomFrom(5))
  const entered: Entered[] = []
  for (let n = 1; n <= LEFT; n++) {
    const intakeOn = addDays('2021-04-01', dice.int(0, 1800))
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

function filled(file: string): TestYard {
  const yard = testYard({ day: TODAY, file })
  const { store } = yard.services
  const lines = byDay(told()).flatMap(({ day, entries }) =>
    entries.map((raw) => ({ raw, recordedAt: `${day}T18:00:00.000Z`, recordedBy: raw.by })),
  )
  for (let at = 0; at < lines.length; at += 5000) {
    const result = store.load(lines.slice(at, at + 5000), TODAY)
    if (!result.ok) throw new Error(JSON.stringify(result.problems.slice(0, 3)))
  }
  store.settings.set('stands', Object.fromEntries(store.yards().map((y) => [y.yard, 800])))
  return yard
}

export interface Held {
  /** Milliseconds on the clock from the question to the last byte. */
  ms: number
  /** The longest stretch without a turn of the event loop, in milliseconds on the clock and of the processor. */
  longest: number
  longestCpu: number
}

const cpuMs = (): number => {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}

/** Runs the work and watches the event loop meanwhile. */
export async function watched<T>(work: () => T | Promise<T>): Promise<{ made: T; held: Held }> {
  let [longest, longestCpu, ended] = [0, 0, false]
  let [last, lastCpu] = [performance.now(), cpuMs()]
  const turn = (): void => {
    const [now, cpu] = [performance.now(), cpuMs()]
    longest = Math.max(longest, now - last)
    longestCpu = Math.max(longestCpu, cpu - lastCpu)
    ;[last, lastCpu] = [now, cpu]
    if (!ended) setImmediate(turn)
  }
  setImmediate(turn)
  const began = performance.now()
  const made = await work()
  const ms = performance.now() - began
  // The stretch that ended with the answer counts too.
  await new Promise((done) => setImmediate(done))
  ended = true
  return { made, held: { ms, longest, longestCpu } }
}

const line = (name: string, { ms, longest, longestCpu }: Held, more = ''): void => {
  process.stdout.write(
    `  ${name.padEnd(38)} ${ms.toFixed(0).padStart(6)} ms, longest held ${longest.toFixed(0).padStart(5)} ms (processor ${longestCpu.toFixed(0)})${longestCpu > 50 ? '  over 50' : ''}${more}\n`,
  )
}

const PAGES = [
  '/yard',
  '/yard?show=all',
  '/',
  '/round',
  '/phone/round',
  '/paper',
  '/labels',
  '/sheet-entry',
  '/review',
  '/review/report',
  '/supplies',
  '/stands',
  '/rates',
  '/health',
  '/calendar',
  '/changes',
  '/changes/csv',
  '/data',
  '/data/export',
  '/data/colonies/colonies.csv',
  '/yard-book',
  '/yard-book/csv',
  '/letters',
  '/protocol',
  '/intake',
  '/colony/O-1',
  '/colony/O-1/visit',
]

async function asked(yard: TestYard, path: string): Promise<string> {
  const { made, held } = await watched(async () => {
    const answer = await yard.ask('operator', path)
    const text = await answer.text()
    if (answer.status !== 200) throw new Error(`${path}: ${answer.status} ${text.slice(0, 200)}`)
    return text
  })
  line(path, held, `, ${(made.length / 1024).toFixed(0)} KB`)
  return made
}

async function chore(name: string, work: () => unknown): Promise<void> {
  const { held } = await watched(work)
  line(name, held)
}

export async function bench(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'resettle-blocks-'))
  try {
    const began = performance.now()
    const yard = filled(join(folder, 'resettle.db'))
    const { store } = yard.services
    process.stdout.write(
      `blocks: ${store.colonies({ open: true }).length} in the yard, ${LEFT} left, ${store.changes({ limit: 1 })[0]?.seq} entries; made in ${((performance.now() - began) / 1000).toFixed(0)} s\n`,
    )
    await yard.session('operator')
    for (const path of PAGES) {
      await asked(yard, path)
      await asked(yard, path)
    }
    await chore('verify', () => store.verify())
    await chore('backup', () => yard.services.safekeeping?.backUp())
    yard.at(`${addDays(TODAY, 1)}T12:00:00Z`)
    await asked(yard, '/intake')
    await new Promise((done) => setTimeout(done, 300))
    const { held } = await watched(() => new Promise((done) => setTimeout(done, 3000)))
    line('meanwhile, after the day began', held)
    process.stdout.write(
      `  memory ${(process.memoryUsage.rss() / 1e6).toFixed(0)} MB (with the client and the story in it)\n`,
    )
    yard.services.close()
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
