/**
 * The caches made of the journal: `colony` and `planned_check`. What goes into a row is a pure function of the colony's
 * history, the day and the protocol, so a rebuild gives the same bytes. Site and costs stay out: helpers read these.
 */
import { and, eq, isNull, ne, sql } from 'drizzle-orm'
import type { Day } from '../days.ts'
import type { History } from '../journal/history.ts'
import { planOf } from '../recovery/plan.ts'
import { type Check, type CheckStatus, type Plan, RULES } from '../recovery/plan-types.ts'
import type { Protocol } from '../recovery/protocol.ts'
import { type Connection, excluded, placeholders } from './connection.ts'
import { type Folded, fold, type Journal } from './journal.ts'
import { colony, plannedCheck } from './schema.ts'

export type ColonyRow = typeof colony.$inferSelect
export type CheckRow = typeof plannedCheck.$inferSelect
export interface Projected {
  row: ColonyRow
  checks: CheckRow[]
}

/** Most urgent first. Answered and void ones are no longer asked. */
const URGENCY: readonly CheckStatus[] = ['overdue', 'due', 'open', 'waiting']

const asked = (check: Check): boolean => URGENCY.includes(check.status)

/** The check to think of next: late ones before due ones before open ones before coming ones. */
export function nextCheck(plan: Plan): Check | null {
  const rank = (c: Check): string => {
    const day = c.status === 'waiting' ? c.opens : c.closes
    return `${URGENCY.indexOf(c.status)} ${day} ${String(RULES.indexOf(c.rule)).padStart(2, '0')}`
  }
  return plan.checks.filter(asked).reduce<Check | null>((best, c) => {
    return best === null || rank(c) < rank(best) ? c : best
  }, null)
}

/** Whether the plan asks for something on its day. */
const asksForSomething = (plan: Plan): boolean =>
  (plan.advice.action !== 'none' && plan.advice.action !== 'leave-alone') ||
  plan.checks.some((c) => asked(c) && c.status !== 'waiting')

/** Without what is dated later: notes on a colony that left, or anything while a clock is set back. */
const asKnownOn = (history: History, day: Day): History => ({
  ...history,
  entries: history.entries.filter((e) => e.on <= day || e === history.intake),
})

/** What the projections hold of a colony as of a day; of one that left, as of the day it left. */
export function project(id: string, history: History, today: Day, protocol: Protocol): Projected {
  const { intake, outcome, tag } = history
  const asOf = outcome?.on ?? today
  const plan = planOf(asKnownOn(history, asOf), asOf, protocol)
  const open = outcome === null
  const next = open ? nextCheck(plan) : null
  const place = history.entries.findLast((e) => e.kind === 'move') ?? intake
  return {
    row: {
      id,
      tag,
      yard: place.yard,
      stand: place.stand ?? null,
      removalType: intake.removal.type,
      queenAtIntake: intake.queen,
      intakeOn: intake.on,
      removedOn: history.removedOn,
      phase: plan.phase,
      outcome: outcome?.what ?? null,
      closedOn: outcome?.on ?? null,
      asOf,
      day: plan.day,
      nextRule: next?.rule ?? null,
      nextOpens: next?.opens ?? null,
      nextDue: next?.due ?? null,
      nextCloses: next?.closes ?? null,
      action: plan.advice.action,
      actionWhy: plan.advice.why,
      toDo: open && asksForSomething(plan) ? 1 : 0,
      plan: JSON.stringify(plan),
    },
    checks: open
      ? plan.checks.filter(asked).map(({ rule, opens, due, closes, why }, place) => ({
          colony: id,
          place,
          rule,
          opens,
          due,
          closes,
          why,
        }))
      : [],
  }
}

export interface Projections {
  /** Writes what is known of a colony now; a colony without an intake has no row. */
  put(id: string, folded: Folded, today: Day): void
  refresh(today: Day): number
  /** Plans anew for another protocol or by other rules, every colony as of the day it had. */
  replan(): void
  /** Plans anew when the rules have changed since the projections were made. Returns whether it did. */
  catchUp(stamp: number): boolean
  rebuild(today: Day): number
}

/** The writing side of the projections, its statements prepared once. */
export function projectionsOf(
  { db, raw, write }: Connection,
  journal: Journal,
  protocol: () => Protocol,
): Projections {
  const value = sql.placeholder
  const drop = db
    .delete(colony)
    .where(eq(colony.id, value('id')))
    .prepare()
  const dropChecks = db
    .delete(plannedCheck)
    .where(eq(plannedCheck.colony, value('id')))
    .prepare()
  const upsert = db
    .insert(colony)
    .values(placeholders(colony))
    .onConflictDoUpdate({ target: colony.id, set: excluded(colony, 'id') })
    .prepare()
  const addCheck = db.insert(plannedCheck).values(placeholders(plannedCheck)).prepare()
  const stale = db
    .select({ id: colony.id })
    .from(colony)
    .where(and(isNull(colony.closedOn), ne(colony.asOf, value('today'))))
    .prepare()
  const every = db.select({ id: colony.id, asOf: colony.asOf }).from(colony).prepare()

  const put = (id: string, { history }: Folded, today: Day): void => {
    dropChecks.run({ id })
    if (history === null) {
      drop.run({ id })
      return
    }
    const { row, checks } = project(id, history, today, protocol())
    upsert.run(row)
    for (const check of checks) addCheck.run(check)
  }
  /** A colony whose intake cannot be read keeps the row it has: better an old plan than a box nobody visits. */
  const again = (id: string, today: Day): void => {
    const folded = fold(id, journal.ofColony(id))
    if (folded.history !== null) put(id, folded, today)
  }
  const replan = (): void => {
    const days = new Map(every.all().map((r) => [r.id, r.asOf]))
    const latest = [...days.values()].reduce((a, b) => (a > b ? a : b), '')
    for (const id of new Set([...journal.colonyIds(), ...days.keys()])) {
      const day = days.get(id) ?? latest
      if (day !== '') again(id, day)
    }
  }

  return {
    put,
    refresh(today) {
      if (stale.get({ today }) === undefined) return 0
      return write(() => {
        const ids = stale.all({ today })
        for (const { id } of ids) again(id, today)
        return ids.length
      })
    },
    replan,
    catchUp(stamp) {
      const made = (): unknown => raw.pragma('user_version', { simple: true })
      if (made() === stamp) return false
      return write(() => {
        if (made() === stamp) return false
        replan()
        raw.pragma(`user_version = ${stamp}`)
        return true
      })
    },
    rebuild: (today) =>
      write(() => {
        db.delete(plannedCheck).run()
        db.delete(colony).run()
        let made = 0
        for (const id of journal.colonyIds()) {
          const folded = fold(id, journal.ofColony(id))
          put(id, folded, today)
          if (folded.history !== null) made++
        }
        return made
      }),
  }
}
