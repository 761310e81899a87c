/** Secrets that are handed out once (sessions, invitations, the set-up token). The database keeps only their digests. */
import { createHash, randomBytes, timingSafeEqual } from 'node:crypto'

/** 256 bits, as text for addresses and cookies. */
export const newToken = (): string => randomBytes(32).toString('base64url')

/** What is stored of a token. A token is random enough that one round of SHA-256 hides it. */
export const digestOf = (token: string): string => createHash('sha256').update(token).digest('hex')

/** Compares in the same time whatever differs. */
export const sameToken = (a: string, b: string): boolean =>
  timingSafeEqual(Buffer.from(digestOf(a)), Buffer.from(digestOf(b)))
