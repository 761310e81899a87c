/** Spans that follow from the state: emergence, first egg, proof by worker brood, laying-worker risk, broodless days. */
import { FIRST_EGG_AFTER_RELEASE, LAYING_WORKER_RISK, WORKER } from '../biology/index.ts'
import { addDays, clamp, type Day, later, type Span, shift } from '../days.ts'
import type { DayRange, PlanSpans } from './plan-types.ts'
import { emergenceAfterLoss, firstEggAfter } from './rearing.ts'
import { cellsPossibleUntil, horizonOf, lastEggOf } from './sources.ts'
import type { State } from './state.ts'

/** When a queen being raised emerges: from cells, or from the brood she may come from; null when none can. */
export function expectedEmergence(s: State): Span | null {
  if (s.queen.is === 'rearing') return s.queen.emergence
  if (s.queen.is !== 'none' || !s.queen.chance) return null
  const young = lastEggOf(s.sources.filter((x) => x.young))
  return young === null ? null : emergenceAfterLoss(young, young)
}

/** `span` without the days on which a look found no eggs; null when nothing of it is left. */
function afterLookWithout(span: Span, lastNoEggs: Day | null): Span | null {
  if (lastNoEggs === null || lastNoEggs < span.earliest) return span
  const earliest = addDays(lastNoEggs, 1)
  if (earliest > span.latest) return null
  return { earliest, likely: clamp(span.likely, earliest, span.latest), latest: span.latest }
}

/** First egg of the layer to come, or of the one proven; null when nothing seen allows a date. */
export function expectedFirstEgg(s: State): Span | null {
  const q = s.queen
  if (q.is === 'laying' || q.is === 'queenright') return q.firstEgg
  if (q.is === 'released') {
    const w = FIRST_EGG_AFTER_RELEASE
    const day = { earliest: q.on, likely: q.on, latest: q.on }
    return afterLookWithout(shift(day, w.earliest, w.likely, w.latest), s.lastNoEggs)
  }
  const emergence = expectedEmergence(s)
  return emergence === null ? null : afterLookWithout(firstEggAfter(emergence), s.lastNoEggs)
}

/** When capped worker brood can prove the layer of that first egg: nine days on, and past the horizon. */
export function proofFrom(s: State, firstEgg: Span): Span {
  const capped = shift(firstEgg, WORKER.cap, WORKER.cap, WORKER.cap)
  const horizon = s.queen.is === 'laying' && s.queen.freshComb ? null : horizonOf(s.sources).capped
  if (horizon === null) return capped
  const from = addDays(horizon, 1)
  return {
    earliest: later(capped.earliest, from),
    likely: later(capped.likely, from),
    latest: later(capped.latest, from),
  }
}

/** A swarm without brood has nothing capped until its own brood is: eight days at least (Trunch: 7-8 days). */
const SWARM_BROODLESS_DAYS = 8

function swarmWindow(s: State): DayRange | null {
  const { intake } = s.history
  if (intake.removal.type !== 'swarm' || s.sources.length > 0) return null
  return { from: intake.on, to: addDays(intake.on, SWARM_BROODLESS_DAYS) }
}

/** From when the last worker of the old brood has emerged until the new layer's first brood is capped. */
function broodlessDays(s: State, firstEgg: Span | null): DayRange | null {
  if (firstEgg === null) return swarmWindow(s)
  const last = lastEggOf(s.sources.filter((x) => x.from !== 'former-layer'))
  const from = last === null ? s.history.intake.on : addDays(last, WORKER.emerge)
  const to = addDays(firstEgg.likely, WORKER.cap)
  return from < to ? { from, to } : null
}

/** Abandoned, sprayed or trapped, and no eggs or larvae came along: she may have been lost as long ago as capped brood lives. */
function lossCountsFrom(s: State): Day {
  const { brood } = s.history.intake
  const none = brood?.eggs === 0 && brood.open === 0
  return s.lossMayBeEarlier && none && s.lastYoungBrood === s.lastOldEgg
    ? addDays(s.lastOldEgg, -WORKER.cap)
    : s.lastYoungBrood
}

export function spansOf(s: State): PlanSpans {
  const q = s.queen
  const spans: PlanSpans = {}
  const until = cellsPossibleUntil(s.sources)
  const waiting = q.is === 'unseen' || q.is === 'present' || q.is === 'caged' || (q.is === 'none' && q.chance)
  if (until !== null && waiting) spans.cellsPossibleUntil = until
  const emergence = expectedEmergence(s)
  if (emergence !== null) spans.emergence = emergence
  const firstEgg = expectedFirstEgg(s)
  if (firstEgg !== null) {
    spans.firstEgg = firstEgg
    if (q.is !== 'queenright') spans.workerBroodProof = proofFrom(s, firstEgg)
  }
  if (q.is === 'unseen' || q.is === 'none' || q.is === 'rearing' || q.is === 'laying-workers') {
    const last = lossCountsFrom(s)
    const day = { earliest: last, likely: last, latest: last }
    spans.layingWorkerRisk = shift(
      day,
      LAYING_WORKER_RISK.earliest,
      LAYING_WORKER_RISK.likely,
      LAYING_WORKER_RISK.latest,
    )
  }
  const broodless = broodlessDays(s, firstEgg)
  if (broodless !== null) spans.broodless = broodless
  return spans
}

/** When capped worker brood can prove the layer to come, or the one whose eggs were seen; null when nothing allows a date. */
export function proofOf(s: State): Span | null {
  const first = expectedFirstEgg(s)
  return first === null ? null : proofFrom(s, first)
}
