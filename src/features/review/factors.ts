/**
 * What goes with losing a colony: hazard ratios for the facts known at intake. Going with is not causing, and nothing
 * here says otherwise.
 */

import type { Day } from '../../days.ts'
import { type Column, type CoxFit, cox } from '../../statistics/index.ts'
import { knownOn, lossWays, staysOf } from './cohort.ts'
import type { ColonyFacts } from './facts.ts'

export const FACTORS = ['type', 'heat', 'queen', 'brood', 'vacuum', 'hours'] as const
export type FactorName = (typeof FACTORS)[number]

interface FactorColumn {
  label: string
  /** What a ratio of 1 compares with: another group, or so much less of a number. */
  against: string
  /** By colony; NaN where the fact is not recorded. */
  values: Float64Array
}

interface Factor {
  name: FactorName
  /** How many colonies it is recorded for. */
  recorded: number
  /** Empty when it is the same wherever it is recorded. */
  columns: FactorColumn[]
}

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
  method: CoxFit['method']
  colonies: number
  lost: number
}

export interface Findings {
  /** True: one model, each fact with the others held equal. False: too few losses for that, one fact at a time. */
  together: boolean
  findings: Finding[]
  /** Facts that could not be looked at, and why. */
  leftOut: { factor: FactorName; why: string }[]
}

/** Losses a coefficient for a joint model: Peduzzi P et al. (1995) Journal of Clinical Epidemiology 48:1503-1510. */
export const LOSSES_PER_COEFFICIENT = 10
/** Fewer losses than this say nothing about any fact (our choice). */
export const FEWEST_LOSSES = 5
/** Types with fewer colonies are taken together as "other types" (our choice). */
const FEWEST_OF_TYPE = 5
/** A fact recorded for less than this share of colonies stays out of the joint model, which needs all facts of each. */
const RECORDED_SHARE = 0.5

/** Ratios for the facts asked for, as of a day. */
export function goesWithLosing(
  all: readonly ColonyFacts[],
  asOf: Day,
  { unitedIsLoss = false, wanted = FACTORS }: { unitedIsLoss?: boolean; wanted?: readonly FactorName[] } = {},
): Findings {
  const colonies = knownOn(all, asOf)
  const modelOf = modeller(colonies, asOf, lossWays(unitedIsLoss))
  const factors = factorsIn(colonies).filter((f) => wanted.includes(f.name))
  const joint = factors.filter((f) => f.columns.length > 0 && f.recorded >= RECORDED_SHARE * colonies.length)
  const coefficients = joint.reduce((sum, f) => sum + f.columns.length, 0)
  const together = modelOf(joint, LOSSES_PER_COEFFICIENT * coefficients)
  const alone = factors.filter((f) => together === null || !joint.includes(f))
  const leftOut: Findings['leftOut'] = []
  const findings: Finding[] = []
  const keep = (found: readonly Finding[]): void => {
    for (const f of found)
      if (f.ratio !== null) findings.push(f)
      else leftOut.push({ factor: f.factor, why: SAID_BY_OTHERS })
  }
  if (together !== null) keep(findingsOf(joint, together))
  for (const f of alone) {
    const one = modelOf([f], FEWEST_LOSSES)
    if (one === null) leftOut.push({ factor: f.name, why: whyNot(f) })
    else keep(findingsOf([f], one))
  }
  return { together: together !== null, findings, leftOut }
}

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
  return (factors: readonly Factor[], fewest: number): CoxFit | null => {
    const columns = factors.flatMap((f) => f.columns)
    if (columns.length === 0) return null
    const gaps = factors.filter((f) => f.recorded < colonies.length).flatMap((f) => f.columns)
    const rows = gaps.length === 0 ? null : recordedRows(gaps, colonies.length)
    const taken = (values: ArrayLike<number>): ArrayLike<number> =>
      rows === null ? values : Float64Array.from(rows, (i) => values[i] ?? 0)
    const fates = taken(lost)
    if (sum(fates) < fewest) return null
    return cox(
      { day: taken(stays.day), lost: fates, entry: taken(stays.entry) },
      columns.map((c): Column => ({ name: c.label, values: taken(c.values) })),
    )
  }
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

