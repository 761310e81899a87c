/**
 * Where a request came from and how the yard is called from outside. Headers that a proxy sets are believed only when the
 * request comes from a proxy that is trusted (RESETTLE_TRUST_PROXY).
 */
import type { IncomingMessage } from 'node:http'
import proxyAddr from 'proxy-addr'
import type { AppContext } from './context.ts'

/** Whether a proxy at that address is trusted. */
type Trust = (address: string) => boolean

export interface Outside {
  /** The address people type ('https://yard.example'), when it was set; else it is taken from each request. */
  url: string | null
  trust: Trust
}

/** For a server that is reached directly. */
export const DIRECT: Outside = { url: null, trust: () => false }

/**
 * Reads RESETTLE_URL and RESETTLE_TRUST_PROXY ('loopback', 'linklocal', 'uniquelocal', addresses and subnets, commas
 * between them). Throws RangeError in words.
 */
export function outsideFrom(env: NodeJS.ProcessEnv): Outside {
  return { url: urlFrom(env.RESETTLE_URL), trust: trustFrom(env.RESETTLE_TRUST_PROXY) }
}

function urlFrom(text: string | undefined): string | null {
  if (text === undefined || text === '') return null
  const url = URL.canParse(text) ? new URL(text) : null
  if (url === null || !/^https?:$/.test(url.protocol) || url.pathname !== '/')
    throw new RangeError(`RESETTLE_URL must be like https://yard.example, without a path, not "${text}"`)
  return url.origin
}

function trustFrom(text: string | undefined): Trust {
  const names = (text ?? '')
    .split(',')
    .map((n) => n.trim())
    .filter((n) => n !== '')
  if (names.length === 0) return DIRECT.trust
  try {
    const trusted = proxyAddr.compile(names)
    return (address) => trusted(address, 0)
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    throw new RangeError(`RESETTLE_TRUST_PROXY: ${why}; give "loopback", or the proxy’s addresses or subnets`)
  }
}

const incoming = (c: AppContext): IncomingMessage | undefined =>
  (c.env as { incoming?: IncomingMessage } | undefined)?.incoming

/** The peer of the connection; '' in a test without one. */
const peer = (c: AppContext): string => incoming(c)?.socket?.remoteAddress ?? ''

/** The address of whoever asks, past trusted proxies. */
export function addressOf(c: AppContext, { trust }: Outside): string {
  const request = incoming(c)
  return request?.socket === undefined ? '' : (proxyAddr(request, (address) => trust(address)) ?? '')
}

/** A header that only a trusted proxy may set; the first of several values. */
const told = (c: AppContext, { trust }: Outside, name: string): string | undefined =>
  trust(peer(c)) ? c.req.header(name)?.split(',')[0]?.trim() : undefined

/** Whether the browser came over TLS. */
export const isSecure = (c: AppContext, outside: Outside): boolean =>
  originOf(c, outside).startsWith('https:')

/** The origin as the browser knows it. */
export function originOf(c: AppContext, outside: Outside): string {
  if (outside.url !== null) return outside.url
  // Asked several times a request, so the address is not taken apart for it.
  const { url } = c.req
  const protocol =
    told(c, outside, 'x-forwarded-proto') === 'https' ? 'https' : url.slice(0, url.indexOf(':'))
  const host = told(c, outside, 'x-forwarded-host') ?? c.req.header('host') ?? new URL(url).host
  return `${protocol}://${host}`
}
