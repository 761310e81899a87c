/**
 * Accounts of the invented people. Nobody has to sign in: the demo's sign-in page offers them by name, and says that the
 * yard is invented. Each gets a passphrase that nobody knows.
 */

import { randomUUID } from 'node:crypto'
import type { DemoSignIn } from '../src/app/index.ts'
import type { People, Role } from '../src/people/index.ts'
import { ISOLDE, JUNO, MAREN, PERPETUA, TOBIAH } from './cast.ts'

const CAST: { name: string; role: Role; words?: string }[] = [
  { name: MAREN, role: 'beekeeper', words: 'beekeeper: logs intakes from the truck, records and corrects' },
  { name: ISOLDE, role: 'helper', words: 'helper: walks the round at Marl Hollow' },
  { name: PERPETUA, role: 'operator', words: 'operator: sees everything, looks after people and backups' },
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
    people: CAST.flatMap(({ name, words }) => (words === undefined ? [] : [{ name, words }])),
  }
}
