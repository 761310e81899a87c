/** Words for roles and accounts. */
import type { PersonState, Role } from '../people/index.ts'
import type { Choice } from './choices.ts'

export const ROLE_WORDS: Record<Role, string> = {
  operator: 'Operator',
  beekeeper: 'Beekeeper',
  helper: 'Helper',
}

export const STATE_WORDS: Record<PersonState, string> = {
  invited: 'invited, has not chosen a passphrase yet',
  active: 'can sign in',
  closed: 'closed',
}

export const ROLE_CHOICES: Choice[] = [
  { value: 'helper', label: 'Helper', hint: 'Records visits. Never sees customers or costs.' },
  { value: 'beekeeper', label: 'Beekeeper', hint: 'Also logs intakes and outcomes, and corrects.' },
  { value: 'operator', label: 'Operator', hint: 'Everything: people, rules, review, backups.' },
]

/** 'signed in on 2 browsers' */
export const signedInWords = (browsers: number): string =>
  browsers === 0
    ? 'not signed in anywhere now'
    : `signed in on ${browsers} ${browsers === 1 ? 'browser' : 'browsers'}`

/** What works without signing in. Example: keysWords(2) = '2 tokens and calendar addresses'. */
export const keysWords = (n: number): string =>
  n === 1 ? '1 token or calendar address' : `${n} tokens and calendar addresses`
