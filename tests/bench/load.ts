/**
 * Load, on loopback: 50 connections, nine requests that read to one that writes, on a book of 5,000 colonies and 200,000
 * entries. Prints p50, p95, p99, errors; how long somebody beside them waits for a simple page; the memory of the server;
 * and durable entries a second beside bare better-sqlite3 inserts with the same pragmas, and beside hono alone, which
 * writes nothing, in the same run. The server is the built one, in a process of its own, logging as it does; sign-ins are
 * done before. Fails when anything is refused or nothing is answered.
 *
 *     npm run bench -- load            (BENCH_SECONDS=10 for each part, BENCH_COLONIES=5000, BENCH_OPEN=60)
 *
 * A large yard, in two minutes: BENCH_OPEN=1000 BENCH_COLONIES=1000 npm run bench -- load
 */
import { type ChildProcess, spawn } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import autocannon, { type Request, type Result } from 'autocannon'
import { v7 } from 'uuid'
import { addDays, dayIn } from '../../src/days.ts'
import { openServices } from '../../src/node/services.ts'
import { connect } from '../../src/store/connection.ts'
import { Dice, randomFrom, story } from '../store/yard.ts'
import { built } from '../support/build.ts'
import { CHEAP, signInAs } from '../support/people.ts'

const COLONIES = Number(process.env.BENCH_COLONIES ?? 5000)
const ENTRIES = 40 * COLONIES
const OPEN = Number(process.env.BENCH_OPEN ?? 60)
const CONNECTIONS = 50
/** The server as it is started, built by `npm run bench` where need be: a build in its process would count as its memory. */
export const SERVE = [
  fileURLToPath(new URL('../../dist/server/resettle.js', import.meta.url)),
  'serve',
  '--port',
  '0',
]
const OUTPUT = fileURLToPath(new URL('../output/load', import.meta.url))
const SECONDS = Number(process.env.BENCH_SECONDS ?? 10)
const TODAY = dayIn('UTC', new Date())

const say = (text: string): void => {
  process.stdout.write(`${text}\n`)
}

/** Colonies told until there are as many, then looks at closed ones until there are as many entries. */
export function* bookLines(): Generator<{
  raw: { by: string; on: string }
  recordedAt: string
  recordedBy: string
}> {
  const dice = new Dice(randomFrom(5))
  let entries = 0
  const line = (raw: { by: string; on: string; colony?: string }) => {
    entries++
    return { raw, recordedAt: `${raw.on}T18:00:00.000Z`, recordedBy: raw.by }
  }
  for (let n = 0; n < COLONIES; n++) {
    const open = n >= COLONIES - OPEN
    const stay = open ? dice.int(3, 34) : 30
    const intakeOn = open ? addDays(TODAY, -stay) : addDays(TODAY, -60 - (n % 1500))
    const tag = `C-${n}`
    const told = story(dice, { tag, intakeOn, until: TODAY, stay, leaves: open ? 0 : 1 }).map((e) => e.entry)
    const id = told[0]?.id ?? ''
    for (const raw of told) yield line(raw.kind === 'intake' ? raw : { ...raw, colony: id })
    // Notes may come late as well, so the rest of the book is made of them.
    const wanted = Math.round(((n + 1) * ENTRIES) / COLONIES)
    for (let m = 0; entries < wanted; m++) yield line(noteOf(dice, id, addDays(intakeOn, m % 30), m))
  }
}

const noteOf = (dice: Dice, colony: string, on: string, m: number) => ({
  id: dice.id(),
  colony,
  kind: 'note',
  on: on > TODAY ? TODAY : on,
  at: `${10 + (m % 12)}:${10 + (m % 50)}`,
  by: 'Bram',
  text: 'Loud at noon.',
})

export async function madeBook(file: string): Promise<string> {
  const services = openServices(file, { cost: CHEAP })
  services.store.settings.set('timeZone', 'UTC')
  let batch: Parameters<typeof services.store.load>[0] & unknown[] = []
  const flush = (): void => {
    const result = services.store.load(batch, TODAY)
    if (!result.ok) throw new Error(JSON.stringify(result.problems.slice(0, 3)))
    batch = []
  }
  for (const line of bookLines()) {
    batch.push(line)
    if (batch.length >= 5000) flush()
  }
  flush()
  const session = await signInAs(services.people, { name: 'Odalys', role: 'operator' })
  services.close()
  return session
}

/** How many a second, and how many milliseconds of the processor each took. */
interface Rate {
  rate: number
  cpu: number
}

