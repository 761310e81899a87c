/**
 * How long anything holds the one thread: the longest stretch without a turn of the event loop, for every long page and
 * chore, on a file with 1,000 colonies in the yard and 10,000 that left. Goal: 50 ms of the processor, which a busy machine
 * does not change. Each page is asked for twice: made between the requests, as a small yard's is, and with the reading
 * thread.
 *
 *     npm run bench -- blocks            (BENCH_OPEN=1000 BENCH_LEFT=10000 BENCH_PAGES=/round,/paper)
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { inSlices } from '../../src/app/node.ts'
import { addDays } from '../../src/days.ts'
import { reviewingAsOf } from '../../src/features/api/answers.ts'
import { readerOf } from '../../src/node/reader/reader.ts'
import { byDay, Dice, type Entered, randomFrom, story } from '../store/yard.ts'
import { built } from '../support/build.ts'
import { type TestYard, testYard } from '../support/yard-app.ts'

const OPEN = Number(process.env.BENCH_OPEN ?? 1000)
const LEFT = Number(process.env.BENCH_LEFT ?? 10_000)
const TODAY = '2026-07-01'
const OUTPUT = fileURLToPath(new URL('../output/reader', import.meta.url))

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

/** The same file twice: without the thread, and with it. */
async function filled(file: string): Promise<{ without: TestYard; yard: TestYard }> {
  const report = (error: unknown): void => void process.stderr.write(`${String(error)}\n`)
  const program = pathToFileURL(await built('src/node/reader/thread.ts', OUTPUT))
  const reader = readerOf({
    program,
    file,
    zone: 'UTC',
    report,
    times: { patience: 120_000, grace: 1000, idle: 60_000 },
  })
  const yard = testYard({ day: TODAY, file, deps: { reader } })
  const { store } = yard.services
  const lines = byDay(told()).flatMap(({ day, entries }) =>
    entries.map((raw) => ({ raw, recordedAt: `${day}T18:00:00.000Z`, recordedBy: raw.by })),
  )
  for (let at = 0; at < lines.length; at += 5000) {
    const result = store.load(lines.slice(at, at + 5000), TODAY)
    if (!result.ok) throw new Error(JSON.stringify(result.problems.slice(0, 3)))
  }
  store.settings.set('stands', Object.fromEntries(store.yards().map((y) => [y.yard, 800])))
  return { without: testYard({ day: TODAY, file }), yard }
}

export interface Held {
  /** Milliseconds on the clock from the question to the last byte. */
  ms: number
  /** The longest stretch without a turn of the event loop, in milliseconds on the clock and of the processor. */
  longest: number
  longestCpu: number
}

/** Milliseconds of the processor that this thread alone has had; of the whole process where the system does not say. */
function cpuMs(): number {
  try {
    const [ns] = readFileSync(`/proc/self/task/${process.pid}/schedstat`, 'utf8').split(' ')
    return Number(ns) / 1e6
  } catch {
    const { user, system } = process.cpuUsage()
    return (user + system) / 1000
  }
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
  '/supplies/stands',
  '/rates',
  '/health',
  '/account/calendar',
  '/changes',
  '/changes/csv',
  '/data',
  '/data/export',
  '/data/colonies/colonies.csv',
  '/yard-book',
  '/yard-book/csv?table=colonies&from=2026-01-01&to=2026-06-30',
  '/letters',
  '/protocol',
  '/intake',
  '/colony/O-1',
  '/colony/O-1/visit',
]

const WANTED = process.env.BENCH_PAGES?.split(',') ?? PAGES

/** Bytes of a body, let go of as they come: gathering them all would hold this thread, which is the client's too. */
async function received({ body }: Response): Promise<number> {
  let bytes = 0
  for await (const part of body ?? []) bytes += part.length
  return bytes
}

async function asked(yard: TestYard, path: string, how = ''): Promise<void> {
  const { made, held } = await watched(async () => {
    const answer = await yard.ask('operator', path)
    const bytes = await received(answer)
    // On a busy machine a page may take longer than anybody waits; how long it held the thread is told all the same.
    if (answer.status !== 200 && answer.status !== 503) throw new Error(`${path}: ${answer.status}`)
    return answer.status === 503 ? 0 : bytes
  })
  line(`${path.split('?')[0]} ${how}`, held, `, ${(made / 1024).toFixed(0)} KB`)
}

/** An old book of so many colonies that have all left, as a sheet with the headings of the colonies CSV. */
const oldBook = (colonies: number): string =>
  [
    'tag,removal_type,intake_on,queen_at_intake,outcome,outcome_on',
    ...Array.from({ length: colonies }, (_, n) => {
      const month = `${2016 + (n % 4)}-0${1 + (n % 9)}`
      return `OLD-${n},wall,${month}-03,caged,moved-out,${month}-28`
    }),
  ].join('\n')

/** Pastes it, and takes in what the preview shows. */
async function takenIn(yard: TestYard, colonies: number): Promise<void> {
  const post = (fields: Record<string, string>): Promise<Response> =>
    yard.post('operator', '/data/colonies', fields)
  const text = oldBook(colonies)
  const { made: preview, held: read } = await watched(async () =>
    (await post({ go: 'read', pasted: text })).text(),
  )
  line(`old book of ${colonies}: read, rehearsed`, read)
  const importId = /name="importId" value="([^"]+)"/.exec(preview)?.[1]
  if (importId === undefined) throw new Error('the preview names no import')
  const { made, held } = await watched(() => post({ go: 'take-all', text, source: 'old.csv', importId }))
  if (made.status !== 303) throw new Error(`taking it in: ${made.status}`)
  line(`old book of ${colonies}: taken in`, held)
}

async function chore(name: string, work: () => unknown): Promise<void> {
  const { held } = await watched(work)
  line(name, held)
}

export async function bench(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'resettle-blocks-'))
  try {
    const began = performance.now()
    const { without, yard } = await filled(join(folder, 'resettle.db'))
    const { store } = yard.services
    process.stdout.write(
      `blocks: ${store.colonies({ open: true }).length} in the yard, ${LEFT} left, ${store.changes({ limit: 1 })[0]?.seq} entries; made in ${((performance.now() - began) / 1000).toFixed(0)} s\n`,
    )
    await yard.session('operator')
    for (const path of WANTED) {
      await asked(without, path, 'between')
      await asked(yard, path, 'thread')
    }
    without.services.close()
    await chore('review of the HTTP API', () => inSlices(reviewingAsOf(store, 'UTC', TODAY, false)))
    await takenIn(yard, 500)
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
