/**
 * What was sent to whom for which day. A row is claimed before anything leaves: whoever claims it sends, nobody else, and
 * a server that dies in between has used the day up. Better one digest missing than two.
 */

import { and, desc, eq } from 'drizzle-orm'
import type { Day } from '../../days.ts'
import type { Connection } from '../../store/index.ts'
import { messageSent } from './schema.ts'

export type MessageWay = 'mail' | 'hook'

export interface SentLine {
  day: Day
  way: MessageWay
  state: 'sending' | 'sent' | 'again' | 'given-up'
  attempts: number
  againAt: string | null
  trouble: string | null
  changedAt: string
}

export interface Claim {
  person: string
  day: Day
  way: MessageWay
}

/** Minutes until the next attempt after the first, second and third one; then it is given up. */
const BACK_OFF_MIN = [5, 20, 60] as const

export interface SentMessages {
  /** Claims the sending. The number of the attempt, or null when it is not to be sent now. */
  claim(claim: Claim, now: Date): number | null
  done(claim: Claim, now: Date): void
  /** Notes a failure: tried again later where that may help, given up otherwise. */
  failed(claim: Claim, why: { again: boolean; words: string }, now: Date): void
  /** Newest first. */
  of(personId: string, limit: number): SentLine[]
}

export function sentOn({ db, write }: Connection): SentMessages {
  const is = ({ person, day, way }: Claim) =>
    and(eq(messageSent.person, person), eq(messageSent.day, day), eq(messageSent.way, way))
  const change = (claim: Claim, values: Partial<typeof messageSent.$inferInsert>): void => {
    db.update(messageSent).set(values).where(is(claim)).run()
  }
  return {
    claim: (claim, now) =>
      write(() => {
        const changedAt = now.toISOString()
        const row = db.select().from(messageSent).where(is(claim)).get()
        if (row === undefined) {
          db.insert(messageSent)
            .values({ ...claim, state: 'sending', attempts: 1, againAt: null, trouble: null, changedAt })
            .run()
          return 1
        }
        if (row.state !== 'again' || row.againAt === null || row.againAt > changedAt) return null
        const attempts = row.attempts + 1
        change(claim, { state: 'sending', attempts, againAt: null, changedAt })
        return attempts
      }),
    done: (claim, now) =>
      change(claim, { state: 'sent', againAt: null, trouble: null, changedAt: now.toISOString() }),
    failed: (claim, { again, words }, now) =>
      write(() => {
        const attempts = db.select().from(messageSent).where(is(claim)).get()?.attempts ?? 1
        const minutes = again ? BACK_OFF_MIN[attempts - 1] : undefined
        change(claim, {
          state: minutes === undefined ? 'given-up' : 'again',
          againAt: minutes === undefined ? null : new Date(now.getTime() + minutes * 60_000).toISOString(),
          trouble: words,
          changedAt: now.toISOString(),
        })
      }),
    of: (personId, limit) =>
      db
        .select()
        .from(messageSent)
        .where(eq(messageSent.person, personId))
        .orderBy(desc(messageSent.day), desc(messageSent.changedAt))
        .limit(limit)
        .all()
        .map(({ person: _person, ...line }) => line),
  }
}
