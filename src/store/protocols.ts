/**
 * Changes of the yard's protocol: who, when, from what to what; and plans recomputed in slices, so that a yard of many
 * colonies goes on answering meanwhile.
 *
 * While plans are being recomputed the stamp of the rules (PRAGMA user_version) is 0: should the server die half-way,
 * the next start makes them all.
 */

import { desc, sql } from 'drizzle-orm'
import type { Day } from '../days.ts'
import type { ColonyId } from '../ids.ts'
import type { Problem } from '../journal/index.ts'
import { type ProtocolOverrides, protocolOverrides } from '../recovery/index.ts'
import type { Connection } from './connection.ts'
import type { Journal } from './journal.ts'
import type { PLANNED_BY } from './planner.ts'
import type { Projections } from './projections.ts'
import { rulesStamp } from './rules-stamp.ts'
import { colony, protocolChange } from './schema.ts'
import type { Settings, SettingValue } from './settings.ts'

interface ProtocolChange {
  changedAt: string
  changedBy: string
  before: ProtocolOverrides
  after: ProtocolOverrides
  reason: string | null
}

interface Recomputing {
  total: number
  done: number
}

export interface Protocols {
  /** Newest first. */
  changes(limit?: number): ProtocolChange[]
  /** Keeps what the yard does otherwise and notes the change; plans are to be recomputed by `remakeSome`. */
  change(
    after: ProtocolOverrides,
    stamp: { changedAt: string; changedBy: string; reason?: string | undefined },
  ): Problem[]
  /** Keeps another of the choices that plans hang on; plans are to be recomputed by `remakeSome`. */
  choose<K extends (typeof PLANNED_BY)[number]>(key: K, value: SettingValue<K>): Problem[]
  /** Takes over a history of changes, oldest first, where there is none. */
  take(changes: readonly ProtocolChange[]): void
  /** Queues every plan to be recomputed. */
  remakeAll(): void
  /** How far that is; null when no plan waits. */
  recomputing(): Recomputing | null
  /** Makes up to `n` plans again, colonies in the yard first. */
  remakeSome(n: number): Recomputing | null
}

interface Parts {
  connection: Connection
  journal: Journal
  projections: Projections
  /** Settings that don't make plans again by themselves. */
  settings: Settings
}

export function protocolsOf({ connection, journal, projections, settings }: Parts): Protocols {
  const { db, raw } = connection
  let queue: { id: ColonyId; day: Day }[] = []
  let total = 0

  /** Every colony with the day its plan is of, those in the yard first. */
  const everyColony = (): { id: ColonyId; day: Day }[] => {
    const rows = db
      .select({ id: colony.id, day: colony.asOf })
      .from(colony)
      .orderBy(sql`${colony.closedOn} IS NOT NULL`, colony.id)
      .all()
    const known = new Set(rows.map((r) => r.id))
    const latest = rows.reduce((day, r) => (r.day > day ? r.day : day), '')
    const others = journal.colonyIds().filter((id) => !known.has(id))
    return [...rows, ...(latest === '' ? [] : others.map((id) => ({ id, day: latest })))]
  }
  const enqueue = (): void => {
    queue = everyColony()
    total = queue.length
  }
  const recomputing = (): Recomputing | null =>
    queue.length === 0 ? null : { total, done: total - queue.length }

  return {
    changes: (limit = 50) =>
      db
        .select()
        .from(protocolChange)
        .orderBy(desc(protocolChange.seq))
        .limit(limit)
        .all()
        .map(({ changedAt, changedBy, before, after, reason }) => ({
          changedAt,
          changedBy,
          before: overridesIn(before),
          after: overridesIn(after),
          reason,
        })),
    change(after, { changedAt, changedBy, reason }) {
      const problems = connection.write(() => {
        const before = settings.get('protocol')
        const found = settings.set('protocol', after)
        if (found.length > 0) return found
        db.insert(protocolChange)
          .values({
            changedAt,
            changedBy,
            before: JSON.stringify(before),
            after: JSON.stringify(settings.get('protocol')),
            reason: reason ?? null,
          })
          .run()
        raw.pragma('user_version = 0')
        return []
      })
      if (problems.length === 0) enqueue()
      return problems
    },
    choose(key, value) {
      const problems = connection.write(() => {
        const found = settings.set(key, value)
        if (found.length === 0) raw.pragma('user_version = 0')
        return found
      })
      if (problems.length === 0) enqueue()
      return problems
    },
    take(changes) {
      connection.write(() => {
        if (db.select({ seq: protocolChange.seq }).from(protocolChange).limit(1).get() !== undefined) return
        for (const { before, after, ...change } of changes)
          db.insert(protocolChange)
            .values({ ...change, before: JSON.stringify(before), after: JSON.stringify(after) })
            .run()
      })
    },
    remakeAll() {
      raw.pragma('user_version = 0')
      enqueue()
    },
    recomputing,
    remakeSome(n) {
      if (queue.length === 0 || !raw.open) return null
      connection.write(() => {
        const now = queue.slice(0, n)
        for (const { id, day } of now) projections.again(id, day)
        if (now.length === queue.length) raw.pragma(`user_version = ${rulesStamp()}`)
      })
      queue = queue.slice(n)
      return recomputing()
    },
  }
}

/** What is kept of a change; an old shape that no longer fits is shown as far as it does. */
function overridesIn(text: string): ProtocolOverrides {
  const parsed = protocolOverrides.safeParse(JSON.parse(text))
  return parsed.success ? parsed.data : {}
}
