/** What the reading operations of the HTTP API answer, out of the store as the token's owner sees it. */

import { addDays, type Day } from '../../days.ts'
import type { Plan } from '../../recovery/index.ts'
import { type Result, refused } from '../../result.ts'
import type { ColonySummary, JournalRow, Store } from '../../store/index.ts'
import { historyUntil } from '../letters/index.ts'
import { type Review, readingFacts, reviewOf } from '../review/index.ts'
import { keyIn, limitOf, type Page, type Paging, pageAfter, pageOf } from './paging.ts'
import { colonyOf } from './schemas.ts'

export interface ColoniesAsked extends Paging {
  state?: 'open' | 'left' | 'all' | undefined
  yard?: string | undefined
  text?: string | undefined
  toDo?: 'true' | 'false' | undefined
}

const byId = (a: ColonySummary, b: ColonySummary): number => (a.id < b.id ? -1 : 1)

/** By id, so that a page goes on where the last one ended, whatever was entered between. */
export function coloniesPage(store: Store, asked: ColoniesAsked): Page<ReturnType<typeof colonyOf>> {
  const { state = 'open', yard, text, toDo } = asked
  const found = store.colonies({ open: state === 'all' ? undefined : state === 'open', yard, text })
  const wanted = toDo === undefined ? found : found.filter((s) => s.toDo === (toDo === 'true'))
  const { items, next } = pageAfter([...wanted].sort(byId), (s) => s.id, asked)
  return { items: items.map(colonyOf), next }
}

export function plansPage(store: Store, asked: Paging): Page<Plan> {
  const open = [...store.colonies({ open: true })].sort(byId)
  const { items, next } = pageAfter(open, (s) => s.id, asked)
  return { items: items.map((s) => s.plan), next }
}

const recordedOf = ({ seq, recordedAt, recordedBy, entry }: JournalRow) => ({
  seq,
  recordedAt,
  recordedBy,
  entry,
})
type Recorded = ReturnType<typeof recordedOf>

const SEQ_DIGITS = 16
/** Numbers as text that sorts like them. */
const seqKey = ({ seq }: { seq: number }): string => String(seq).padStart(SEQ_DIGITS, '0')

export function colonyJournal(rows: readonly JournalRow[], asked: Paging): Page<Recorded> {
  const { items, next } = pageAfter(
    [...rows].sort((a, b) => a.seq - b.seq),
    seqKey,
    asked,
  )
  return { items: items.map(recordedOf), next }
}

export function yardJournal(store: Store, asked: Paging): Page<Recorded> {
  const limit = limitOf(asked)
  const before = asked.cursor === undefined ? undefined : Number(keyIn(asked.cursor))
  const rows = store.changes({ limit: limit + 1, before: Number.isSafeInteger(before) ? before : undefined })
  const { items, next } = pageOf(rows, seqKey, limit)
  return { items: items.map(recordedOf), next }
}

export const oneEntry = (store: Store, id: string): Recorded | null => {
  const row = store.entry(id)
  return row === null ? null : recordedOf(row)
}

/** Days ahead for which a plan can be asked. */
const AHEAD = 365

/** The plan as of a day, or why there is none; null when there is no such colony. */
export function planAsOf(
  store: Store,
  colony: string,
  today: Day,
  asOf: Day | undefined,
): Result<{ plan: Plan }> | null {
  const found = store.colony(colony)
  if (found === null) return null
  if (asOf === undefined) return { ok: true, plan: found.summary.plan }
  if (asOf > addDays(today, AHEAD))
    return refused([{ field: 'asOf', message: `must not be more than ${AHEAD} days ahead` }])
  const history = historyUntil(found.history, asOf)
  return history === null
    ? refused([{ field: 'asOf', message: `must not be before the intake on ${found.history.intake.on}` }])
    : { ok: true, plan: store.plan(history, asOf) }
}

/** A few colonies at a step: a long past is not read in one piece. */
export function* reviewingAsOf(
  store: Store,
  zone: string,
  asOf: Day,
  unitedIsLoss: boolean,
): Generator<undefined, Review> {
  const facts = yield* readingFacts(store, zone)
  return reviewOf(facts, asOf, unitedIsLoss)
}
