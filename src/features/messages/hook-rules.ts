/**
 * Where webhooks may go. Anybody with an account can name an address, so without a rule the server could be made to knock
 * at machines that only it can reach. Stance: https to public addresses only; this machine and private networks (http too)
 * only where whoever runs the server lists them:
 *
 *     RESETTLE_WEBHOOK_INSIDE   "loopback", addresses and subnets, commas between them: "loopback, 192.168.1.0/24"
 *
 * The rule is asked of every address a name resolves to, at the moment of connecting; redirects are not followed; nothing
 * of the answer but its status is used.
 */
import ipaddr from 'ipaddr.js'

export interface HookRules {
  /** Whether a connection to that address may be made. */
  mayReach: (address: string, secure: boolean) => boolean
}

export const HOOK_URL_LIMIT = 500

/** Reads RESETTLE_WEBHOOK_INSIDE. Throws RangeError in words. */
export function hookRulesFrom(env: NodeJS.ProcessEnv): HookRules {
  const names = (env.RESETTLE_WEBHOOK_INSIDE ?? '')
    .split(',')
    .map((n) => n.trim())
    .filter((n) => n !== '')
  const listed = names.map(insideOf)
  return {
    mayReach(address, secure) {
      if (!ipaddr.isValid(address)) return false
      const parsed = ipaddr.process(address)
      return listed.some((inside) => inside(parsed)) || (secure && parsed.range() === 'unicast')
    },
  }
}

type Address = ipaddr.IPv4 | ipaddr.IPv6

function insideOf(name: string): (address: Address) => boolean {
  if (name === 'loopback') return (a) => a.range() === 'loopback'
  const text = name.includes('/') ? name : `${name}/${name.includes(':') ? 128 : 32}`
  if (!ipaddr.isValidCIDR(text))
    throw new RangeError(
      `RESETTLE_WEBHOOK_INSIDE: "${name}" is none of: loopback, an address, a subnet like 192.168.1.0/24`,
    )
  const [net, bits] = ipaddr.parseCIDR(text)
  return (a) => a.kind() === net.kind() && a.match(net, bits)
}

/** What is wrong with a webhook's address as typed, or null. Whether its machine may be reached is found out on sending. */
export function hookUrlProblem(text: string, rules: HookRules): string | null {
  const url = URL.canParse(text) ? new URL(text) : null
  if (url === null || !/^https?:$/.test(url.protocol))
    return 'must be an address like https://home.example/bees'
  if (text.length > HOOK_URL_LIMIT) return `must be at most ${HOOK_URL_LIMIT} characters`
  if (url.username !== '' || url.password !== '') return 'must not hold a name or a password'
  const host = hostOf(url)
  const secure = url.protocol === 'https:'
  if (ipaddr.isValid(host)) return rules.mayReach(host, secure) ? null : 'is one this server may not call'
  // A name is looked up when it is called; in the clear only names of this machine can be right.
  const local = host === 'localhost' || host.endsWith('.localhost')
  if (local) return rules.mayReach('127.0.0.1', secure) ? null : 'is one this server may not call'
  return null
}

/** The host of an address, without the brackets of IPv6. */
export const hostOf = (url: URL): string => url.hostname.replace(/^\[|\]$/g, '')
