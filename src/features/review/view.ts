/** Everything the review page, its report and its CSV files show, for one choice of colonies. */

import type { Day } from '../../days.ts'
import type { ColonyId } from '../../ids.ts'
import type { MovedOut } from '../../records/index.ts'
import {
  asLost,
  type Curve,
  cumulativeIncidence,
  type DayCounts,
  firstWays,
  type Incidence,
  kaplanMeier,
  logRank,
  together,
} from '../../statistics/index.ts'
import type { ColonyFacts, Stay } from '../../stays/index.ts'
import { FEW } from '../../words/index.ts'
import { type Choice, chosen } from './choice.ts'
import { type CohortOptions, cohortOf, lossWays, WAYS } from './cohort.ts'
import { type Comparison, compareBy } from './compare.ts'
import { COMPARED } from './compared-reading.ts'
import { type ShareAlive, shareAlive, type TypeOnDay, typesOnDay } from './comparison.ts'
import { type Findings, goesWithLosing } from './factors.ts'
import { type Fates, fatesOf } from './fates.ts'
import { AFTER_DAYS, type AliveAfter, aliveAfter } from './follow-up.ts'
import { type Earned, earnedByType, jobOf, type Rates } from './job-money.ts'
import { type LossPhases, lossPhases } from './loss-phases.ts'
import { type MoneyReview, moneyOf } from './money.ts'
import {
  OUTCOME_DAYS,
  type OutcomesOnDay,
  outcomesOn,
  type TypesTest,
  testable,
  typesTests,
} from './outcomes.ts'
import { type PathCount, pathCounts, queenrightByDay } from './recovery-path.ts'
import { countedBy, type GroupReview, groupReview, nobody } from './review.ts'
import { type YardStay, yardStay } from './stay.ts'

/** A colony: what Review asks of it. */
export interface ColonyRecord {
  id: ColonyId
  facts: ColonyFacts
  /** Its stay as it was known at the end of a day. */
  stayOn: (asOf: Day) => Stay
}

export interface Group {
  name: string
  counts: DayCounts
  curve: Curve
  review: GroupReview
  fates: Fates
  /** Colonies that left on a day nobody wrote down. */
  withoutDay: number
  /** By way of leaving, moved out and other as censored. */
  ways: Incidence
  /** What had become of them, moved out as a way of its own. */
  outcomes: OutcomesOnDay[]
  stay: YardStay
}

export const VIEW_DAYS = [30, 60] as const
export type LookDay = (typeof VIEW_DAYS)[number]

export interface ReviewView {
  choice: Choice
  /** Colonies chosen. Those entered only after they had left were never followed, and count in nothing below. */
  taken: number
  /** What became of every colony chosen, plainly counted. */
  fates: Fates
  /** All colonies chosen, as one group. */
  all: Group
  /** The groups compared, the most colonies first; equal numbers by name. */
  groups: Group[]
  /** Those of them drawn in the large chart. */
  drawn: Group[]
  alive: Record<LookDay, ShareAlive>
  /** One row a group, in the order of `groups`. */
  onDay: Record<LookDay, TypeOnDay[]>
  logRank: { chisq: number; df: number; p: number } | null
  /** Gray's tests between the groups large enough for it, as the log-rank test. */
  grayTests: TypesTest[]
  findings: Findings
  paths: PathCount[]
  queenright: Incidence
  money: MoneyReview
  /** What jobs earned, by kind; empty without prices. */
  earned: Earned[]
  /** Where in the plan colonies were when they were lost. */
  lossPhases: LossPhases
  /** Years, yards, people, methods and heat beside each other. */
  compared: Comparison[]
  /** How those that moved out fared, by days after; empty where nothing was looked at. */
  after: AliveAfter[]
}

/** What the customer paid for a job and what the colony brought; null where it is not known. */
export interface Prices {
  job: number | null
  colony: number | null
}

export interface ReviewViewOptions extends CohortOptions {
  /** Left out: prices are not looked at. */
  prices?: (id: ColonyId) => Prices
  /** What work and days cost the yard. */
  rates: Rates
  /** What was told of a colony after it moved out; left out: nothing is looked at. */
  told?: (id: ColonyId) => MovedOut['followUps']
}

/** Groups drawn when none were asked for, and at most: more lines than these cannot be told apart. */
const DRAWN_AT_FIRST = 3
export const MOST_DRAWN = 5

/** A colony with its stay as of the day looked at. */
interface Counted extends Stay {
  id: ColonyId
  facts: ColonyFacts
}

