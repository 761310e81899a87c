/** Calendar addresses: one a person and calendar, unguessable, shown once, taken back at any time. */

import { and, desc, eq, isNull } from 'drizzle-orm'
import type { Deps } from '../../app/index.ts'
import type { Day } from '../../days.ts'
import { LANGUAGES, type Language, languageOf } from '../../languages.ts'
import type { Shows } from '../../people/index.ts'
import { calendarFeed, digestOf, newToken, person } from '../../people/node.ts'
import type { Connection } from '../../store/index.ts'
import type { CalendarEvent, FeedEvent } from './calendar.ts'
import { inYard, revisionsOn, toldAs } from './revisions.ts'

export interface Feed {
  /** Names the address without opening it. */
  key: string
  shows: Shows
  /** Null: every yard. */
  yard: string | null
  createdAt: string
  /** When a calendar last asked, to the hour; null: never. */
  fetchedAt: string | null
}

interface FeedHolder {
  person: { id: string; name: string }
  shows: Shows
  yard: string | null
  /** As the account has chosen, now. */
  language: Language
}

/** Nobody needs more; a forgotten loop in some program must not fill the table. */
export const MOST_FEEDS = 12

export interface Calendars {
  /** A new address; its token is shown this once. Null when the person has {@link MOST_FEEDS} already. */
  open(personId: string, what: { shows: Shows; yard: string | null }): string | null
  /** The addresses of a person that still open, the newest first. */
  of(personId: string): Feed[]
  /** Takes an address back. False when it is not this person's, or was taken back before. */
  revoke(personId: string, key: string): boolean
  /** Whose address it is; null when unknown, taken back, or the account was closed. */
  holder(token: string): FeedHolder | null
  /** What calendars of that kind are to be sent now. */
  told(
    feed: Pick<FeedHolder, 'shows' | 'yard' | 'language'>,
    events: readonly CalendarEvent[],
    today: Day,
  ): FeedEvent[]
}

const HOUR = 3_600_000

/** The key of an address: enough of its digest to tell it from others of the same person. */
const keyOf = (digest: string): string => digest.slice(0, 16)

export function calendarsOn(connection: Connection, clock: () => Date): Calendars {
  const { db } = connection
  const revisions = revisionsOn(connection)
  const good = (personId: string) =>
    db
      .select()
      .from(calendarFeed)
      .where(and(eq(calendarFeed.person, personId), isNull(calendarFeed.revokedAt)))
      .orderBy(desc(calendarFeed.createdAt), desc(calendarFeed.digest))
      .all()

  return {
    open(personId, { shows, yard }) {
      if (good(personId).length >= MOST_FEEDS) return null
      const token = newToken()
      db.insert(calendarFeed)
        .values({ digest: digestOf(token), person: personId, shows, yard, createdAt: clock().toISOString() })
        .run()
      return token
    },
    of: (personId) =>
      good(personId).map(({ digest, shows, yard, createdAt, fetchedAt }) => ({
        key: keyOf(digest),
        shows,
        yard,
        createdAt,
        fetchedAt,
      })),
    revoke(personId, key) {
      const found = good(personId).find((f) => keyOf(f.digest) === key)
      if (found === undefined) return false
      db.update(calendarFeed)
        .set({ revokedAt: clock().toISOString() })
        .where(eq(calendarFeed.digest, found.digest))
        .run()
      return true
    },
    holder(token) {
      const digest = digestOf(token)
      const found = db
        .select({ feed: calendarFeed, person })
        .from(calendarFeed)
        .innerJoin(person, eq(person.id, calendarFeed.person))
        .where(and(eq(calendarFeed.digest, digest), isNull(calendarFeed.revokedAt), isNull(person.closedAt)))
        .get()
      if (found === undefined) return null
      touch(digest, found.feed.fetchedAt)
      const { feed } = found
      const { id, name, language } = found.person
      return {
        person: { id, name },
        shows: feed.shows,
        yard: feed.yard,
        language: languageOf(language) ?? LANGUAGES[0],
      }
    },
    told: (feed, events, today) =>
      inYard(
        revisions.revise(toldAs(feed), inLanguage(events, feed.language), { now: clock(), today }),
        feed.yard,
      ),
  }

  /** Notes the hour, so that a calendar that looks every minute does not write each time. */
  function touch(digest: string, before: string | null): void {
    const now = clock()
    if (before !== null && now.getTime() - Date.parse(before) < HOUR) return
    try {
      db.update(calendarFeed)
        .set({ fetchedAt: now.toISOString() })
        .where(eq(calendarFeed.digest, digest))
        .run()
    } catch {
      // A full disk must not keep a calendar from being read.
    }
  }
}

/** An event in another language is another event: its revisions are counted by themselves. */
const inLanguage = (events: readonly CalendarEvent[], language: Language): readonly CalendarEvent[] =>
  language === LANGUAGES[0] ? events : events.map((e) => ({ ...e, uid: `${e.uid}-${language}` }))

export type CalendarDeps = Deps & { calendars: Calendars }