/** Rows like the journal's, one durable transaction each, and nothing else. */
function bareInserts(file: string): Rate {
  const { raw } = connect(file)
  raw.exec(
    'CREATE TABLE bare (seq INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, colony TEXT NOT NULL, kind TEXT NOT NULL, on_day TEXT NOT NULL, replaces TEXT, recorded_at TEXT NOT NULL, recorded_by TEXT NOT NULL, payload TEXT NOT NULL) STRICT',
  )
  const insert = raw.prepare(
    'INSERT INTO bare (id, colony, kind, on_day, recorded_at, recorded_by, payload) VALUES (?, ?, ?, ?, ?, ?, ?)',
  )
  const payload = JSON.stringify(look(`C-${COLONIES - 1}`))
  const until = performance.now() + SECONDS * 1000
  const before = process.cpuUsage()
  let rows = 0
  for (; performance.now() < until; rows++)
    insert.run(v7(), 'C-1', 'inspection', TODAY, new Date().toISOString(), 'Odalys', payload)
  const { user, system } = process.cpuUsage(before)
  raw.close()
  return { rate: rows / SECONDS, cpu: (user + system) / 1000 / rows }
}

export const look = (colony: string) => ({
  id: v7(),
  colony,
  kind: 'inspection',
  on: TODAY,
  by: 'Odalys',
  at: `${10 + Math.floor(Math.random() * 10)}:${10 + Math.floor(Math.random() * 50)}`,
  opened: false,
  stores: 'enough',
})
export const openTag = (): string => `C-${COLONIES - 1 - Math.floor(Math.random() * OPEN)}`

export interface Served {
  child: ChildProcess
  url: string
}

/** The address is the last word of the first line it says. */
export function served(args: string[], env: NodeJS.ProcessEnv = {}): Promise<Served> {
  const child = spawn(process.execPath, args, {
    env: { ...process.env, ...env },
    stdio: ['ignore', 'pipe', 'ignore'],
  })
  return new Promise((ready, fail) => {
    child.stdout.once('data', (text: Buffer) => {
      const [, url] = /(http:\S+)/.exec(text.toString()) ?? []
      if (url === undefined) fail(new Error(`no address in ${text}`))
      else ready({ child, url })
    })
    child.once('exit', () => fail(new Error('the server ended')))
  })
}

/** The first backup of a day is taken at the start, and is no part of what is measured. */
export async function backupTaken(folder: string): Promise<void> {
  const backups = join(folder, 'backups')
  const there = (): boolean =>
    existsSync(backups) && readdirSync(backups).some((name) => name.endsWith('.sqlite'))
  for (let n = 0; n < 600 && !there(); n++) await setTimeout(100)
}