function findingsOf(factors: readonly Factor[], fit: CoxFit): Finding[] {
  const columns = factors.flatMap((f) => f.columns.map((c) => ({ factor: f.name, ...c })))
  return columns.map(({ factor, label, against }, j) => {
    const t = fit.terms[j]
    return {
      factor,
      label,
      against,
      ratio: t?.ratio ?? null,
      lower: t?.lower ?? null,
      upper: t?.upper ?? null,
      p: t?.p ?? null,
      method: fit.method,
      colonies: fit.colonies,
      lost: fit.lost,
    }
  })
}

/** A fact that is one of several groups: a column for each but the first, which the others are compared with. */
function grouped(
  name: FactorName,
  colonies: readonly ColonyFacts[],
  groups: readonly string[],
  nameOf: (c: ColonyFacts) => string,
  label: (group: string) => string,
): Factor {
  const columns = groups.slice(1).map((g) => ({
    label: label(g),
    against: label(groups[0] ?? ''),
    values: new Float64Array(colonies.length),
  }))
  const column = new Map(groups.slice(1).map((g, j) => [g, columns[j]?.values]))
  let i = 0
  for (const c of colonies) {
    const values = column.get(nameOf(c))
    if (values !== undefined) values[i] = 1
    i++
  }
  return { name, recorded: colonies.length, columns }
}

/** Groups by number of colonies, the most first; equal numbers by name. */
function byNumber(names: readonly string[]): [name: string, count: number][] {
  const counts = new Map<string, number>()
  for (const n of names) counts.set(n, (counts.get(n) ?? 0) + 1)
  return [...counts].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1))
}

const OTHER_TYPES = 'other types'

function typeFactor(colonies: readonly ColonyFacts[]): Factor {
  const counts = byNumber(colonies.map((c) => c.removalType))
  const own = counts.filter(([, n]) => n >= FEWEST_OF_TYPE).map(([name]) => name)
  const known = new Set(own)
  const groups = own.length < counts.length ? [...own, OTHER_TYPES] : own
  const nameOf = (c: ColonyFacts): string => (known.has(c.removalType) ? c.removalType : OTHER_TYPES)
  return grouped('type', colonies, groups, nameOf, (g) => g)
}

const QUEEN_LABELS: Record<ColonyFacts['queen'], string> = {
  caged: 'queen caged',
  loose: 'queen loose',
  unseen: 'queen unseen',
  lost: 'queen lost',
}

function queenFactor(colonies: readonly ColonyFacts[]): Factor {
  const seen = byNumber(colonies.map((c) => c.queen)).map(([name]) => name)
  const groups = seen.includes('caged') ? ['caged', ...seen.filter((s) => s !== 'caged')] : seen
  const label = (g: string): string => QUEEN_LABELS[g as ColonyFacts['queen']]
  return grouped('queen', colonies, groups, (c) => c.queen, label)
}

/** Ratios for heat are for this many degrees more. */
export const HEAT_STEP_C = 5

/** A fact that is one number, or yes or no; null where it is not recorded. */
function single(
  name: FactorName,
  colonies: readonly ColonyFacts[],
  read: (c: ColonyFacts) => number | null,
  label: string,
  against: string,
): Factor {
  const values = new Float64Array(colonies.length)
  let [i, recorded, least, most] = [0, 0, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const c of colonies) {
    const value = read(c)
    values[i++] = value ?? Number.NaN
    if (value === null) continue
    recorded++
    if (value < least) least = value
    if (value > most) most = value
  }
  return { name, recorded, columns: most > least ? [{ label, against, values }] : [] }
}

const yesNo = (said: boolean | null): number | null => (said === null ? null : said ? 1 : 0)

function factorsIn(colonies: readonly ColonyFacts[]): Factor[] {
  const heat = (c: ColonyFacts) => (c.outdoorC === null ? null : c.outdoorC / HEAT_STEP_C)
  const vacuum = (c: ColonyFacts) => yesNo(c.method === null ? null : c.method === 'vacuum')
  const brood = (c: ColonyFacts) => yesNo(c.broodSalvaged)
  const hours = (c: ColonyFacts) => c.hoursOpenToBoxed
  return [
    typeFactor(colonies),
    single('heat', colonies, heat, `${HEAT_STEP_C} °C warmer`, `${HEAT_STEP_C} °C cooler`),
    queenFactor(colonies),
    single('brood', colonies, brood, 'brood came along', 'no brood'),
    single('vacuum', colonies, vacuum, 'vacuum', 'no vacuum'),
    single('hours', colonies, hours, 'an hour longer to box', 'an hour less'),
  ]
}
