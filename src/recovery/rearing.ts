/** The span in which a queen being raised emerges, from cells seen and the brood she can come from; and what follows from it. */

import {
  EMERGENCE_AFTER_LOSS,
  EMERGENCE_AFTER_LOSS_HARD,
  FIRST_EGG_AFTER_EMERGENCE,
  HARD,
  QUEEN,
  QUEEN_EGG_LAID,
  QUIET_BEFORE_EMERGENCE,
  RIPE_CELL_EMERGES,
  VIRGIN_AGE_WHEN_GIVEN,
} from '../biology/index.ts'
import { addDays, clamp, type Day, earlier, later, type Span, shift } from '../days.ts'
import type { DayRange } from './plan-types.ts'
import type { Reason } from './says/said.ts'
import { cellBrood, type Source } from './sources.ts'

export type CellStage = 'open' | 'capped' | 'emerged'

export interface Emergence {
  span: Span
  /** Earliest day by the measured extremes: before it she cannot be out. */
  notBefore: Day
  /** Why the span contradicts what was possible, or null. */
  surprise: Reason | null
}

/** With nothing but the span to go by. */
export const emergence = (span: Span, surprise: Reason | null): Emergence => ({
  span,
  notBefore: span.earliest,
  surprise,
})

/** From the day queenlessness began, with eggs laid up to `lastEgg`: Q+10, Q+12, last egg + 16. */
export function emergenceAfterLoss(queenless: Day, lastEgg: Day): Span {
  const earliest = addDays(queenless, EMERGENCE_AFTER_LOSS.earliest)
  const latest = later(earliest, addDays(lastEgg, EMERGENCE_AFTER_LOSS.latest))
  return {
    earliest,
    likely: clamp(addDays(queenless, EMERGENCE_AFTER_LOSS.likely), earliest, latest),
    latest,
  }
}

/** A ripe cell put in on that day; any capped cell emerges within eight days. */
export const emergenceOfGivenCell = (on: Day): Span => ({
  earliest: on,
  likely: addDays(on, RIPE_CELL_EMERGES),
  latest: addDays(on, QUEEN.emerge - QUEEN.cap),
})

/** A virgin put in on that day had emerged up to four days before. */
export const emergenceOfGivenVirgin = (on: Day): Span => ({
  earliest: addDays(on, -VIRGIN_AGE_WHEN_GIVEN),
  likely: addDays(on, -VIRGIN_AGE_WHEN_GIVEN / 2),
  latest: on,
})

/** Emergence that a cell at that stage allows by itself, both ends included. */
function allowedBy(stage: CellStage, seenOn: Day): DayRange {
  if (stage === 'emerged') return { from: addDays(seenOn, -(QUEEN.emerge - QUEEN.cap)), to: seenOn }
  const laid = QUEEN_EGG_LAID[stage]
  return { from: addDays(seenOn, QUEEN.emerge - laid.first), to: addDays(seenOn, QUEEN.emerge - laid.last) }
}

/** The same by the measured extremes, for a colony queenless since `q`; null when even they exclude it. */
function allowedByHardLimits(stage: CellStage, seenOn: Day, q: Day): DayRange | null {
  const window = {
    from: addDays(q, EMERGENCE_AFTER_LOSS_HARD.earliest),
    to: addDays(q, EMERGENCE_AFTER_LOSS_HARD.latest),
  }
  if (stage === 'emerged')
    return seenOn < window.from ? null : overlap(window, { from: window.from, to: seenOn })
  if (stage === 'open') {
    // An open cell is younger than the slowest capping; its queen stays sealed at least five days after today.
    const lastOpen = addDays(q, HARD.queenCap[1])
    return seenOn > lastOpen
      ? null
      : overlap(window, { from: addDays(seenOn, HARD.queenSealed[0]), to: window.to })
  }
  return overlap(window, { from: seenOn, to: addDays(seenOn, HARD.queenSealed[1]) })
}

function overlap(a: DayRange, b: DayRange): DayRange | null {
  const from = later(a.from, b.from)
  const to = earlier(a.to, b.to)
  return from <= to ? { from, to } : null
}

const middle = (r: DayRange): Day => {
  let [a, b] = [r.from, r.to]
  while (a < b) [a, b] = [addDays(a, 1), addDays(b, -1)]
  return b < r.from ? r.from : b
}

const spanOf = (r: DayRange, likely: Day): Span => ({
  earliest: r.from,
  likely: clamp(likely, r.from, r.to),
  latest: r.to,
})

/**
 * Emergence from a first sighting of cells.
 *
 * @param sources brood the cells can come from
 * @param aliveOn last day on which a queen is known to have been here alive; she may have laid after it, so then only
 *   the cell's own age limits the late end. Null when none is known of since the removal.
 */
