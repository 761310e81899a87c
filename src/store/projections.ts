/**
 * The caches made of the journal: `colony` and `planned_check`, written. What goes into a row: project.ts.
 */

import { and, eq, isNull, ne, sql } from 'drizzle-orm'
import type { Day } from '../days.ts'
import type { ColonyId } from '../ids.ts'
import type { Protocol } from '../recovery/index.ts'
import { type Connection, excluded, placeholders } from './connection.ts'
import { type Folded, fold } from './fold.ts'
import type { Journal } from './journal.ts'
import { project } from './project.ts'
import { colony, plannedCheck } from './schema.ts'

export interface Projections {
  /** Writes what is known of a colony now; a colony without an intake has no row. */
  put(id: ColonyId, folded: Folded, today: Day): void
  /** Makes one colony's plan again, as of a day. */
  again(id: ColonyId, day: Day): void
  refresh(today: Day): number
  /** Recomputes plans for another protocol or by other rules, every colony as of the day it had. */
  replan(): void
  /** Recomputes plans when the rules have changed since the projections were made. Returns whether it did. */
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

  const put = (id: ColonyId, { history }: Folded, today: Day): void => {
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
  const again = (id: ColonyId, today: Day): void => {
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
    again,
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
