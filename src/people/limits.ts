/**
 * Limits on guessing, by account and by address, in memory: a restart forgets them, which costs an attacker more than it
 * gives. Every attempt counts before it is looked at, so that many at once are no way round.
 */
import ipaddr from 'ipaddr.js'
import { RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible'
import { nameKey } from './names.ts'

export interface LimitSettings {
  /** Attempts within the window. */
  points: number
  /** Seconds. */
  window: number
}

export const BY_ACCOUNT: LimitSettings = { points: 10, window: 15 * 60 }
/** Higher than one account's: a whole crew may share an address. */
export const BY_ADDRESS: LimitSettings = { points: 50, window: 15 * 60 }

export interface Limits {
  /** Counts one attempt at an account. Seconds to wait when there were too many, else 0. */
  attempt(name: string, address: string): Promise<number>
  /** Counts one attempt at a secret address (an invitation, the set-up token). */
  guess(address: string): Promise<number>
  /** The attempt was right after all: the account's count begins anew. */
  right(name: string, address: string): Promise<void>
}

export function limitsOf(byAccount = BY_ACCOUNT, byAddress = BY_ADDRESS): Limits {
  const limiter = ({ points, window }: LimitSettings): RateLimiterMemory =>
    new RateLimiterMemory({ points, duration: window })
  const accounts = limiter(byAccount)
  const addresses = limiter(byAddress)
  const guesses = limiter(byAddress)
  return {
    async attempt(name, address) {
      // The address first: it bounds how many accounts' counts one attacker can make us remember.
      const wait = await consumed(addresses, network(address))
      return wait > 0 ? wait : consumed(accounts, nameKey(name).slice(0, 100))
    },
    guess: (address) => consumed(guesses, network(address)),
    async right(name, address) {
      await accounts.delete(nameKey(name).slice(0, 100))
      await addresses.reward(network(address), 1)
    },
  }
}

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
