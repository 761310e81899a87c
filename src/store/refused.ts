/** Entries that the journal would not have, kept with whom to ask until somebody has settled them. */
import { and, asc, desc, inArray, isNull, sql } from 'drizzle-orm'
import type { EntryId } from '../ids.ts'
import type { Problem } from '../journal/index.ts'
import type { Connection } from './connection.ts'
import { refusedEntry } from './refused-schema.ts'

export interface RefusedEntry {
  id: EntryId
  /** Whose entry it is: the person to ask. */
  person: string
  sentBy: string
  /** UTC, ISO. */
  receivedAt: string
  tag: string
  /** As it came; it may fit no schema. */
  entry: unknown
  /** Why it was refused; none where nobody could send it. */
  problems: Problem[]
}

/** One as it is kept, settled or not. */
interface KeptRefused extends RefusedEntry {
  settledAt: string | null
  settledBy: string | null
}

export interface Refused {
  /** Keeps them; one that is here already takes what it says now. Those beyond {@link MOST_REFUSED} are left out. */
  keep(entries: readonly RefusedEntry[]): void
  /** Those not settled, the newest first. */
  open(): RefusedEntry[]
  count(): number
  /** They are in the journal, or somebody has dealt with them. */
  settle(ids: readonly EntryId[], stamp: { at: string; by: string }): void
  /** All of them, settled ones too, the oldest first: what an export keeps. */
  everything(): KeptRefused[]
  /** Takes them over as they were; those that are here already are left. */
  take(entries: readonly KeptRefused[]): void
}

/** A phone out of its mind must not fill the disk (judgement). */
const MOST_REFUSED = 2000

export function refusedOf({ db }: Connection): Refused {
  const value = sql.placeholder
  const isOpen = isNull(refusedEntry.settledAt)
  const open = db.select().from(refusedEntry).where(isOpen).orderBy(desc(refusedEntry.receivedAt)).prepare()
  const count = db.select({ n: sql<number>`count(*)` }).from(refusedEntry).where(isOpen).prepare()
  const names = {
    id: value('id'),
    person: value('person'),
    sentBy: value('sentBy'),
    receivedAt: value('receivedAt'),
    tag: value('tag'),
    payload: value('payload'),
    problems: value('problems'),
  }
  const put = db
    .insert(refusedEntry)
    .values(names)
    .onConflictDoUpdate({
      target: refusedEntry.id,
      set: {
        sentBy: sql`excluded.sent_by`,
        receivedAt: sql`excluded.received_at`,
        payload: sql`excluded.payload`,
        problems: sql`excluded.problems`,
      },
      // Of another person's, somebody else's phone changes nothing.
      setWhere: sql`${refusedEntry.person} = excluded.person`,
    })
    .prepare()
  const made = ({ payload, problems, ...row }: typeof refusedEntry.$inferSelect): KeptRefused => ({
    ...row,
    entry: JSON.parse(payload) as unknown,
    problems: JSON.parse(problems) as Problem[],
  })
  return {
    keep(entries) {
      let room = MOST_REFUSED - (count.get()?.n ?? 0)
      for (const { entry, problems, ...row } of entries)
        if (room-- > 0)
          put.run({ ...row, payload: JSON.stringify(entry), problems: JSON.stringify(problems) })
    },
    open: () =>
      open.all().map((row) => {
        const { settledAt: _at, settledBy: _by, ...entry } = made(row)
        return entry
      }),
    everything: () =>
      db
        .select()
        .from(refusedEntry)
        .orderBy(asc(refusedEntry.receivedAt), asc(refusedEntry.id))
        .all()
        .map(made),
    take(entries) {
      for (const { entry, problems, ...row } of entries)
        db.insert(refusedEntry)
          .values({ ...row, payload: JSON.stringify(entry), problems: JSON.stringify(problems) })
          .onConflictDoNothing()
          .run()
    },
    count: () => count.get()?.n ?? 0,
    settle(ids, { at, by }) {
      if (ids.length === 0) return
      db.update(refusedEntry)
        .set({ settledAt: at, settledBy: by })
        .where(and(inArray(refusedEntry.id, [...ids]), isOpen))
        .run()
    },
  }
}
