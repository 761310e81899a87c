/** Accounts in tests: made and signed in without waiting for a real passphrase to be hashed. */
import type { Cost, People, Role } from '../../src/people/index.ts'

/** Hashing that takes no time. */
export const CHEAP: Cost = { n: 16, r: 8, p: 1 }

/** A passphrase that is good enough for everybody here. */
export const PASSPHRASE = 'slow lantern over gravel'

/** Makes the account unless it is there, with PASSPHRASE, and opens a session; gives the session's token. */
export async function signInAs(people: People, account: { name: string; role: Role }): Promise<string> {
  const known = people.accounts.byName(account.name)
  if (known !== null) return people.sessions.open(known.id)
  const made = people.accounts.make({ ...account, by: null })
  if (!made.ok) throw new Error(made.problems[0]?.message)
  const put = await people.putPassphrase(made.value.id, PASSPHRASE)
  if (!put.ok) throw new Error(put.problems[0]?.message)
  return people.sessions.open(made.value.id)
}
