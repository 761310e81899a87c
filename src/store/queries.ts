/** Reading the projections. Every statement is prepared once; none of Today's looks at colonies that left. */
import { and, asc, desc, eq, gte, isNull, lte, sql } from 'drizzle-orm'
import type { Day } from '../days.ts'
import type { Plan } from '../recovery/plan-types.ts'
import type { Connection } from './connection.ts'
import type { ColonyRow } from './projections.ts'
import { colony, plannedCheck } from './schema.ts'
import type { ColonyFilter, ColonySummary, PlannedCheck } from './types.ts'

export interface Queries {
  byName(tagOrId: string): ColonySummary | null
  /** Ids of every colony that has or had the tag, in the yard first, then the latest to leave. */
  idsByTag(tag: string): string[]
  list(filter: ColonyFilter): ColonySummary[]
  /** In the yard with something to do on the day of their plans. */
  toDo(): ColonySummary[]
  checksBetween(from: Day, to: Day): PlannedCheck[]
  yards(): { yard: string; open: number }[]
  tagTaken(tag: string): boolean
}

/** As people walk and read: 'stand 2' before 'stand 10'. */
const natural = new Intl.Collator('en', { numeric: true, sensitivity: 'base' })

/** By yard, stand and tag; what stands nowhere in particular last. */
export function walkingOrder(a: ColonySummary, b: ColonySummary): number {
  const yard = natural.compare(a.yard, b.yard)
  if (yard !== 0) return yard
  if ((a.stand === null) !== (b.stand === null)) return a.stand === null ? 1 : -1
  const stand = natural.compare(a.stand ?? '', b.stand ?? '')
  if (stand !== 0) return stand
  return natural.compare(a.tag, b.tag) || (a.id < b.id ? -1 : 1)
}

/** A row as people see it. `remake` gives the plan of a row whose own cannot be read. */
export function summaryOf(row: ColonyRow, remake: (id: string) => Plan): ColonySummary {
  const { plan: text, toDo, ...rest } = row
  let plan: Plan | undefined
  return {
    ...rest,
    toDo: toDo === 1,
    get plan() {
      plan ??= parsed(text) ?? remake(row.id)
      return plan
    },
  }
}

function parsed(text: string): Plan | null {
  try {
    return JSON.parse(text) as Plan
  } catch {
    return null
  }
}

/** The reading side of the projections. */
export function queriesOf({ db }: Connection, remake: (id: string) => Plan): Queries {
  const value = sql.placeholder
  const inYard = isNull(colony.closedOn)
  const summaries = (rows: ColonyRow[]): ColonySummary[] => rows.map((row) => summaryOf(row, remake))
  const byId = db
    .select()
    .from(colony)
    .where(eq(colony.id, value('id')))
    .prepare()
  const byTag = db
    .select()
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
  const open = db.select().from(colony).where(inYard).prepare()
  const all = db.select().from(colony).prepare()
  const toDo = db
    .select()
    .from(colony)
    .where(and(inYard, eq(colony.toDo, 1)))
    .prepare()
  const yards = db
    .select({ yard: colony.yard, open: sql<number>`sum(${colony.closedOn} IS NULL)` })
    .from(colony)
    .groupBy(colony.yard)
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
      return row === undefined ? null : summaryOf(row, remake)
    },
    idsByTag: (tag) => idsByTag.all({ tag }).map((r) => r.id),
    list(filter) {
      const rows = summaries(filter.open === true ? open.all() : all.all())
      return rows.filter((c) => matches(c, filter)).sort(walkingOrder)
    },
    toDo: () => summaries(toDo.all()).sort(walkingOrder),
    checksBetween: (from, to) => checks.all({ from, to }),
    yards: () => yards.all().sort((a, b) => natural.compare(a.yard, b.yard)),
    tagTaken: (tag) => taken.get({ tag }) !== undefined,
  }
}

function matches(c: ColonySummary, { open, yard, text }: ColonyFilter): boolean {
  if (open !== undefined && (c.closedOn === null) !== open) return false
  if (yard !== undefined && c.yard !== yard) return false
  const sought = text?.trim().toLowerCase() ?? ''
  if (sought === '') return true
  return [c.tag, c.yard, c.stand ?? '', c.removalType].some((t) => t.toLowerCase().includes(sought))
}
