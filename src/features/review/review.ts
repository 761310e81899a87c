/** The review that `resettle review --json` prints: survival overall and by removal type. Public format (README). */

import type { Day } from '../../days.ts'
import {
  asLost,
  type Curve,
  countByDay,
  cumulativeIncidence,
  type DayCounts,
  kaplanMeier,
  logRank,
  type QuantileDay,
  quantileDay,
  restrictedMean,
  type SurvivalAt,
  survivalAt,
  together,
} from '../../statistics/index.ts'
import { groupsOf, knownOn, lossWays, staysOf, WAYS } from './cohort.ts'
import type { ColonyFacts } from './facts.ts'

export interface StepRow {
  /** Days since intake. */
  day: number
  atRisk: number
  lost: number
  /** Left by any other way, or last known there. */
  left: number
  survival: number
  lower: number | null
  upper: number | null
}

export interface WaysRow {
  day: number
  died: number
  absconded: number
  united: number
}

export interface GroupReview {
  colonies: number
  lost: number
  /** Every day on which someone was lost or left. */
  steps: StepRow[]
  at30: SurvivalAt
  at60: SurvivalAt
  median: QuantileDay
  /** Days out of the first 60; null without colonies. */
  restrictedMean60: number | null
  /** On the same days: share gone by each way. */
  waysOfLeaving: WaysRow[]
}

export interface Review {
  asOf: Day
  overall: GroupReview
  byType: Record<string, GroupReview>
  logRank: { chisq: number; df: number; p: number } | null
}

/** The statistics of one group; `counts` by the three ways of WAYS. */
export function groupReview(counts: DayCounts, unitedIsLoss = false): GroupReview {
  const curve = kaplanMeier(asLost(counts, lossWays(unitedIsLoss)))
  return {
    colonies: curve.colonies,
    lost: curve.lost,
    steps: stepRows(curve),
    at30: survivalAt(curve, 30),
    at60: survivalAt(curve, 60),
    median: quantileDay(curve, 0.5),
    restrictedMean60: curve.colonies === 0 ? null : restrictedMean(curve, 60).mean,
    waysOfLeaving: waysRows(counts),
  }
}

const stepRows = (curve: Curve): StepRow[] =>
  curve.steps.map(({ day, atRisk, lost, left, survival, lower, upper }) => ({
    day,
    atRisk,
    lost,
    left,
    survival,
    lower,
    upper,
  }))

function waysRows(counts: DayCounts): WaysRow[] {
  const incidence = cumulativeIncidence(counts)
  const [died, absconded, united] = incidence.ways
  return incidence.days.map((day, i) => ({
    day,
    died: died?.share[i] ?? 0,
    absconded: absconded?.share[i] ?? 0,
    united: united?.share[i] ?? 0,
  }))
}

/** Colonies counted by day in groups, with the groups' names. */
export interface CountedGroups {
  names: string[]
  counts: DayCounts[]
}

/** Counts colonies by day, grouped by a name. */
export function countedBy(
  colonies: readonly ColonyFacts[],
  asOf: Day,
  nameOf: (c: ColonyFacts) => string,
): CountedGroups {
  const { names, grouping } = groupsOf(colonies, nameOf)
  return { names, counts: countByDay(staysOf(colonies, asOf), WAYS.length, grouping) }
}

/** The whole review. Pure: the day is an argument, and the order of the colonies does not matter. */
export function reviewOf(all: readonly ColonyFacts[], asOf: Day, unitedIsLoss = false): Review {
  return reviewOfTypes(
    countedBy(knownOn(all, asOf), asOf, (c) => c.removalType),
    asOf,
    unitedIsLoss,
  )
}

/** The review from colonies already counted by type. */
export function reviewOfTypes({ names, counts }: CountedGroups, asOf: Day, unitedIsLoss = false): Review {
  const test = logRank(counts.map((c) => asLost(c, lossWays(unitedIsLoss))))
  return {
    asOf,
    overall: groupReview(together(counts), unitedIsLoss),
    byType: Object.fromEntries(
      counts.map((c, g): [string, GroupReview] => [names[g] ?? '', groupReview(c, unitedIsLoss)]),
    ),
    logRank: test === null ? null : { chisq: test.chisq, df: test.df, p: test.p },
  }
}
