/** Links with which somebody chooses a passphrase: a new account's first one, or a forgotten one's next. Used once. */

import { and, desc, eq, isNull } from 'drizzle-orm'
import type { Connection } from '../store/index.ts'
import type { Person } from './names.ts'
import { invite, person } from './schema.ts'
import { digestOf, newToken } from './tokens.ts'

/** An invitation not used within so many days is void. */
const INVITE_DAYS = 7

const DAY = 86_400_000

export interface Invitation {
  token: string
  expiresAt: string
}

export interface Invites {
  /** Makes a link and voids earlier ones of the same person. */
  make(personId: string, by: string | null): Invitation
  /** Whose link it is; null when unknown, used, void or too old. */
  holder(token: string): Pick<Person, 'id' | 'name' | 'role'> | null
  /** Uses it up. False when somebody else just did. */
  use(token: string): boolean
  /** When the link that is still good runs out; null when there is none. */
  pending(personId: string): string | null
  void(personId: string): void
  voidEvery(): void
}

export function invitesOn({ db, write }: Connection, clock: () => Date): Invites {
  const now = (): string => clock().toISOString()
  const good = (token: string) => {
    const found = db
      .select({ invite, person })
      .from(invite)
      .innerJoin(person, eq(person.id, invite.person))
      .where(and(eq(invite.digest, digestOf(token)), isNull(invite.usedAt)))
      .get()
    return found === undefined || found.invite.expiresAt <= now() || found.person.closedAt !== null
      ? null
      : found.person
  }
  const voidAll = (personId: string): void => {
    db.update(invite)
      .set({ usedAt: now() })
      .where(and(eq(invite.person, personId), isNull(invite.usedAt)))
      .run()
  }

  return {
    make: (personId, by) =>
      write(() => {
        voidAll(personId)
        const token = newToken()
        const expiresAt = new Date(clock().getTime() + INVITE_DAYS * DAY).toISOString()
        db.insert(invite)
          .values({ digest: digestOf(token), person: personId, createdAt: now(), createdBy: by, expiresAt })
          .run()
        return { token, expiresAt }
      }),
    holder(token) {
      const found = good(token)
      return found === null ? null : { id: found.id, name: found.name, role: found.role }
    },
    use: (token) =>
      write(() => {
        if (good(token) === null) return false
        db.update(invite)
          .set({ usedAt: now() })
          .where(eq(invite.digest, digestOf(token)))
          .run()
        return true
      }),
    pending(personId) {
      const last = db
        .select({ expiresAt: invite.expiresAt })
        .from(invite)
        .where(and(eq(invite.person, personId), isNull(invite.usedAt)))
        .orderBy(desc(invite.expiresAt))
        .get()
      return last === undefined || last.expiresAt <= now() ? null : last.expiresAt
    },
    void: voidAll,
    voidEvery: () => {
      db.update(invite).set({ usedAt: now() }).where(isNull(invite.usedAt)).run()
    },
  }
}
