/**
 * Kills a server again and again while phones write to it, and keeps account of what it acknowledged. Phones behave as the
 * outbox does: what was not acknowledged is sent again, under the same id, to the server that comes up next.
 */
import { type ChildProcess, spawn } from 'node:child_process'
import { Agent, request } from 'node:http'
import { openServices } from '../../src/node/services.ts'
import { openStore } from '../../src/store/node.ts'
import { CHEAP, signInAs } from '../support/people.ts'
import { inspection, intake, newId } from './helpers.ts'
import { type Random, randomFrom } from './yard.ts'

export interface Killed {
  kills: number
  acknowledged: number
  /** Sent but not answered when the server died; sent again afterwards. */
  inFlight: number
  /** Of those, how many had been written before the server died. */
  writtenUnheard: number
  /** Entries that were acknowledged and are not in the journal. */
  lost: string[]
  /** Ids in the journal more than once, or never sent. */
  extra: string[]
  /** What verify found. */
  problems: string[]
}

interface Options {
  program: string
  file: string
  kills: number
  seed: number
  /** Phones writing at the same time. */
  phones?: number
  /** Longest time a server lives once it is at work, in milliseconds. */
  life?: number
}

const COLONIES = 12

export async function killAgainAndAgain(options: Options): Promise<Killed> {
  const { program, file, kills, seed, phones = 4, life = 50 } = options
  const random = randomFrom(seed)
  const cookie = `resettle=${await preparedYard(file)}`
  const sent = new Set<string>()
  const heard = new Set<string>()
  const waiting: Outgoing[] = []
  const told = { kills, acknowledged: 0, inFlight: 0, writtenUnheard: 0 }
  for (let n = 0; n < kills; n++) {
    const server = await started(program, file)
    const again = waiting.splice(0)
    told.inFlight += again.length
    let dead = false
    let underWay = (): void => undefined
    const firstHeard = new Promise<void>((go) => {
      underWay = go
    })
    const phone = async (): Promise<void> => {
      while (!dead) {
        const out = again.pop() ?? entryFor(random)
        sent.add(out.id)
        const answer = await post(server.url, cookie, out.body)
        if (answer === null) waiting.push(out)
        else {
          if (answer.already.includes(out.id)) told.writtenUnheard++
          else if (!answer.accepted.includes(out.id)) throw new Error(`not taken: ${JSON.stringify(answer)}`)
          heard.add(out.id)
          underWay()
        }
      }
    }
    const working = Array.from({ length: phones }, phone)
    // One in five dies while it is still waking up, the others somewhere in full work.
    if (random() < 0.8) await Promise.race([firstHeard, ...working])
    await new Promise((go) => setTimeout(go, Math.floor(random() * life)))
    dead = true
    server.child.kill('SIGKILL')
    await server.gone
    await Promise.all(working)
    waiting.push(...again)
  }
  return { ...told, acknowledged: heard.size, ...reckoned(file, sent, heard) }
}

async function preparedYard(file: string): Promise<string> {
  const services = openServices(file, { cost: CHEAP })
  const founded = Array.from({ length: COLONIES }, (_, i) => intake(`K-${i}`))
  const result = services.store.append(founded, {
    today: '2026-06-01',
    recordedAt: '2026-06-01T00:00:00.000Z',
  })
  if (!result.ok) throw new Error('the yard could not be prepared')
  const session = await signInAs(services.people, { name: 'Odalys', role: 'operator' })
  services.close()
  return session
}

interface Outgoing {
  id: string
  body: string
}

function entryFor(random: Random): Outgoing {
  const colony = `K-${Math.floor(random() * COLONIES)}`
  const entry =
    random() < 0.5
      ? inspection(colony, '2026-05-20', { stores: 'enough' })
      : {
          id: newId(),
          colony,
          kind: 'note',
          on: '2026-05-20',
          by: 'Odalys',
          text: 'x'.repeat(Math.floor(random() * 1500) + 1),
        }
  return { id: entry.id, body: JSON.stringify(entry) }
}

interface Server {
  child: ChildProcess
  url: string
  gone: Promise<void>
}

/** Starts the program and waits until it answers. Rejects when it ends first: then it refused to serve. */
function started(program: string, file: string): Promise<Server> {
  const child = spawn(process.execPath, [program, file], { stdio: ['ignore', 'pipe', 'pipe'] })
  const gone = new Promise<void>((done) => child.once('close', () => done()))
  let errors = ''
  child.stderr.on('data', (text: Buffer) => {
    errors += text.toString()
  })
  return new Promise((ready, fail) => {
    child.stdout.once('data', (text: Buffer) => ready({ child, url: text.toString().trim(), gone }))
    child.once('exit', () => fail(new Error(`the server ended before it answered: ${errors}`)))
  })
}

const agent = new Agent({ keepAlive: true })

/** The server's answer; null when it died first. Throws when it refused. */
function post(
  url: string,
  cookie: string,
  body: string,
): Promise<{ accepted: string[]; already: string[] } | null> {
  return new Promise((done, fail) => {
    const headers = {
      'Content-Type': 'application/json',
      Accept: 'application/json',
      Origin: url,
      Cookie: cookie,
    }
    const sending = request(`${url}/entries`, { method: 'POST', agent, headers }, (response) => {
      let text = ''
      response.on('data', (chunk: Buffer) => {
        text += chunk.toString()
      })
      response.on('error', () => done(null))
      response.on('end', () => {
        // Half an answer names nothing: the entry counts as unheard.
        if (!response.complete) done(null)
        else if (response.statusCode === 200)
          done(JSON.parse(text) as { accepted: string[]; already: string[] })
        else fail(new Error(`${response.statusCode} ${text}`))
      })
    })
    sending.on('error', () => done(null))
    sending.end(body)
  })
}

function reckoned(
  file: string,
  sent: Set<string>,
  heard: Set<string>,
): Pick<Killed, 'lost' | 'extra' | 'problems'> {
  const store = openStore(file)
  const rows = [...store.journal()].filter((r) => r.entry.kind !== 'intake').map((r) => r.entry.id)
  const there = new Set(rows)
  const report = store.verify()
  store.close()
  return {
    lost: [...heard].filter((id) => !there.has(id)),
    extra: rows.filter((id, i) => !sent.has(id) || rows.indexOf(id) !== i),
    problems: report.problems,
  }
}
