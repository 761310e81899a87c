/**
 * The caches made of the journal: `colony`, `planned_check` and `stay`, written. What goes into a row: project.ts.
 */

import { and, eq, isNull, ne, sql } from 'drizzle-orm'
import type { Day } from '../days.ts'
import type { ColonyId } from '../ids.ts'
import type { Protocol } from '../recovery/index.ts'
import { type Connection, excluded, placeholders } from './connection.ts'
import { type Exposures, exposureOf, NO_EXPOSURES } from './exposures.ts'
import { type Folded, fold } from './fold.ts'
import type { Journal } from './journal.ts'
import type { Planner } from './planner.ts'
import { project } from './project.ts'
import { colony, plannedCheck, stay } from './schema.ts'
import { type Settler, settlerOf } from './settle.ts'
import { stayRow } from './stay-row.ts'
import type { Tracer } from './tracer.ts'

export interface Projections {
  /** Makes one colony's plan again, as of a day. */
  again(id: ColonyId, day: Day): void
  /** Plans after entries. */
  settler: Settler
  /** Makes the plans of colonies in the yard that are as of another day; returns how many. */
  refresh(today: Day): number
  /** The same in slices, each in a transaction of its own. */
  refreshing(today: Day): Generator<void, number>
  /** Recomputes plans for other choices of the yard or by other rules, every colony as of the day it had. */
  replan(): void
  /**
   * Recomputes plans when the rules have changed since the projections were made. Returns whether it did. `inYard`: only
   * of colonies in the yard, as a start does: those that left wait for `Protocols.remakeSome`.
   */
  catchUp(stamp: number, only?: 'inYard'): boolean
  rebuild(today: Day): number
}

/** Colonies whose plans are made in one slice. */
const SLICE = 10

/** The writing side of the projections, its statements prepared once. */
export function projectionsOf(
  connection: Connection,
  journal: Journal,
  planner: Planner,
  protocol: () => Protocol,
  tracer: Tracer,
): Projections {
  const { db, raw, write } = connection
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
  const dropStay = db
    .delete(stay)
    .where(eq(stay.colony, value('id')))
    .prepare()
  const upsertStay = db
    .insert(stay)
    .values(placeholders(stay))
    .onConflictDoUpdate({ target: stay.colony, set: excluded(stay, 'colony') })
    .prepare()
  const recordedAt = raw.prepare('SELECT recorded_at FROM entry WHERE id = ?').pluck()
  const addCheck = db.insert(plannedCheck).values(placeholders(plannedCheck)).prepare()
  const stale = db
    .select({ id: colony.id })
    .from(colony)
    .where(and(isNull(colony.closedOn), ne(colony.asOf, value('today'))))
    .prepare()
  const every = db.select({ id: colony.id, asOf: colony.asOf }).from(colony).prepare()

  const held = raw.prepare(
    `SELECT id, as_of AS asOf, json_extract(plan, '$.exposed') AS exposed FROM colony WHERE closed_on IS NULL`,
  )
  /** What is traced now; while many plans are made one after the other, once. */
  let now: Exposures | null = null
  const traced = (): Exposures => now ?? (tracer.any() ? tracer.exposures() : NO_EXPOSURES)

  /** Writes what is known of a colony now; a colony without an intake has no row. */
  const put = (id: ColonyId, { history }: Folded, today: Day, exposures = now ?? NO_EXPOSURES): void => {
    dropChecks.run({ id })
    if (history === null) {
      drop.run({ id })
      return
    }
    const { row, checks } = project(id, history, today, planner, exposureOf(exposures, id, history))
    upsert.run(row)
    for (const check of checks) addCheck.run(check)
    const left = stayRow(id, history, String(recordedAt.get(id)), protocol())
    if (left === null) dropStay.run({ id })
    else upsertStay.run(left)
  }
  /** A colony whose intake cannot be read keeps the row it has: better an old plan than a box nobody visits. */
  const again = (id: ColonyId, today: Day, exposures = now ?? NO_EXPOSURES): void => {
    const folded = fold(id, journal.ofColony(id))
    if (folded.history !== null) put(id, folded, today, exposures)
  }
  const dayInYard = raw.prepare('SELECT as_of FROM colony WHERE id = ? AND closed_on IS NULL').pluck()
  const settler = settlerOf({
    connection,
    tracer,
    put: ({ id, folded }, today, exposures) => put(id, folded, today, exposures),
    again(id, exposures) {
      const day = dayInYard.get(id) as Day | undefined
      if (day !== undefined) again(id, day, exposures)
    },
  })
  /** Traces foulbrood anew, and makes the plans again of which that changes what they say. */
  const retrace = (): void => {
    if (!tracer.any()) return
    now = tracer.exposures()
    try {
      for (const row of held.all() as { id: ColonyId; asOf: Day; exposed: string | null }[]) {
        const says = now.get(row.id)
        if ((says === undefined ? null : JSON.stringify(says)) !== row.exposed) again(row.id, row.asOf)
      }
    } finally {
      now = null
    }
  }
  /** Plans made one after the other are traced once. */
  const tracing = <T>(work: () => T): T => {
    now = traced()
    try {
      return work()
    } finally {
      now = null
    }
  }
  const replan = (): void => {
    const days = new Map(every.all().map((r) => [r.id, r.asOf]))
    const latest = [...days.values()].reduce((a, b) => (a > b ? a : b), '')
    for (const id of new Set([...journal.colonyIds(), ...days.keys()])) {
      const day = days.get(id) ?? latest
      if (day !== '') again(id, day)
    }
    retrace()
  }
  const replanYard = (): void => {
    tracing(() => {
      for (const { id, asOf } of every.all()) if (dayInYard.get(id) !== undefined) again(id, asOf)
    })
    retrace()
  }

  return {
    settler,
    again: (id, day) => tracing(() => again(id, day)),
    *refreshing(today) {
      const ids = stale.all({ today })
      for (let at = 0; at < ids.length; at += SLICE) {
        write(() =>
          tracing(() => {
            for (const { id } of ids.slice(at, at + SLICE)) again(id, today)
          }),
        )
        yield
      }
      if (ids.length > 0) write(retrace)
      return ids.length
    },
    refresh(today) {
      if (stale.get({ today }) === undefined) return 0
      return write(() => {
        const ids = stale.all({ today })
        tracing(() => {
          for (const { id } of ids) again(id, today)
        })
        retrace()
        return ids.length
      })
    },
    replan,
    catchUp(stamp, only) {
      const made = (): unknown => raw.pragma('user_version', { simple: true })
      if (made() === stamp) return false
      return write(() => {
        if (made() === stamp) return false
        if (only === undefined) replan()
        else replanYard()
        raw.pragma(`user_version = ${only === undefined ? stamp : 0}`)
        return true
      })
    },
    rebuild: (today) =>
      write(() => {
        db.delete(plannedCheck).run()
        db.delete(stay).run()
        db.delete(colony).run()
        let made = 0
        for (const id of journal.colonyIds()) {
          const folded = fold(id, journal.ofColony(id))
          put(id, folded, today)
          if (folded.history !== null) made++
        }
        retrace()
        return made
      }),
  }
}
