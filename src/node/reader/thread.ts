/**
 * The thread that makes long pages: the very routes of the server, on a connection that only reads. One page after the
 * other; between two, and between the parts of a long file, it hears what else is said.
 */
import { setImmediate as turn } from 'node:timers/promises'
import { type MessagePort, parentPort, workerData } from 'node:worker_threads'
import type { Hono } from 'hono'
import type { Env } from '../../app/index.ts'
import { forecastCache } from '../../app/index.ts'
import { DIRECT, SILENT } from '../../app/node.ts'
import type { Role } from '../../people/index.ts'
import { type AllDeps, appFor } from '../app.ts'
import { assetsIn } from '../assets.ts'
import { openToRead } from '../services.ts'
import type { Asked, FromThread, ThreadData, ToThread } from './messages.ts'

interface Work {
  asked: Asked
  stopping: AbortController
  body: ReadableStreamDefaultReader<Uint8Array> | null
}

function reading(port: MessagePort, { file, zone }: ThreadData): void {
  const say = (message: FromThread): void => port.postMessage(message)
  let now = new Date()
  const services = openToRead(file)
  const deps: AllDeps = {
    ...services,
    outside: DIRECT,
    setUpToken: null,
    demo: null,
    log: SILENT,
    clock: () => now,
    zone,
    assets: assetsIn(),
    forecasts: forecastCache(),
    report: (error, request) => say({ kind: 'bug', error, request }),
  }
  const apps = new Map<Role, Hono<Env>>()
  const appOf = (role: Role): Hono<Env> => {
    const app = apps.get(role) ?? appFor(role, deps)
    apps.set(role, app)
    return app
  }
  const works = new Map<number, Work>()
  const queue: Work[] = []
  let busy = false

  async function make({ asked, stopping }: Work): Promise<void> {
    const { id, method, url, headers, viewer } = asked
    say({ kind: 'begun', id })
    now = new Date(asked.now)
    try {
      const request = new Request(url, { method, headers, signal: stopping.signal })
      const response = await appOf(viewer.role).fetch(request, { viewer })
      const work = works.get(id)
      if (work === undefined) return void response.body?.cancel()
      work.body = response.body?.getReader() ?? null
      say({ kind: 'head', id, status: response.status, headers: [...response.headers] })
    } catch (error) {
      say({ kind: 'failed', id, message: error instanceof Error ? error.message : String(error) })
      works.delete(id)
    }
  }

  async function goOn(): Promise<void> {
    if (busy) return
    busy = true
    for (let next = queue.shift(); next !== undefined; next = queue.shift()) {
      // So that a page for somebody who has gone meanwhile is not begun.
      await turn()
      if (works.has(next.asked.id)) await make(next)
    }
    busy = false
  }

  async function more(id: number): Promise<void> {
    const work = works.get(id)
    if (work === undefined) return
    try {
      const { done, value } = (await work.body?.read()) ?? { done: true, value: undefined }
      say({ kind: 'part', id, bytes: done ? null : value })
      if (done) works.delete(id)
    } catch (error) {
      say({ kind: 'failed', id, message: error instanceof Error ? error.message : String(error) })
      works.delete(id)
    }
  }

  port.on('message', (message: ToThread) => {
    if (message.kind === 'ask') {
      const work = { asked: message, stopping: new AbortController(), body: null }
      works.set(message.id, work)
      queue.push(work)
      goOn()
    } else if (message.kind === 'more') more(message.id)
    else {
      const work = works.get(message.id)
      works.delete(message.id)
      work?.stopping.abort()
      work?.body?.cancel().catch(() => undefined)
    }
  })
}

if (parentPort !== null) reading(parentPort, workerData as ThreadData)
