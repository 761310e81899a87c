/**
 * Webhooks as the Standard Webhooks specification describes them: `webhook-id`, `webhook-timestamp` and
 * `webhook-signature` (v1, HMAC-SHA256 over id, timestamp and body), so that ready-made libraries can check them.
 */
import { createHmac, randomBytes } from 'node:crypto'
import { type LookupAddress, type LookupOptions, lookup } from 'node:dns'
import { request as plainRequest } from 'node:http'
import { request as secureRequest } from 'node:https'
import { isIP } from 'node:net'
import { type HookRules, hostOf } from './hook-rules.ts'
import type { Sent } from './mail.ts'

export interface Delivery {
  url: string
  /** 'whsec_…' */
  secret: string
  /** The same on every attempt, so that the receiver can tell a repeat. */
  id: string
  /** JSON text. */
  body: string
}

/** Milliseconds for the whole call. */
const HOOK_MS = 10_000

const SECRET = 'whsec_'

/** 192 bits, as the specification writes them. */
export const newHookSecret = (): string => SECRET + randomBytes(24).toString('base64')

/** The signature over a delivery. `timestamp` in seconds. */
function signatureOf({ secret, id, body }: Omit<Delivery, 'url'>, timestamp: number): string {
  const key = Buffer.from(secret.replace(SECRET, ''), 'base64')
  return `v1,${createHmac('sha256', key).update(`${id}.${timestamp}.${body}`).digest('base64')}`
}

class NotAllowed extends Error {}

/** Posts it. Never throws; of the answer only the status is read. */
export async function deliver(delivery: Delivery, rules: HookRules, now: Date, ms = HOOK_MS): Promise<Sent> {
  try {
    const status = await post(delivery, rules, now, ms)
    if (status >= 200 && status < 300) return { ok: true }
    // Asked to wait, or broken on their side: later may help. A redirect is not followed.
    const again = status === 408 || status === 425 || status === 429 || status >= 500
    return { ok: false, again, words: `the webhook answered ${status}` }
  } catch (error) {
    if (error instanceof NotAllowed)
      return { ok: false, again: false, words: 'the webhook’s address is one this server may not call' }
    const { code, name } = error as { code?: string; name?: string }
    const slow = name === 'AbortError' || name === 'TimeoutError' || code === 'ABORT_ERR'
    const words = slow ? 'did not answer in time' : `could not be reached (${code ?? 'no reason given'})`
    return { ok: false, again: true, words: `the webhook ${words}` }
  }
}

function post(delivery: Delivery, rules: HookRules, now: Date, ms: number): Promise<number> {
  const url = new URL(delivery.url)
  const secure = url.protocol === 'https:'
  const host = hostOf(url)
  const body = Buffer.from(delivery.body)
  const timestamp = Math.floor(now.getTime() / 1000)
  return new Promise((resolve, reject) => {
    // Addresses written as such are not looked up, so they are asked about here.
    if (isIP(host) !== 0 && !rules.mayReach(host, secure)) throw new NotAllowed()
    const sent = (secure ? secureRequest : plainRequest)(
      url,
      {
        method: 'POST',
        agent: false,
        signal: AbortSignal.timeout(ms),
        lookup: guardedLookup(rules, secure),
        headers: {
          'Content-Type': 'application/json',
          'Content-Length': body.length,
          'User-Agent': 'Resettle',
          'webhook-id': delivery.id,
          'webhook-timestamp': String(timestamp),
          'webhook-signature': signatureOf(delivery, timestamp),
        },
      },
      (answer) => {
        resolve(answer.statusCode ?? 0)
        answer.destroy()
      },
    )
    sent.on('error', reject)
    sent.end(body)
  })
}

type Answer = (
  error: NodeJS.ErrnoException | null,
  address: string | LookupAddress[],
  family?: number,
) => void

type Resolve = (
  host: string,
  options: LookupOptions & { all: true },
  told: (error: NodeJS.ErrnoException | null, found: LookupAddress[]) => void,
) => void

/** Looks a name up and refuses it when any of its addresses may not be reached: the connection goes to what was checked. */
export const guardedLookup =
  (rules: HookRules, secure: boolean, addressesOf: Resolve = lookup) =>
  (host: string, options: LookupOptions, answer: Answer): void => {
    addressesOf(host, { ...options, all: true }, (error, found) => {
      const [first] = found ?? []
      if (error !== null || first === undefined) return answer(error ?? new NotAllowed(), [])
      if (found.some((a) => !rules.mayReach(a.address, secure))) return answer(new NotAllowed(), [])
      if (options.all === true) answer(null, found)
      else answer(null, first.address, first.family)
    })
  }
