/** Names of people. A name signs entries for ever, so it belongs to one person and is never given to another. */
import type { Language } from '../languages.ts'
import type { Role } from './permissions.ts'

/** As long as an entry's `by` may be. */
const NAME_LIMIT = 60

/** Control characters, and marks that turn the direction of text around: they could disguise one name as another. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u

/** The name as it is kept. Example: nameTyped('  Odalys   Bram ') = 'Odalys Bram'. */
export const nameTyped = (text: string): string => text.normalize('NFC').trim().replaceAll(/ +/g, ' ')

/** What is wrong with a name, or null. */
export function nameProblem(name: string): string | null {
  if (name === '') return 'must not be empty'
  if (name.length > NAME_LIMIT) return `must be at most ${NAME_LIMIT} characters`
  if (UNSEEN.test(name)) return 'must not hold characters that cannot be seen'
  return null
}

/** Two names with the same key are the same name. */
export const nameKey = (name: string): string => nameTyped(name).normalize('NFKC').toLowerCase()

export type PersonState = 'invited' | 'active' | 'closed'

export interface Person {
  id: string
  name: string
  role: Role
  /** invited: has no passphrase yet. closed: kept for what they signed, cannot sign in. */
  state: PersonState
  /** What they chose to read in; null: as their browser says. */
  language: Language | null
  createdAt: string
  /** Who made the account; null for the first operator and for accounts made at the terminal. */
  createdBy: string | null
}

/** Somebody with an account, as others in the yard see them. `open`: can sign in, and has done so once. */
export interface Member {
  name: string
  open: boolean
  /** When it was made, UTC, ISO, and by whom; a phone is not told. */
  made?: { at: string; by: string | null }
}

export const membersOf = (people: readonly Person[]): Member[] =>
  people.map(({ name, state, createdAt, createdBy }) => ({
    name,
    open: state === 'active',
    made: { at: createdAt, by: createdBy },
  }))
