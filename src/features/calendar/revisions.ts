/**
 * What calendars were last sent of each event. An event that changes gets the next revision; one that is no longer there
 * is cancelled, sent as such for a month, and then forgotten. Plans are recomputed all the time; without this a calendar
 * could not tell an old answer from a new one.
 */

import { and, eq, sql } from 'drizzle-orm'
import { addDays, type Day } from '../../days.ts'
import { LANGUAGES, type Language } from '../../languages.ts'
import type { Shows } from '../../people/index.ts'
import type { Connection } from '../../store/index.ts'
import type { CalendarEvent, FeedEvent } from './calendar.ts'
import { calendarEvent, type ToldAs } from './schema.ts'

/** A calendar that did not look for so long has other troubles (judgement). */
const CANCELLED_FOR_DAYS = 30
const DAY = 86_400_000

/** What was said in another language than the first is kept beside it: one reader must not look like a change to another. */
export const toldAs = ({ shows, language }: { shows: Shows; language: Language }): ToldAs =>
  language === LANGUAGES[0] ? shows : `${shows} ${language}`

/** What is kept of an event: what it says, and the yards in whose calendars it was before. */
interface Kept {
  event: CalendarEvent
  was: string[]
}

export interface Revised extends FeedEvent {
  was: string[]
}

export interface Revisions {
  /** Notes what is new, what has changed and what is gone; gives everything that is to be sent now, by uid. */
  revise(shows: ToldAs, events: readonly CalendarEvent[], now: Instant): Revised[]
}

/** Now, and which day that is in the yard. */
interface Instant {
  now: Date
  today: Day
}

type Row = typeof calendarEvent.$inferSelect

export function revisionsOn({ db, write }: Connection): Revisions {
  const value = sql.placeholder
  const all = db
    .select()
    .from(calendarEvent)
    .where(eq(calendarEvent.shows, value('shows')))
    .prepare()
  const put = db
    .insert(calendarEvent)
    .values({
      shows: value('shows'),
      uid: value('uid'),
      colony: value('colony'),
      content: value('content'),
      sequence: value('sequence'),
      changedAt: value('changedAt'),
      cancelledAt: value('cancelledAt'),
    })
    .onConflictDoUpdate({
      target: [calendarEvent.shows, calendarEvent.uid],
      set: {
        content: sql`excluded.content`,
        sequence: sql`excluded.sequence`,
        changedAt: sql`excluded.changed_at`,
        cancelledAt: sql`excluded.cancelled_at`,
      },
    })
    .prepare()
  const drop = db
    .delete(calendarEvent)
    .where(and(eq(calendarEvent.shows, value('shows')), eq(calendarEvent.uid, value('uid'))))
    .prepare()

  return {
    revise(shows, events, { now, today }) {
      const known = new Map(all.all({ shows }).map((r) => [r.uid, r]))
      const at = now.toISOString()
      const present = events.map((e) => presentRow(shows, e, known.get(e.uid), at))
      const uids = new Set(events.map((e) => e.uid))
      const gone = [...known.values()].filter((r) => !uids.has(r.uid)).map((r) => goneRow(r, at, today))
      const told = [...present, ...gone].filter((r) => !forgotten(r, now, today))
      const changed = told.filter((r) => r !== known.get(r.uid))
      const old = gone.filter((r) => forgotten(r, now, today))
      if (changed.length + old.length > 0)
        // While the disk is full calendars get it all the same, and the change is noted the next time.
        tryTo(() =>
          write(() => {
            for (const row of changed) put.run(row)
            for (const { uid } of old) drop.run({ shows, uid })
          }),
        )
      return told.map(revised).sort((a, b) => (a.event.uid < b.event.uid ? -1 : 1))
    },
  }
}

/** The row as it is to be; the very row it was when nothing has changed. */
function presentRow(shows: ToldAs, event: CalendarEvent, row: Row | undefined, at: string): Row {
  const before = row === undefined ? null : kept(row)
  const was =
    before === null || before.event.yard === event.yard
      ? (before?.was ?? []).filter((y) => y !== event.yard)
      : [...new Set([...before.was, before.event.yard])].filter((y) => y !== event.yard)
  const content = JSON.stringify({ event, was } satisfies Kept)
  if (row !== undefined && row.content === content && row.cancelledAt === null) return row
  return {
    shows,
    uid: event.uid,
    colony: event.colony,
    content,
    sequence: row === undefined ? 0 : row.sequence + 1,
    changedAt: at,
    cancelledAt: null,
  }
}

/** Called off, unless its days have simply passed. */
const goneRow = (row: Row, at: string, today: Day): Row =>
  row.cancelledAt !== null || passed(row, today)
    ? row
    : { ...row, sequence: row.sequence + 1, changedAt: at, cancelledAt: at }

function passed(row: Row, today: Day): boolean {
  const { event } = kept(row)
  return event.lapses && event.to < today
}

const forgotten = (row: Row, now: Date, today: Day): boolean =>
  row.cancelledAt === null
    ? passed(row, addDays(today, -CANCELLED_FOR_DAYS))
    : now.getTime() - Date.parse(row.cancelledAt) > CANCELLED_FOR_DAYS * DAY

const kept = (row: Row): Kept => JSON.parse(row.content) as Kept

function revised(row: Row): Revised {
  const { event, was } = kept(row)
  return {
    event,
    was,
    sequence: row.sequence,
    changedAt: row.changedAt,
    cancelled: row.cancelledAt !== null,
  }
}

function tryTo(work: () => void): void {
  try {
    work()
  } catch {
    // Noted the next time somebody asks.
  }
}

/** Those of one yard: what has moved elsewhere is cancelled there. Null: all of them. */
export const inYard = (events: readonly Revised[], yard: string | null): FeedEvent[] =>
  events.flatMap((e) => {
    if (yard === null || e.event.yard === yard) return [e]
    return e.was.includes(yard) ? [{ ...e, cancelled: true }] : []
  })