export function emergenceFromCells(
  stage: CellStage,
  seenOn: Day,
  sources: readonly Source[],
  aliveOn: Day | null,
): Emergence {
  const own = allowedBy(stage, seenOn)
  const brood = cellBrood(
    sources.filter((s) => aliveOn === null || s.lastEgg >= aliveOn),
    seenOn,
  )
  const hard = aliveOn === null ? allowedBySources(stage, seenOn, sources) : null
  // Brood on which a look found no cells is thought of only where no other can explain them.
  for (const young of [brood.likeliest, brood.any]) {
    const possible = young.map((s) => emergenceAfterLoss(s.lastEgg, s.lastEgg))
    if (aliveOn !== null) possible.push({ ...emergenceAfterLoss(aliveOn, aliveOn), latest: own.to })
    const span = joined(own, possible)
    if (span !== null)
      return { span, notBefore: earlier(span.earliest, hard?.from ?? span.earliest), surprise: null }
  }
  // Cells beside a living queen (supersedure, swarming) or from before the removal: nothing but their age counts.
  if (hard !== null) return emergence(spanOf(hard, hard.from), null)
  const explained = aliveOn !== null || sources.length === 0
  return emergence(
    spanOf(own, middle(own)),
    explained ? null : { code: 'cells-impossible', stage, on: seenOn },
  )
}

/** What the cells' own age and any of these allow together; null when nothing. */
function joined(own: DayRange, possible: readonly Span[]): Span | null {
  const pieces = possible.flatMap((p) => {
    const both = p.earliest > p.latest ? null : overlap(own, { from: p.earliest, to: p.latest })
    return both === null ? [] : [{ ...both, likely: p.likely }]
  })
  const [first, ...rest] = pieces
  if (first === undefined) return null
  const from = rest.reduce((d, p) => earlier(d, p.from), first.from)
  const to = rest.reduce((d, p) => later(d, p.to), first.to)
  return spanOf({ from, to }, first.likely)
}

/** What the measured extremes allow of cells from the brood at hand; null when nothing. */
function allowedBySources(stage: CellStage, seenOn: Day, sources: readonly Source[]): DayRange | null {
  const { likeliest, any } = cellBrood(sources, seenOn)
  for (const s of [...likeliest, ...any]) {
    const hard = allowedByHardLimits(stage, seenOn, s.lastEgg)
    if (hard !== null) return hard
  }
  return null
}

/**
 * A later sighting of cells narrows the span; where it cannot, the newer sighting is believed, as far as the brood at hand
 * allows it by the measured extremes, and the contradiction said.
 */
export function narrowedByCells(
  known: Span,
  stage: CellStage,
  seenOn: Day,
  sources: readonly Source[],
): Emergence {
  const own = allowedBy(stage, seenOn)
  const from = stage === 'emerged' ? known.earliest : own.from
  const both = overlap({ from: known.earliest, to: known.latest }, { from, to: own.to })
  const hard = allowedBySources(stage, seenOn, sources)
  if (both !== null) {
    const span = spanOf(both, known.likely)
    return { span, notBefore: earlier(span.earliest, hard?.from ?? span.earliest), surprise: null }
  }
  const say: Reason =
    stage === 'emerged'
      ? { code: 'emerged-early', on: seenOn, earliest: known.earliest }
      : { code: 'cells-do-not-fit', stage, on: seenOn, from: known.earliest, to: known.latest }
  return emergence(hard === null ? spanOf(own, middle(own)) : spanOf(hard, known.likely), say)
}

/** No later than `day`: the virgin was seen, or her cell is gone after she could have left it. */
export function emergedBy(known: Span, day: Day): Span {
  const latest = later(known.earliest, earlier(known.latest, day))
  return { earliest: known.earliest, likely: clamp(known.likely, known.earliest, latest), latest }
}

/** First egg of a queen raised here: emergence + 8, 12, 21. */
export const firstEggAfter = (emergence: Span): Span =>
  shift(
    emergence,
    FIRST_EGG_AFTER_EMERGENCE.earliest,
    FIRST_EGG_AFTER_EMERGENCE.likely,
    FIRST_EGG_AFTER_EMERGENCE.latest,
  )

/** Last day on which the first egg of a queen that emerges in that span is still expected. */
export const lastFirstEggOf = (emergence: Span): Day => firstEggAfter(emergence).latest

/** Quiet time: from two days before the earliest emergence through the day before the likely first egg. */
export const quietFor = (emergence: Span): DayRange => ({
  from: addDays(emergence.earliest, -QUIET_BEFORE_EMERGENCE),
  to: addDays(firstEggAfter(emergence).likely, -1),
})
