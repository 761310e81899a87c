/**
 * Accounts of the invented people. Nobody has to sign in: the demo's sign-in page offers them by name, and says that the
 * yard is invented. Each gets a passphrase that nobody knows.
 */

import { randomUUID } from 'node:crypto'
import type { DemoSignIn } from '../src/app/index.ts'
import type { People, Role } from '../src/people/index.ts'
import { ISOLDE, JUNO, MAREN, PERPETUA, TOBIAH } from './cast.ts'

const CAST: { name: string; role: Role; shown?: true }[] = [
  { name: MAREN, role: 'beekeeper', shown: true },
  { name: ISOLDE, role: 'helper', shown: true },
  { name: PERPETUA, role: 'operator', shown: true },
  { name: TOBIAH, role: 'beekeeper' },
  { name: JUNO, role: 'helper' },
]

/** Makes the accounts; gives those that the sign-in page offers. */
export async function demoAccounts(people: Pick<People, 'accounts' | 'putPassphrase'>): Promise<DemoSignIn> {
  for (const { name, role } of CAST) {
    const made = people.accounts.make({ name, role, by: null })
    if (made.ok) await people.putPassphrase(made.value.id, `never typed ${randomUUID()}`)
  }
  return {
    people: CAST.flatMap(({ name, role, shown }) => (shown === undefined ? [] : [{ name, role }])),
  }
}
