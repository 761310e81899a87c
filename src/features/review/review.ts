/** The review that `resettle review --json` prints: survival overall and by removal type. Public format (README). */

import type { Day } from '../../days.ts'
import {
  asLost,
  type Curve,
  countByDay,
  cumulativeIncidence,
  type DayCounts,
  firstWays,
  kaplanMeier,
  logRank,
  type QuantileDay,
  quantileDay,
  restrictedMean,
  type SurvivalAt,
  survivalAt,
  together,
} from '../../statistics/index.ts'
import { ALL_WAYS, groupsOf, knownOn, lossWays, staysOf, WAYS, withDays } from './cohort.ts'
import type { ColonyFacts } from './facts.ts'
import { addFates, type Fates, fateOf, noFates, type PrintedFates, printedFates } from './fates.ts'
import { type OutcomeRow, outcomeRows, type TypesTest, typesTests } from './outcomes.ts'

interface StepRow {
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

interface WaysRow {
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
  /** Every day on which somebody left: what had become of the colonies, moved out as a way of its own. */
  outcomes: OutcomeRow[]
}

/** A group as `review --json` prints it: with the plain counts. */
interface PrintedGroup extends GroupReview {
  fates: PrintedFates
  /** Colonies that left on a day nobody wrote down: in `fates`, in nothing else. */
  withoutDay: number
}

export interface Review {
  asOf: Day
  overall: PrintedGroup
  byType: Record<string, PrintedGroup>
  logRank: { chisq: number; df: number; p: number } | null
  /** Between types; figures are null where there is nothing to compare. */
  grayTests: TypesTest[]
}

/** The statistics of one group; `counts` by every way of ALL_WAYS. */
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
    waysOfLeaving: waysRows(firstWays(counts, WAYS.length)),
    outcomes: outcomeRows(counts),
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

/** Colonies counted in groups, with the groups' names. */
export interface CountedGroups {
  names: string[]
  /** By day and every way of ALL_WAYS; those without a day of leaving are not among them. */
  counts: DayCounts[]
  fates: Fates[]
  /** Colonies that left on a day nobody wrote down. */
  withoutDay: number[]
}

/** Counts colonies grouped by a name, in one pass and by day. */
export function countedBy(
  colonies: readonly ColonyFacts[],
  asOf: Day,
  nameOf: (c: ColonyFacts) => string,
): CountedGroups {
  const { names, grouping } = groupsOf(colonies, nameOf)
  const fates = names.map(noFates)
  const withoutDay = names.map(() => 0)
  let i = 0
  for (const c of colonies) {
    const g = grouping.of[i++] ?? 0
    const own = fates[g]
    if (own !== undefined) own[fateOf(c, asOf)]++
    if (c.outcome?.on === null) withoutDay[g] = (withoutDay[g] ?? 0) + 1
  }
  const dated = withDays(colonies)
  const of = dated === colonies ? grouping.of : Array.from(grouping.of).filter((_, k) => hasDay(colonies[k]))
  const counts = countByDay(staysOf(dated, asOf), ALL_WAYS.length, { of, count: names.length })
  return { names, counts, fates, withoutDay }
}

const hasDay = (c: ColonyFacts | undefined): boolean => c?.outcome?.on !== null

/** The whole review. Pure: the day is an argument, and the order of the colonies does not matter. */
export function reviewOf(all: readonly ColonyFacts[], asOf: Day, unitedIsLoss = false): Review {
  return reviewOfTypes(
    countedBy(knownOn(all, asOf), asOf, (c) => c.removalType),
    asOf,
    unitedIsLoss,
  )
}

/** The review from colonies already counted by type. */
export function reviewOfTypes(
  { names, counts, fates, withoutDay }: CountedGroups,
  asOf: Day,
  unitedIsLoss = false,
): Review {
  const test = logRank(counts.map((c) => asLost(c, lossWays(unitedIsLoss))))
  const printed = (c: DayCounts, f: Fates, missing: number): PrintedGroup => ({
    ...groupReview(c, unitedIsLoss),
    fates: printedFates(f),
    withoutDay: missing,
  })
  return {
    asOf,
    overall: printed(
      counts.length === 0 ? nobody() : together(counts),
      fates.reduce(addFates, noFates()),
      withoutDay.reduce((a, b) => a + b, 0),
    ),
    byType: Object.fromEntries(
      counts.map((c, g): [string, PrintedGroup] => [
        names[g] ?? '',
        printed(c, fates[g] ?? noFates(), withoutDay[g] ?? 0),
      ]),
    ),
    logRank: test === null ? null : { chisq: test.chisq, df: test.df, p: test.p },
    grayTests: typesTests(counts, unitedIsLoss),
  }
}

/** Counts of nobody, for when there is no colony. */
export function nobody(): DayCounts {
  const [counts] = countByDay({ day: [], way: [] }, ALL_WAYS.length)
  if (counts === undefined) throw new RangeError('nobody: no counts')
  return counts
}
