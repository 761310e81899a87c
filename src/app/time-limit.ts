/**
 * How long a request may take. What it takes to arrive is the network's doing, and a photo over a bad line at the hives may
 * well take minutes: as long as enough bytes come, it is waited for. The time for the answer counts from the last byte.
 */
import type { IncomingMessage } from 'node:http'
import type { MiddlewareHandler } from 'hono'
import { HTTPException } from 'hono/http-exception'
import type { AppContext, Env } from './context.ts'

export interface Times {
  /** Milliseconds from the last byte to the answer. */
  answer: number
  /** How often the arriving is looked at, milliseconds. */
  look: number
  /** Bytes that have to come between two looks. */
  least: number
}

/** A kilobyte a second, looked at every 15: the slowest mobile networks manage several (judgement). */
const TIMES: Times = { answer: 30_000, look: 15_000, least: 15 * 1024 }

const late = (): HTTPException =>
  new HTTPException(503, { res: new Response('This took too long. Try again.', { status: 503 }) })

const slow = (): HTTPException =>
  new HTTPException(408, {
    res: new Response('What was sent stopped arriving. Try again.', {
      status: 408,
      headers: { Connection: 'close' },
    }),
  })

/** Answers 503 when an answer takes too long, 408 when what is sent comes too slowly. */
export function timeLimit(times: Times = TIMES): MiddlewareHandler<Env> {
  return async (c, next) => {
    const watch = watching(incomingOf(c), times)
    try {
      await Promise.race([next(), watch.failed])
    } finally {
      watch.stop()
    }
  }
}

const incomingOf = (c: AppContext): IncomingMessage | undefined =>
  (c.env as { incoming?: IncomingMessage } | undefined)?.incoming

/** Rejects when the request is too slow or its answer too late. */
function watching(
  incoming: IncomingMessage | undefined,
  times: Times,
): { failed: Promise<never>; stop: () => void } {
  let timer: NodeJS.Timeout | undefined
  let fail: (error: Error) => void = () => {}
  const failed = new Promise<never>((_, reject) => {
    fail = reject
  })
  failed.catch(() => undefined)
  const answering = (): void => {
    clearInterval(timer)
    timer = setTimeout(() => fail(late()), times.answer)
  }
  if (incoming === undefined || hasArrived(incoming)) answering()
  else {
    let before = incoming.socket.bytesRead
    timer = setInterval(() => {
      if (hasArrived(incoming)) return answering()
      const now = incoming.socket.bytesRead
      if (now - before < times.least) cutOff(incoming, fail)
      before = now
    }, times.look)
    incoming.once('end', answering)
  }
  const stop = (): void => {
    clearInterval(timer)
    incoming?.off('end', answering)
  }
  return { failed, stop }
}

/** Without a body there is nothing to wait for. */
const hasArrived = (incoming: IncomingMessage): boolean =>
  incoming.complete ||
  (incoming.headers['content-length'] === undefined && incoming.headers['transfer-encoding'] === undefined)

/** Milliseconds in which the answer may reach whoever is that slow. */
const FAREWELL_MS = 1000

function cutOff(incoming: IncomingMessage, fail: (error: Error) => void): void {
  fail(slow())
  setTimeout(() => incoming.destroy(), FAREWELL_MS).unref()
}
