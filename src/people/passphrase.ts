/** Passphrases: what is asked of one, and how it is kept (scrypt, from node:crypto). */
import { randomBytes, type ScryptOptions, scrypt, timingSafeEqual } from 'node:crypto'
import { guessable } from './guessable.ts'
import { nameKey } from './names.ts'

/**
 * At least 12 characters, no rules about kinds of characters: NIST SP 800-63B-4 section 3.1.1.2 asks for length and a
 * list of refused ones and forbids composition rules. It asks for 15 where a passphrase is the only factor; 12 is our
 * choice for people typing in gloves, behind limits on attempts.
 */
const PASSPHRASE_MIN = 12
/** A cap, so that nobody makes the server chew on a book. */
const PASSPHRASE_MAX = 200

/** What is wrong with a passphrase, or null. `names`: its owner's, and those of the yards here. */
export function passphraseProblem(passphrase: string, names: readonly string[]): string | null {
  const length = [...passphrase].length
  if (length < PASSPHRASE_MIN) return `must be at least ${PASSPHRASE_MIN} characters: three or four words do`
  if (length > PASSPHRASE_MAX) return `must be at most ${PASSPHRASE_MAX} characters`
  if (new Set(passphrase.normalize('NFKC').toLowerCase()).size < 5)
    return 'must not be the same few characters over and over'
  return guessable(passphrase, names.map(nameKey))
    ? 'is too easily guessed: choose three or four words that have nothing to do with each other, with you or with this yard'
    : null
}

export interface Cost {
  /** scrypt's N, r and p. Memory: 128 * N * r bytes. */
  n: number
  r: number
  p: number
}

/**
 * N = 2^15, r = 8, p = 3: one of the equally strong settings of the OWASP password storage cheat sheet, the one that
 * needs the least memory (32 MiB), for small machines.
 */
export const COST: Cost = { n: 32_768, r: 8, p: 3 }

const KEY_BYTES = 32
const SALT_BYTES = 16

/** 'scrypt$N$r$p$salt$key', salt and key in base64url. */
export async function hashed(passphrase: string, cost: Cost = COST): Promise<string> {
  const salt = randomBytes(SALT_BYTES)
  const key = await derived(passphrase, salt, cost)
  return ['scrypt', cost.n, cost.r, cost.p, salt.toString('base64url'), key.toString('base64url')].join('$')
}

/** Whether the passphrase is the one that was hashed. Throws RangeError on text that is no hash of ours. */
export async function matches(passphrase: string, hash: string): Promise<boolean> {
  const { cost, salt, key } = read(hash)
  return timingSafeEqual(await derived(passphrase, salt, cost), key)
}

/** True when it was hashed with other settings than today's. */
export function outdated(hash: string, cost: Cost = COST): boolean {
  const made = read(hash).cost
  return made.n !== cost.n || made.r !== cost.r || made.p !== cost.p
}

function read(hash: string): { cost: Cost; salt: Buffer; key: Buffer } {
  const [name, n, r, p, salt = '', key = ''] = hash.split('$')
  const cost = { n: Number(n), r: Number(r), p: Number(p) }
  const bytes = Buffer.from(key, 'base64url')
  if (name !== 'scrypt' || bytes.length !== KEY_BYTES) throw new RangeError('not a hashed passphrase')
  return { cost, salt: Buffer.from(salt, 'base64url'), key: bytes }
}

function derived(passphrase: string, salt: Buffer, { n, r, p }: Cost): Promise<Buffer> {
  const options: ScryptOptions = { N: n, r, p, maxmem: 256 * n * r }
  // The same passphrase typed on two keyboards must be the same bytes.
  const text = passphrase.normalize('NFKC')
  return new Promise((done, fail) => {
    scrypt(text, salt, KEY_BYTES, options, (error, key) => (error ? fail(error) : done(key)))
  })
}
