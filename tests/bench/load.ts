/**
 * Load, on loopback: 50 connections, nine requests that read to one that writes, on a book of 5,000 colonies and 200,000
 * entries. Prints p50, p95, p99, errors, and durable entries a second beside bare better-sqlite3 inserts with the same
 * pragmas in the same run. The server runs in a process of its own; sign-ins are done before.
 *
 *     npm run bench -- load            (BENCH_SECONDS=10 for each part)
 */
import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import autocannon, { type Request, type Result } from 'autocannon'
import { v7 } from 'uuid'
import { addDays, dayIn } from '../../src/days.ts'
import { openServices } from '../../src/node/services.ts'
import { connect } from '../../src/store/connection.ts'
import { built } from '../safekeeping/faults/build.ts'
import { Dice, randomFrom, story } from '../store/yard.ts'
import { CHEAP, signInAs } from '../support/people.ts'

const COLONIES = Number(process.env.BENCH_COLONIES ?? 5000)
const ENTRIES = 40 * COLONIES
const OPEN = 60
const CONNECTIONS = 50
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

/** Rows like the journal's, one durable transaction each, and nothing else. */
function bareInserts(file: string): number {
  const { raw } = connect(file)
  raw.exec(
    'CREATE TABLE bare (seq INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, colony TEXT NOT NULL, kind TEXT NOT NULL, on_day TEXT NOT NULL, replaces TEXT, recorded_at TEXT NOT NULL, recorded_by TEXT NOT NULL, payload TEXT NOT NULL) STRICT',
  )
  const insert = raw.prepare(
    'INSERT INTO bare (id, colony, kind, on_day, recorded_at, recorded_by, payload) VALUES (?, ?, ?, ?, ?, ?, ?)',
  )
  const payload = JSON.stringify(look(`C-${COLONIES - 1}`))
  const until = performance.now() + SECONDS * 1000
  let rows = 0
  for (; performance.now() < until; rows++)
    insert.run(v7(), 'C-1', 'inspection', TODAY, new Date().toISOString(), 'Odalys', payload)
  raw.close()
  return rows / SECONDS
}

const look = (colony: string) => ({
  id: v7(),
  colony,
  kind: 'inspection',
  on: TODAY,
  by: 'Odalys',
  at: `${10 + Math.floor(Math.random() * 10)}:${10 + Math.floor(Math.random() * 50)}`,
  opened: false,
  stores: 'enough',
})
const openTag = (): string => `C-${COLONIES - 1 - Math.floor(Math.random() * OPEN)}`

interface Served {
  child: ChildProcess
  url: string
}

function served(program: string, file: string): Promise<Served> {
  const child = spawn(process.execPath, [program, file], { stdio: ['ignore', 'pipe', 'inherit'] })
  return new Promise((ready, fail) => {
    child.stdout.once('data', (text: Buffer) => ready({ child, url: text.toString().trim() }))
    child.once('exit', () => fail(new Error('the server ended')))
  })
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
    const program = await built('tests/safekeeping/faults/server.ts', OUTPUT)
    const { child, url } = await served(program, file)
    await run(url, session, PAGES.map(reading)).then(() => undefined)

    const mixed = { written: 0, refused: 0 }
    const both = await run(url, session, [...PAGES.map(reading), writing(mixed)])
    say(
      `  90 % reading, 10 % writing, ${CONNECTIONS} connections: ${figures(both)}; ${(mixed.written / SECONDS).toFixed(0)} entries/s`,
    )
    const alone = { written: 0, refused: 0 }
    const writes = await run(url, session, [writing(alone)])
    say(`  writing alone, ${CONNECTIONS} connections: ${figures(writes)}`)
    child.kill()
    const bare = bareInserts(join(folder, 'bare.db'))
    const durable = alone.written / SECONDS
    say(
      `  durable entries: ${durable.toFixed(0)}/s over HTTP, ${bare.toFixed(0)}/s bare inserts: ratio ${(durable / bare).toFixed(2)}   (goal: 0.5)`,
    )
    if (mixed.refused + alone.refused + both.errors + writes.errors > 0)
      throw new Error('some requests failed')
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
