/**
 * Limits on guessing, in memory: a restart forgets them, which costs an attacker more than it gives. Every attempt counts
 * before it is looked at, so that many at once are no way round.
 *
 * The tight limit is on a name as tried from one network: somebody else's wrong guesses must not keep its owner out. The
 * wide one, on the name from anywhere, is for a guesser with many addresses. Names that nobody has are counted alike.
 */
import ipaddr from 'ipaddr.js'
import { RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible'
import { nameKey } from './names.ts'

interface LimitSettings {
  /** Attempts within the window. */
  points: number
  /** Seconds. */
  window: number
}

/** One name from one network. */
const BY_ACCOUNT: LimitSettings = { points: 10, window: 15 * 60 }
/** One name from anywhere. */
const BY_NAME: LimitSettings = { points: 100, window: 15 * 60 }
/** Higher than one account's: a whole crew may share an address. */
const BY_ADDRESS: LimitSettings = { points: 50, window: 15 * 60 }

/** Secrets that open something by themselves. */
const GUESSED = ['invitation', 'set-up', 'letter', 'api-token'] as const
type Guessed = (typeof GUESSED)[number]

export interface Limits {
  /** Counts one attempt at an account. Seconds to wait when there were too many, else 0. */
  attempt(name: string, address: string): Promise<number>
  /**
   * Counts one wrong guess at a secret of that kind; seconds to wait when there were too many. Each kind has its own
   * count: a program with an old token must not shut a whole crew's invitations. What is right is never counted nor held
   * up: these secrets are 32 random bytes, which nobody finds by trying.
   */
  guess(what: Guessed, address: string): Promise<number>
  /** The attempt was right after all: the count of this name from this network begins anew. */
  right(name: string, address: string): Promise<void>
}

export function limitsOf(byAccount = BY_ACCOUNT, byAddress = BY_ADDRESS, byName = BY_NAME): Limits {
  const limiter = ({ points, window }: LimitSettings): RateLimiterMemory =>
    new RateLimiterMemory({ points, duration: window })
  const accounts = limiter(byAccount)
  const addresses = limiter(byAddress)
  const names = limiter(byName)
  const guesses = Object.fromEntries(GUESSED.map((what) => [what, limiter(byAddress)])) as Record<
    Guessed,
    RateLimiterMemory
  >
  return {
    async attempt(name, address) {
      // The address first: it bounds how many names' counts one attacker can make us remember. The name last: what the
      // tight limit stops does not use up the wide one.
      const [net, key] = [network(address), keyOf(name)]
      return (
        (await consumed(addresses, net)) ||
        (await consumed(accounts, together(net, key))) ||
        (await consumed(names, key))
      )
    },
    guess: (what, address) => consumed(guesses[what], network(address)),
    async right(name, address) {
      const [net, key] = [network(address), keyOf(name)]
      await accounts.delete(together(net, key))
      await names.reward(key, 1)
      await addresses.reward(net, 1)
    },
  }
}

const keyOf = (name: string): string => nameKey(name).slice(0, 100)
const together = (net: string, key: string): string => JSON.stringify([net, key])

async function consumed(limiter: RateLimiterMemory, key: string): Promise<number> {
  try {
    await limiter.consume(key)
    return 0
  } catch (refusal) {
    if (!(refusal instanceof RateLimiterRes)) throw refusal
    return Math.max(1, Math.ceil(refusal.msBeforeNext / 1000))
  }
}

/** An IPv6 customer holds a whole /64: one guesser, one count. */
export function network(address: string): string {
  if (!ipaddr.isValid(address)) return address.slice(0, 60)
  const parsed = ipaddr.process(address)
  return parsed.kind() === 'ipv4'
    ? parsed.toString()
    : ipaddr.IPv6.networkAddressFromCIDR(`${parsed.toNormalizedString()}/64`).toNormalizedString()
}
