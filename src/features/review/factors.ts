/**
 * What goes with losing a colony: hazard ratios for the facts known at intake. Going with is not causing, and nothing
 * here says otherwise.
 */

import type { Day } from '../../days.ts'
import { type ChiSquareTest, type Column, type CoxFit, cox, holm } from '../../statistics/index.ts'
import { knownOn, lossWays, staysOf, withDays } from './cohort.ts'
import { FACTORS, type Factor, type FactorColumn, type FactorName, factorsIn } from './factor-columns.ts'
import type { ColonyFacts } from './facts.ts'

/** One hazard ratio. */
export interface Finding {
  factor: FactorName
  label: string
  against: string
  /** Times the rate of losing; null when it could not be estimated. */
  ratio: number | null
  lower: number | null
  upper: number | null
  p: number | null
  /**
   * p to be read: that of the one test of the whole fact, after Holm's adjustment for all facts looked at, or where it is
   * greater the comparison's own after Holm's adjustment for all comparisons of the fact. Null where there is no test.
   */
  holm: number | null
  method: CoxFit['method']
  colonies: number
  lost: number
  /** Losses of the two groups compared; of all colonies where the fact is a number. */
  behind: number
}

export interface Findings {
  /** True: one model, each fact with the others held equal. False: too few losses for that, one fact at a time. */
  together: boolean
  findings: Finding[]
  /** One test a fact, whatever its columns. */
  tests: FactTest[]
  /** Facts that could not be looked at, and why. */
  leftOut: { factor: FactorName; why: string }[]
}

interface FactTest extends ChiSquareTest {
  factor: FactorName
  /** p after Holm's adjustment for all facts tested. */
  holm: number
}

/** Losses a coefficient for a joint model: Peduzzi P et al. (1995) Journal of Clinical Epidemiology 48:1503-1510. */
const LOSSES_PER_COEFFICIENT = 10
/** Fewer losses than this say nothing about any fact (our choice). */
export const FEWEST_LOSSES = 5
/** Up to so many losses limits come from the profile of the likelihood: Wald's are too narrow on one side there (our choice). */
const PROFILE_BELOW = 50
/** A comparison that one loss would turn around says nothing: two groups need this many losses between them. */
const LOSSES_TO_COMPARE = 2
/** A fact recorded for less than this share of colonies stays out of the joint model, which needs all facts of each. */
const RECORDED_SHARE = 0.5

/** Ratios for the facts asked for, as of a day. */
export function goesWithLosing(
  all: readonly ColonyFacts[],
  asOf: Day,
  { unitedIsLoss = false, wanted = FACTORS }: { unitedIsLoss?: boolean; wanted?: readonly FactorName[] } = {},
): Findings {
  const colonies = withDays(knownOn(all, asOf))
  const modelOf = modeller(colonies, asOf, lossWays(unitedIsLoss))
  const factors = factorsIn(colonies).filter((f) => wanted.includes(f.name))
  const joint = factors.filter((f) => f.columns.length > 0 && f.recorded >= RECORDED_SHARE * colonies.length)
  const coefficients = joint.reduce((sum, f) => sum + f.columns.length, 0)
  const together = modelOf(joint, LOSSES_PER_COEFFICIENT * coefficients)
  const alone = factors.filter((f) => together === null || !joint.includes(f))
  const leftOut: Findings['leftOut'] = []
  const found: Finding[] = []
  const tests: Omit<FactTest, 'holm'>[] = []
  const take = (taken: readonly Factor[], fit: Model): void => {
    tests.push(...testsOf(taken, fit.cox))
    for (const f of findingsOf(taken, fit))
      if (f.ratio === null) leftOut.push({ factor: f.factor, why: SAID_BY_OTHERS })
      else if (f.behind < LOSSES_TO_COMPARE) leftOut.push({ factor: f.factor, why: oneLoss(f) })
      else found.push(f)
  }
  if (together !== null) take(joint, together)
  for (const f of alone) {
    const one = modelOf([f], FEWEST_LOSSES)
    if (one === null) leftOut.push({ factor: f.name, why: whyNot(f) })
    else take([f], one)
  }
  const adjusted = holm(tests.map((t) => t.p))
  const adjustedTests = tests.map((t, i): FactTest => ({ ...t, holm: adjusted[i] ?? 1 }))
  const findings = found.map((f) => ({ ...f, holm: raised(f, found, adjustedTests) }))
  return { together: together !== null, findings, tests: adjustedTests, leftOut }
}

