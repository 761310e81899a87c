/** Reading the projections. Every statement is prepared once; none of Today's looks at colonies that left. */

import { and, asc, desc, eq, getTableColumns, gte, isNotNull, isNull, lte, sql } from 'drizzle-orm'
import type { Day } from '../days.ts'
import type { ColonyId, Tag } from '../ids.ts'
import type { Plan } from '../recovery/index.ts'
import type { Connection } from './connection.ts'
import { colony, plannedCheck } from './schema.ts'
import { type ListRow, matches, natural, summaryOf, walkingOrder } from './summaries.ts'
import type { ColonyFilter, ColonySummary, Left, LeftPage, PlannedCheck } from './types.ts'

const { plan: _plan, ...listed } = getTableColumns(colony)

export interface Queries {
  byName(tagOrId: string): ColonySummary | null
  /** Ids of every colony that has or had the tag, in the yard first, then the latest to leave. */
  idsByTag(tag: Tag): ColonyId[]
  list(filter: ColonyFilter): ColonySummary[]
  /** Some of those that have left, see `Repository.left`. */
  left(page: LeftPage): Left
  /** In the yard with something to do on the day of their plans. */
  toDo(): ColonySummary[]
  checksBetween(from: Day, to: Day): PlannedCheck[]
  yards(): { yard: string; open: number }[]
  removalTypes(): string[]
  tagTaken(tag: Tag): boolean
  size(): { inYard: number; ever: number }
}

function parsed(text: string): Plan | null {
  try {
    return JSON.parse(text) as Plan
  } catch {
    return null
  }
}

/** The different texts in an indexed column, each found from the one before, so that they cost nothing by the row. */
const each = (column: string): string =>
  `WITH RECURSIVE names(name) AS (
     SELECT min(${column}) FROM colony
     UNION ALL SELECT (SELECT min(${column}) FROM colony WHERE ${column} > name) FROM names WHERE name IS NOT NULL)`

/**
 * The reading side of the projections. `remake` gives the plan of a row whose own cannot be read. While plans are being
 * recomputed (`recomputing`), those of colonies that left may have the shape of older rules, so they are made anew as well.
 */
export function queriesOf(
  { db, raw }: Connection,
  remake: (id: ColonyId) => Plan,
  recomputing: () => boolean,
): Queries {
  const value = sql.placeholder
  const inYard = isNull(colony.closedOn)
  const planText = db
    .select({ plan: colony.plan })
    .from(colony)
    .where(eq(colony.id, value('id')))
    .prepare()
  const summary = (row: ListRow): ColonySummary =>
    summaryOf(row, () => {
      const old = row.closedOn !== null && recomputing()
      return (old ? null : parsed(planText.get({ id: row.id })?.plan ?? '')) ?? remake(row.id)
    })
  const byId = db
    .select(listed)
    .from(colony)
    .where(eq(colony.id, value('id')))
    .prepare()
  const byTag = db
    .select(listed)
    .from(colony)
    .where(sql`${colony.tag} COLLATE NOCASE = ${value('tag')}`)
    .orderBy(
      sql`${colony.closedOn} IS NOT NULL`,
      desc(colony.closedOn),
      desc(colony.intakeOn),
      desc(colony.id),
    )
    .prepare()
  const idsByTag = db
    .select({ id: colony.id })
    .from(colony)
    .where(sql`${colony.tag} COLLATE NOCASE = ${value('tag')}`)
    .prepare()
  const taken = db
    .select({ id: colony.id })
    .from(colony)
    .where(and(sql`${colony.tag} COLLATE NOCASE = ${value('tag')}`, inYard))
    .prepare()
  const open = db.select(listed).from(colony).where(inYard).prepare()
  const all = db.select(listed).from(colony).prepare()
  const from = db
    .select(listed)
    .from(colony)
    .where(gte(colony.intakeOn, value('day')))
    .prepare()
  const toDo = db
    .select(listed)
    .from(colony)
    .where(and(inYard, eq(colony.toDo, 1)))
    .prepare()
  const latest = (yard?: string) =>
    db
      .select(listed)
      .from(colony)
      .where(and(isNotNull(colony.closedOn), yard === undefined ? undefined : eq(colony.yard, value('yard'))))
      .orderBy(desc(colony.closedOn), asc(colony.id))
      .limit(value('limit'))
      .offset(value('skip'))
      .prepare()
  const [latestOfAll, latestOfYard] = [latest(), latest('one')]
  const leftAll = raw.prepare('SELECT count(*) FROM colony WHERE closed_on IS NOT NULL').pluck()
  const leftYard = raw.prepare('SELECT count(*) FROM colony WHERE yard = ? AND closed_on IS NOT NULL').pluck()
  const yards = raw.prepare(
    `${each('yard')} SELECT name AS yard,
       (SELECT count(*) FROM colony WHERE yard = name AND closed_on IS NULL) AS open FROM names WHERE name IS NOT NULL`,
  )
  const types = raw.prepare(`${each('removal_type')} SELECT name FROM names WHERE name IS NOT NULL`).pluck()
  const size = db
    .select({
      inYard: sql<number>`(SELECT count(*) FROM colony WHERE closed_on IS NULL)`,
      ever: sql<number>`count(*)`,
    })
    .from(colony)
    .prepare()
  const checks = db
    .select({
      colony: plannedCheck.colony,
      tag: colony.tag,
      yard: colony.yard,
      stand: colony.stand,
      rule: plannedCheck.rule,
      opens: plannedCheck.opens,
      due: plannedCheck.due,
      closes: plannedCheck.closes,
      why: plannedCheck.why,
    })
    .from(plannedCheck)
    .innerJoin(colony, eq(colony.id, plannedCheck.colony))
    .where(and(lte(plannedCheck.opens, value('to')), gte(plannedCheck.closes, value('from'))))
    .orderBy(asc(plannedCheck.opens), asc(plannedCheck.due), asc(colony.tag), asc(plannedCheck.place))
    .prepare()

  return {
    byName(name) {
      const row = byId.get({ id: name }) ?? byTag.get({ tag: name })
      return row === undefined ? null : summary(row)
    },
    idsByTag: (tag) => idsByTag.all({ tag }).map((r) => r.id),
    list(filter) {
      const { open: onlyOpen, intakeFrom: day } = filter
      const found = onlyOpen === true ? open.all() : day === undefined ? all.all() : from.all({ day })
      const rows = found.map(summary)
      return rows.filter((c) => matches(c, filter)).sort(walkingOrder)
    },
    left({ yard, skip, limit }) {
      const rows =
        yard === undefined ? latestOfAll.all({ skip, limit }) : latestOfYard.all({ skip, limit, yard })
      const total = Number(yard === undefined ? leftAll.get() : leftYard.get(yard))
      return { total, found: rows.map(summary) }
    },
    toDo: () => toDo.all().map(summary).sort(walkingOrder),
    checksBetween: (from, to) => checks.all({ from, to }),
    yards: () => (yards.all() as { yard: string; open: number }[]).sort((a, b) => natural(a.yard, b.yard)),
    removalTypes: () => types.all() as string[],
    tagTaken: (tag) => taken.get({ tag }) !== undefined,
    size: () => size.get() ?? { inYard: 0, ever: 0 },
  }
}