/** Milliseconds of the processor that a process has had so far (Linux counts in hundredths of a second). */
function cpuOf({ child }: Served): number {
  const fields = readFileSync(`/proc/${child.pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? []
  return (Number(fields[11]) + Number(fields[12])) * 10
}

/** Resident memory of a process in MB, now and at most; NaN where the system does not say. */
export function memoryOf({ child }: Served): { now: number; most: number } {
  const status = existsSync(`/proc/${child.pid}/status`)
    ? readFileSync(`/proc/${child.pid}/status`, 'utf8')
    : ''
  const mb = (name: string): number => Number(new RegExp(`${name}:\\s+(\\d+)`).exec(status)?.[1]) / 1000
  return { now: mb('VmRSS'), most: mb('VmHWM') }
}

const PAGES = [
  '/',
  '/yard',
  '/colony/TAG',
  '/colony/TAG/visit',
  '/',
  '/colony/TAG',
  '/yard?find=-49',
  '/colony/TAG',
  '/changes',
]

function run(url: string, session: string, requests: Request[]): Promise<Result> {
  const headers = { Cookie: `resettle=${session}`, Origin: url, Accept: 'text/html' }
  return autocannon({ url, connections: CONNECTIONS, duration: SECONDS, headers, requests, timeout: 30 })
}

const reading = (path: string): Request => ({
  method: 'GET',
  path,
  setupRequest: (request) => ({ ...request, path: path.replace('TAG', openTag()) }),
})

/** Times of writes and reads apart; autocannon itself only knows all of them together. */
function writing(heard: { written: number; refused: number }): Request {
  return {
    method: 'POST',
    path: '/entries',
    headers: { 'Content-Type': 'application/json', Accept: 'application/json' },
    setupRequest: (request) => ({ ...request, body: JSON.stringify(look(openTag())) }),
    onResponse: (status) => {
      if (status === 200) heard.written++
      else heard.refused++
    },
  }
}

/** Each page and the form once, one after the other: what is made once a start is no part of what is measured. */
async function warmed(url: string, session: string): Promise<void> {
  const headers = { Cookie: `resettle=${session}`, Accept: 'text/html' }
  const began = performance.now()
  for (const path of new Set([...PAGES, FORM])) {
    const answer = await fetch(url + path.replace('TAG', openTag()), { headers })
    await answer.arrayBuffer()
    if (!answer.ok) throw new Error(`${path}: ${answer.status}`)
  }
  say(`  first look at each page: ${((performance.now() - began) / 1000).toFixed(1)} s in all`)
  await run(url, session, PAGES.map(reading))
}

/** A simple page. */
const FORM = '/colony/TAG/note'

/** Somebody beside the 50, who opens a form ten times a second. */
const beside = (url: string, session: string): Promise<Result> =>
  autocannon({
    url,
    connections: 1,
    overallRate: 10,
    duration: SECONDS,
    headers: { Cookie: `resettle=${session}`, Accept: 'text/html' },
    requests: [reading(FORM)],
    timeout: 30,
  })

/** The same requests to hono alone. */
async function honoAlone(session: string): Promise<Rate> {
  const server = await served([await built('tests/bench/hono-alone.ts', OUTPUT)])
  try {
    const heard = { written: 0, refused: 0 }
    const before = cpuOf(server)
    await run(server.url, session, [writing(heard)])
    return { rate: heard.written / SECONDS, cpu: (cpuOf(server) - before) / heard.written }
  } finally {
    server.child.kill()
  }
}

const figures = (r: Result): string =>
  [
    `${r.requests.average.toFixed(0)} requests/s`,
    `p50 ${r.latency.p50} ms`,
    `p95 ${r.latency.p97_5 >= r.latency.p90 ? interpolated(r) : r.latency.p90} ms`,
    `p99 ${r.latency.p99} ms`,
    `errors ${r.errors + r.timeouts + r.non2xx}`,
  ].join(', ')

/** autocannon tells p90 and p97.5; p95 lies two thirds of the way, which is an upper bound for the usual tail. */
const interpolated = (r: Result): number =>
  Math.round(r.latency.p90 + ((r.latency.p97_5 - r.latency.p90) * 2) / 3)

export async function bench(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'resettle-load-'))
  try {
    const file = join(folder, 'resettle.db')
    const started = performance.now()
    const session = await madeBook(file)
    say(
      `load: a book of ${COLONIES} colonies, ${ENTRIES} entries, ${OPEN} in the yard, made in ${((performance.now() - started) / 1000).toFixed(0)} s`,
    )
    const server = await served(SERVE, { RESETTLE_DATA: folder })
    const { child, url } = server
    await backupTaken(folder)
    say(`  memory after the start: ${memoryOf(server).now.toFixed(0)} MB`)
    await warmed(url, session)

    const mixed = { written: 0, refused: 0 }
    const [both, one] = await Promise.all([
      run(url, session, [writing(mixed), ...PAGES.map(reading)]),
      beside(url, session),
    ])
    say(
      `  90 % reading, 10 % writing, ${CONNECTIONS} connections: ${figures(both)}; ${(mixed.written / SECONDS).toFixed(0)} entries/s`,
    )
    say(
      `  a form, ten times a second beside them: p50 ${one.latency.p50} ms, p99 ${one.latency.p99} ms   (goal: 250)`,
    )
    const alone = { written: 0, refused: 0 }
    const before = cpuOf(server)
    const writes = await run(url, session, [writing(alone)])
    const cpu = (cpuOf(server) - before) / alone.written
    say(`  writing alone, ${CONNECTIONS} connections: ${figures(writes)}`)
    const memory = memoryOf(server)
    say(`  memory after it all: ${memory.now.toFixed(0)} MB, at most ${memory.most.toFixed(0)} MB`)
    child.kill()
    const hono = await honoAlone(session)
    const bare = bareInserts(join(folder, 'bare.db'))
    const durable = alone.written / SECONDS
    say(
      `  durable entries: ${durable.toFixed(0)}/s over HTTP, ${bare.rate.toFixed(0)}/s bare inserts, ${hono.rate.toFixed(0)}/s answered by hono alone: ratio to bare inserts ${(durable / bare.rate).toFixed(2)}   (goal: 0.3)`,
    )
    say(
      `  processor: ${cpu.toFixed(2)} ms an entry over HTTP, ${hono.cpu.toFixed(2)} ms of hono alone, ${bare.cpu.toFixed(2)} ms a bare insert`,
    )
    const failed = mixed.refused + alone.refused + both.errors + writes.errors + one.errors + one.non2xx
    if (failed > 0) throw new Error(`${failed} requests failed`)
    for (const [what, n] of Object.entries({
      pages: both.requests.total,
      forms: one.requests.total,
      entries: Math.min(mixed.written, alone.written),
    }))
      if (n === 0) throw new Error(`no ${what} were answered at all`)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