/** A fact that matters need not matter in each of its groups: the comparison itself has to stand among the fact's others. */
function raised(f: Finding, found: readonly Finding[], tests: readonly FactTest[]): number | null {
  const whole = tests.find((t) => t.factor === f.factor)
  if (whole === undefined) return null
  const own = found.filter((x) => x.factor === f.factor)
  return own.length < 2
    ? whole.holm
    : Math.max(whole.holm, holm(own.map((x) => x.p ?? 1))[own.indexOf(f)] ?? 1)
}

/** One test for each fact, whatever its columns. */
function testsOf(factors: readonly Factor[], fit: CoxFit): Omit<FactTest, 'holm'>[] {
  let next = 0
  return factors.flatMap((f) => {
    const from = next
    next += f.columns.length
    const test = fit.testOf(f.columns.map((_, i) => from + i))
    return test === null ? [] : [{ factor: f.name, ...test }]
  })
}

const oneLoss = (f: Finding): string =>
  `${f.behind === 0 ? 'none' : 'only one'} was lost of those with ${f.label} and those with ${f.against}`

const SAID_BY_OTHERS = 'no difference of its own among the colonies for which all facts are recorded'

function whyNot(f: Factor): string {
  if (f.recorded === 0) return 'not recorded'
  if (f.columns.length === 0) return 'the same wherever it is recorded'
  return `too few losses, or no difference among the ${f.recorded} colonies for which it is recorded`
}

/** Fits a model to the colonies with all facts recorded; null with fewer losses than asked, or nothing to fit. */
function modeller(colonies: readonly ColonyFacts[], asOf: Day, ways: readonly number[]) {
  const stays = staysOf(colonies, asOf)
  const lost = Uint8Array.from(stays.way, (w) => (ways.includes(w) ? 1 : 0))
  return (factors: readonly Factor[], fewest: number): Model | null => {
    const columns = factors.flatMap((f) => f.columns)
    if (columns.length === 0) return null
    const gaps = factors.filter((f) => f.recorded < colonies.length).flatMap((f) => f.columns)
    const rows = gaps.length === 0 ? null : recordedRows(gaps, colonies.length)
    const taken = (values: ArrayLike<number>): ArrayLike<number> =>
      rows === null ? values : Float64Array.from(rows, (i) => values[i] ?? 0)
    const fates = taken(lost)
    const losses = sum(fates)
    if (losses < fewest) return null
    const inModel = columns.map((c): Column => ({ name: c.label, values: taken(c.values) }))
    const fit = cox({ day: taken(stays.day), lost: fates, entry: taken(stays.entry) }, inModel, {
      profile: losses < PROFILE_BELOW,
    })
    return fit === null ? null : { cox: fit, columns: inModel, lost: fates }
  }
}

interface Model {
  cox: CoxFit
  /** As they went into the fit. */
  columns: Column[]
  lost: ArrayLike<number>
}

function sum(values: ArrayLike<number>): number {
  let total = 0
  for (let i = 0; i < values.length; i++) total += values[i] ?? 0
  return total
}

/** The colonies for which all of these columns are recorded. */
function recordedRows(columns: readonly FactorColumn[], colonies: number): number[] {
  const rows: number[] = []
  for (let i = 0; i < colonies; i++) if (!columns.some((c) => Number.isNaN(c.values[i]))) rows.push(i)
  return rows
}

function findingsOf(factors: readonly Factor[], { cox: fit, columns: inModel, lost }: Model): Finding[] {
  const columns = factors.flatMap((f) => f.columns.map((c) => ({ factor: f.name, ...c })))
  return columns.map(({ factor, label, against }, j) => {
    const t = fit.terms[j]
    // The other columns of the fact: who has a 1 in one of them is in a third group.
    const others = columns.flatMap((c, k) =>
      k !== j && c.factor === factor ? [inModel[k]?.values ?? []] : [],
    )
    return {
      factor,
      label,
      against,
      ratio: t?.ratio ?? null,
      lower: t?.lower ?? null,
      upper: t?.upper ?? null,
      p: t?.p ?? null,
      holm: null,
      method: fit.method,
      colonies: fit.colonies,
      lost: fit.lost,
      behind: lossesWithout(lost, others),
    }
  })
}

/** Losses among the colonies that are in none of these groups. */
function lossesWithout(lost: ArrayLike<number>, groups: readonly ArrayLike<number>[]): number {
  let total = 0
  for (let i = 0; i < lost.length; i++) if (lost[i] === 1 && groups.every((g) => g[i] !== 1)) total++
  return total
}
