/** The boxes of a round sheet: those that ask something on its day, as they were known in the morning of it. */

import { addDays, type Day } from '../../days.ts'
import { standOrder } from '../../journal/index.ts'
import type { Repository } from '../../store/index.ts'
import { asks, type Box, beforeThe, boxOf, doneOn } from '../round/index.ts'
import type { PrintedBox } from './page.tsx'

/** Sheets are typed in within days, and printed at most a fortnight ahead (judgement). */
const TYPED_WITHIN = 60
const PRINTED_AHEAD = 14

export interface SheetAsked {
  /** Null: every yard. */
  yard: string | null
  day: Day
  /** Every box of the yard, not only those that ask something. */
  all: boolean
}

/** In stand order, with plans as of the morning of that day; colonies that have left since are among them. */
export function sheetOf(book: Repository, { yard, day, all }: SheetAsked, today: Day): Box[] {
  const since = day < today ? day : today
  const left = book.happenings(since, today).filter((h) => h.kind === 'outcome')
  const open = book.colonies({ open: true })
  const ids = new Set([...open.map((s) => s.id), ...left.map((h) => h.colony)])
  return [...ids]
    .flatMap((id) => {
      const box = boxOf(book, id)
      const history = box === null ? null : beforeThe(day, box.history)
      if (box === null || history === null || history.outcome !== null) return []
      return [{ ...box, plan: book.plan(history, day, box.plan.exposed) }]
    })
    .filter((b) => (yard === null || b.yard === yard) && (all || asks(b.plan)))
    .sort(standOrder)
}

/**
 * The sheet as it is printed. In the course of its day, what was recorded since the morning is not asked again: a box seen
 * already stands with what is still to be done there, and is left out where that is nothing, unless all boxes are wanted.
 */
export function printedSheet(book: Repository, asked: SheetAsked, today: Day): PrintedBox[] {
  return sheetOf(book, asked, today).flatMap((box): PrintedBox[] => {
    if (asked.day !== today || doneOn(box.history, today).length === 0) return [{ ...box, seen: false }]
    const { outcome } = box.history
    const plan = book.plan(box.history, today, box.plan.exposed)
    return outcome === null && (asked.all || asks(plan)) ? [{ ...box, plan, seen: true }] : []
  })
}

/** The first and the last day a sheet can be of. */
export const sheetDays = (today: Day): { from: Day; to: Day } => ({
  from: addDays(today, -TYPED_WITHIN),
  to: addDays(today, PRINTED_AHEAD),
})