/** Works out the whole review. Pure. */
export function reviewView(
  records: readonly ColonyRecord[],
  choice: Choice,
  options: ReviewViewOptions,
): ReviewView {
  const { asOf, unitedIsLoss } = choice
  const taken = chosen(records, choice, options)
  const colonies = taken.map((r) => r.facts)
  const groups = groupsIn(colonies, choice, options)
  const all = wholeOf(groups, colonies, choice)
  const names = groups.map((g) => g.name)
  const curves = groups.map((g) => g.curve)
  const tested = testable(groups.map((g) => g.counts))
  const test = logRank(tested.map((c) => asLost(c, lossWays(unitedIsLoss))))
  const counted = taken.map(({ id, facts, stayOn }): Counted => ({ id, facts, ...stayOn(asOf) }))
  const recoveries = counted.map((c) => c.recovery)
  // Where nobody was followed that long, only groups lost to the last one have a share: nothing to lean on.
  const groupsOnDay = (day: LookDay): TypeOnDay[] =>
    shareAlive(all.curve, day).survival === null
      ? typesOnDay(names, curves, day).map((t) => ({ ...t, pooled: null }))
      : typesOnDay(names, curves, day)
  return {
    choice,
    taken: taken.length,
    fates: fatesOf(colonies, asOf),
    all,
    groups,
    drawn: drawnOf(groups, choice.shown),
    alive: { 30: shareAlive(all.curve, 30), 60: shareAlive(all.curve, 60) },
    onDay: { 30: groupsOnDay(30), 60: groupsOnDay(60) },
    grayTests: typesTests(tested, unitedIsLoss),
    logRank: test === null ? null : { chisq: test.chisq, df: test.df, p: test.p },
    findings: goesWithLosing(colonies, asOf, { unitedIsLoss }),
    paths: pathCounts(recoveries),
    queenright: queenrightByDay(recoveries),
    money: moneyOf(counted, asOf),
    earned: earnedOf(counted, options, asOf),
    lossPhases: lossPhases(counted.map((c) => c.phaseBeforeLoss)),
    after: afterOf(taken, options, asOf),
    // Files and the report do not show it, so it is worked out where it is looked at.
    get compared() {
      return COMPARED.map((by) => compareBy(colonies, asOf, by, { ...options, unitedIsLoss }))
    },
  }
}

function earnedOf(counted: readonly Counted[], { prices, rates }: ReviewViewOptions, asOf: Day): Earned[] {
  if (prices === undefined) return []
  const jobs = counted.flatMap(({ id, facts, spending }) => jobOf(facts, spending, asOf, prices(id)) ?? [])
  return earnedByType(jobs, rates)
}

function afterOf(taken: readonly ColonyRecord[], { told }: ReviewViewOptions, asOf: Day): AliveAfter[] {
  if (told === undefined) return []
  const moved = taken.flatMap(({ id, facts: { outcome } }): MovedOut[] =>
    outcome?.what === 'moved-out' && outcome.on !== null && outcome.on <= asOf
      ? [{ movedOutOn: outcome.on, followUps: told(id) }]
      : [],
  )
  return AFTER_DAYS.map((days) => aliveAfter(moved, asOf, days))
}

function groupsIn(colonies: readonly ColonyFacts[], choice: Choice, options: CohortOptions): Group[] {
  const nameOf = (c: ColonyFacts): string => cohortOf(c, choice.by, options)
  const { names, counts } = countedBy(colonies, choice.asOf, nameOf)
  const members = new Map<string, ColonyFacts[]>(names.map((name) => [name, []]))
  for (const c of colonies) members.get(nameOf(c))?.push(c)
  return counts
    .map((c, i) => groupOf(names[i] ?? '', c, members.get(names[i] ?? '') ?? [], choice))
    .sort((a, b) => b.curve.colonies - a.curve.colonies || (a.name < b.name ? -1 : 1))
}

function wholeOf(groups: readonly Group[], colonies: readonly ColonyFacts[], choice: Choice): Group {
  const counts = groups.length === 0 ? nobody() : together(groups.map((g) => g.counts))
  return groupOf('', counts, colonies, choice)
}

function groupOf(
  name: string,
  counts: DayCounts,
  colonies: readonly ColonyFacts[],
  { asOf, unitedIsLoss }: Choice,
): Group {
  const review = groupReview(counts, unitedIsLoss)
  return {
    name,
    counts,
    curve: kaplanMeier(asLost(counts, lossWays(unitedIsLoss))),
    review,
    fates: fatesOf(colonies, asOf),
    withoutDay: colonies.filter((c) => c.outcome?.on === null).length,
    ways: cumulativeIncidence(firstWays(counts, WAYS.length)),
    outcomes: outcomesOn(counts, review.outcomes, OUTCOME_DAYS, unitedIsLoss),
    stay: yardStay(colonies, asOf),
  }
}

/** Those asked for; else the largest, without the ones too small to draw anything from. */
function drawnOf(groups: readonly Group[], shown: readonly string[]): Group[] {
  if (groups.length < 2) return []
  const asked = groups.filter((g) => shown.includes(g.name)).slice(0, MOST_DRAWN)
  return asked.length > 0 ? asked : groups.filter((g) => g.curve.colonies >= FEW).slice(0, DRAWN_AT_FIRST)
}
