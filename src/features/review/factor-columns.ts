/** The facts known at intake as columns of a model: groups, yes or no, numbers. */
import type { ColonyFacts } from './facts.ts'

export const FACTORS = ['type', 'heat', 'queen', 'brood', 'vacuum', 'hours'] as const
export type FactorName = (typeof FACTORS)[number]

export interface FactorColumn {
  label: string
  /** What a ratio of 1 compares with: another group, or so much less of a number. */
  against: string
  /** By colony; NaN where the fact is not recorded. */
  values: Float64Array
}

export interface Factor {
  name: FactorName
  /** How many colonies it is recorded for. */
  recorded: number
  /** Empty when it is the same wherever it is recorded. */
  columns: FactorColumn[]
}

/** Types with fewer colonies are taken together as "other types" (our choice). */
const FEWEST_OF_TYPE = 5
/**
 * A fact that is one of several groups: a column for each but the first, which the others are compared with. `nameOf` is
 * null where the fact is not recorded.
 */
function grouped(
  name: FactorName,
  colonies: readonly ColonyFacts[],
  groups: readonly string[],
  nameOf: (c: ColonyFacts) => string | null,
  label: (group: string) => string,
): Factor {
  const columns = groups.slice(1).map((g) => ({
    label: label(g),
    against: label(groups[0] ?? ''),
    values: new Float64Array(colonies.length),
  }))
  const column = new Map(groups.slice(1).map((g, j) => [g, columns[j]?.values]))
  let [i, recorded] = [0, 0]
  for (const c of colonies) {
    const group = nameOf(c)
    if (group === null) for (const { values } of columns) values[i] = Number.NaN
    else {
      recorded++
      const values = column.get(group)
      if (values !== undefined) values[i] = 1
    }
    i++
  }
  return { name, recorded, columns }
}

/** Groups by number of colonies, the most first; equal numbers by name. */
function byNumber(names: readonly string[]): [name: string, count: number][] {
  const counts = new Map<string, number>()
  for (const n of names) counts.set(n, (counts.get(n) ?? 0) + 1)
  return [...counts].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1))
}

const OTHER_TYPES = 'other types'
/** What the colonies CSV says where nobody wrote down what kind of job it was. */
const UNKNOWN_TYPE = 'unknown'

function typeFactor(colonies: readonly ColonyFacts[]): Factor {
  const counts = byNumber(colonies.flatMap((c) => (c.removalType === UNKNOWN_TYPE ? [] : [c.removalType])))
  const own = counts.filter(([, n]) => n >= FEWEST_OF_TYPE).map(([name]) => name)
  const known = new Set(own)
  const groups = own.length < counts.length ? [...own, OTHER_TYPES] : own
  const nameOf = ({ removalType: type }: ColonyFacts): string | null =>
    type === UNKNOWN_TYPE ? null : known.has(type) ? type : OTHER_TYPES
  return grouped('type', colonies, groups, nameOf, (g) => g)
}

const QUEEN_LABELS: Record<Exclude<ColonyFacts['queen'], 'unknown'>, string> = {
  caged: 'queen caged',
  loose: 'queen loose',
  unseen: 'queen unseen',
  lost: 'queen lost',
}

function queenFactor(colonies: readonly ColonyFacts[]): Factor {
  const seen = byNumber(colonies.map((c) => c.queen))
    .map(([name]) => name)
    .filter((name) => name !== 'unknown')
  const groups = seen.includes('caged') ? ['caged', ...seen.filter((s) => s !== 'caged')] : seen
  const label = (g: string): string => QUEEN_LABELS[g as keyof typeof QUEEN_LABELS]
  return grouped('queen', colonies, groups, (c) => (c.queen === 'unknown' ? null : c.queen), label)
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

/** Every fact known at intake, as columns. */
export function factorsIn(colonies: readonly ColonyFacts[]): Factor[] {
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
