/** Who wants the digest how: each person's own choice. */

import { and, eq, isNotNull, isNull } from 'drizzle-orm'
import type { Day } from '../../days.ts'
import { LANGUAGES, type Language, languageOf } from '../../languages.ts'
import { person } from '../../people/node.ts'
import type { Connection } from '../../store/index.ts'
import { newHookSecret } from './hook.ts'
import { messageChoice } from './schema.ts'

export interface MessageChoice {
  person: string
  mail: string | null
  hook: string | null
  /** Signs the webhook; null without one. */
  secret: string | null
  hour: number
  /** First day it is sent for. */
  fromDay: Day
  /** The account's: in which the digest is written. */
  language: Language
}

/** The hour until somebody chooses another. */
export const DEFAULT_HOUR = 6

export interface Choices {
  of(personId: string): MessageChoice | null
  /** Of everybody who can sign in and wants any. */
  wanted(): MessageChoice[]
  /** A new webhook address gets a new secret. */
  set(personId: string, choice: Pick<MessageChoice, 'mail' | 'hook' | 'hour' | 'fromDay'>, now: string): void
  /** A new secret in place of the old one. */
  renewSecret(personId: string, now: string): void
  /** Sends nothing before that day (after a restore: that day's may have gone out already). */
  notBefore(day: Day): void
}

interface Row {
  choice: typeof messageChoice.$inferSelect
  language: string | null
}

function choiceOf({ choice, language }: Row): MessageChoice {
  const { changedAt: _changedAt, ...kept } = choice
  return { ...kept, language: languageOf(language) ?? LANGUAGES[0] }
}

export function choicesOn({ db, write }: Connection): Choices {
  const all = () =>
    db
      .select({ choice: messageChoice, language: person.language })
      .from(messageChoice)
      .innerJoin(person, eq(person.id, messageChoice.person))
  const of = (personId: string): MessageChoice | null => {
    const row = all().where(eq(messageChoice.person, personId)).get()
    return row === undefined ? null : choiceOf(row)
  }
  return {
    of,
    wanted: () =>
      all()
        .where(and(isNull(person.closedAt), isNotNull(person.passphrase)))
        .all()
        .map(choiceOf)
        .filter((c) => c.mail !== null || c.hook !== null),
    set: (personId, { mail, hook, hour, fromDay }, now) =>
      write(() => {
        const before = of(personId)
        const secret = hook === null ? null : hook === before?.hook ? before.secret : newHookSecret()
        const values = { mail, hook, hour, fromDay, secret, changedAt: now }
        db.insert(messageChoice)
          .values({ person: personId, ...values })
          .onConflictDoUpdate({ target: messageChoice.person, set: values })
          .run()
      }),
    renewSecret(personId, now) {
      db.update(messageChoice)
        .set({ secret: newHookSecret(), changedAt: now })
        .where(and(eq(messageChoice.person, personId), isNotNull(messageChoice.hook)))
        .run()
    },
    notBefore(day) {
      for (const { person: id, fromDay } of db.select().from(messageChoice).all())
        if (fromDay < day)
          db.update(messageChoice).set({ fromDay: day }).where(eq(messageChoice.person, id)).run()
    },
  }
}
