/** What happened on some days, whichever colony it was, through the index by day: the past before them is not read. */

import { and, asc, eq, gte, lte, sql } from 'drizzle-orm'
import type { Day } from '../days.ts'
import type { EntryKind, Happening } from '../journal/index.ts'
import type { Connection } from './connection.ts'
import { colony, entry } from './schema.ts'

/** More than a walk over many years needs; keeps a query over a huge yard short. */
const MOST = 20_000

/** Entries of colonies that have an intake, by day and then as they came to be known; corrected ones are not left out. */
export function happeningsOf({ db }: Connection): (from: Day, to: Day, only?: EntryKind) => Happening[] {
  const field = (name: string) =>
    sql<string | null>`json_extract(${entry.payload}, ${sql.raw(`'$.${name}'`)})`
  const days = and(gte(entry.onDay, sql.placeholder('from')), lte(entry.onDay, sql.placeholder('to')))
  const select = () =>
    db
      .select({
        colony: entry.colony,
        yard: colony.yard,
        kind: entry.kind,
        on: entry.onDay,
        at: field('at'),
        by: sql<string>`json_extract(${entry.payload}, '$.by')`,
        opened: sql<number | null>`json_extract(${entry.payload}, '$.opened')`,
        what: field('what'),
        into: field('into'),
      })
      .from(entry)
      .innerJoin(colony, eq(colony.id, entry.colony))
  const all = select().where(days).orderBy(asc(entry.onDay), asc(entry.seq)).limit(MOST).prepare()
  // The kind stands in the index too: rows of other kinds are not even opened.
  const ofKind = select()
    .where(and(days, eq(entry.kind, sql.placeholder('only'))))
    .orderBy(asc(entry.onDay), asc(entry.seq))
    .limit(MOST)
    .prepare()
  return (from, to, only) =>
    (only === undefined ? all.all({ from, to }) : ofKind.all({ from, to, only })).map(
      ({ kind, opened, what, into, ...row }) => ({
        ...row,
        kind,
        opened: opened === null ? null : opened === 1,
        what: kind === 'given' ? what : null,
        into: kind === 'outcome' ? into : null,
      }),
    )
}
