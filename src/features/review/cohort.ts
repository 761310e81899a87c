/** Cohorts: which colonies belong together, and their stays in days. */

import { type Day, dayNumber } from '../../days.ts'
import type { Durations, Grouping } from '../../statistics/index.ts'
import { hotterThan } from '../../units.ts'
import type { ColonyFacts } from './facts.ts'

/** Every way of leaving, as `way` 1, 2, … in Durations. */
export const ALL_WAYS = ['died', 'absconded', 'united', 'moved-out', 'other', 'unknown'] as const
/** Those of a curve of survival in the yard: the first three. Moved out, other and unknown are censored there. */
export const WAYS = ['died', 'absconded', 'united'] as const

/** A way's number in Durations. Example: wayNumber('moved-out') = 4. */
export const wayNumber = (what: (typeof ALL_WAYS)[number]): number => ALL_WAYS.indexOf(what) + 1

/** Lost is died or absconded; united too when the operator counts it as a loss. As numbers of ways. */
export const lossWays = (unitedIsLoss: boolean): number[] => (unitedIsLoss ? [1, 2, 3] : [1, 2])

export interface Stays extends Durations {
  day: Int32Array
  way: Int32Array
  entry: Int32Array
}

/** Colonies of which a curve can be made: those that left on a day nobody wrote down cannot be placed on one. */
export const withDays = (colonies: readonly ColonyFacts[]): readonly ColonyFacts[] =>
  colonies.some((c) => c.outcome?.on === null) ? colonies.filter((c) => c.outcome?.on !== null) : colonies

/**
 * Stays from intake, as of a day: colonies in the yard are censored on it, or on the last day on which anybody saw them.
 * Facts of later days are not known yet: a colony that left later is still there, and one taken in later (`colonies`
 * leaves it out) does not exist. A later sighting says only that it was still there on the day of the look.
 * Throws RangeError for a colony whose outcome has no day (see {@link withDays}).
 */
export function staysOf(colonies: readonly ColonyFacts[], asOf: Day): Stays {
  const day = new Int32Array(colonies.length)
  const way = new Int32Array(colonies.length)
  const entry = new Int32Array(colonies.length)
  const number = remembered(dayNumber)
  const today = number(asOf)
  let i = 0
  for (const c of colonies) {
    const from = number(c.intakeOn)
    const { outcome } = c
    if (outcome?.on === null) throw new RangeError(`staysOf: ${c.tag}: its outcome has no day`)
    if (outcome === null)
      day[i] = (c.lastSeen === null || c.lastSeen > asOf ? today : number(c.lastSeen)) - from
    else if (outcome.on > asOf) day[i] = today - from
    else {
      day[i] = number(outcome.on) - from
      way[i] = wayNumber(outcome.what)
    }
    entry[i] = c.followedFrom > c.intakeOn ? number(c.followedFrom) - from : 0
    i++
  }
  return { day, way, entry }
}

/** Colonies are many and days are few: each day's number is worked out once. */
function remembered(numberOf: (day: Day) => number): (day: Day) => number {
  const known = new Map<Day, number>()
  return (day) => {
    const found = known.get(day)
    if (found !== undefined) return found
    const number = numberOf(day)
    known.set(day, number)
    return number
  }
}

/** Colonies taken in by that day. */
export const knownOn = (colonies: readonly ColonyFacts[], asOf: Day): readonly ColonyFacts[] =>
  colonies.every((c) => c.intakeOn <= asOf) ? colonies : colonies.filter((c) => c.intakeOn <= asOf)

const SEASONS = ['spring', 'summer', 'autumn', 'winter'] as const
export type Season = (typeof SEASONS)[number]

/** The meteorological season: March to May is spring north of the equator. Example: seasonOf('2026-05-10') = 'spring'. */
export function seasonOf(day: Day, hemisphere: 'north' | 'south' = 'north'): Season {
  const month = Number(day.slice(5, 7)) - (hemisphere === 'north' ? 3 : 9)
  return SEASONS[Math.floor(((month + 12) % 12) / 3)] ?? 'spring'
}

/** A season with its year; one that goes over the turn of the year has both. Example: '2026 spring', '2026/27 winter'. */
function seasonWithYear(day: Day, hemisphere: 'north' | 'south' | undefined): string {
  const [year, month] = [Number(day.slice(0, 4)), Number(day.slice(5, 7))]
  const season = seasonOf(day, hemisphere)
  if (month > 2 && month < 12) return `${year} ${season}`
  const begun = month === 12 ? year : year - 1
  return `${begun}/${String(begun + 1).slice(2)} ${season}`
}

export const COHORTS = [
  'removalType',
  'yard',
  'season',
  'year',
  'heat',
  'queen',
  'brood',
  'vacuum',
  'method',
  'hours',
  'removedBy',
  'lookedAfterBy',
] as const
export type Cohort = (typeof COHORTS)[number]

export interface CohortOptions {
  /** °C; above it is hot. The protocol's limit. */
  heatLimitC: number
  hemisphere?: 'north' | 'south'
}

/** Said where a fact was not recorded. */
export const UNKNOWN = 'not recorded'

const HOURS_BANDS: readonly (readonly [limit: number, name: string])[] = [
  [2, 'up to 2 h'],
  [4, '2 to 4 h'],
  [8, '4 to 8 h'],
]

const LONG = 'over 8 h'
const HOURS_NAMES = [...HOURS_BANDS.map(([, name]) => name), LONG]

function hoursBand(hours: number): string {
  return HOURS_BANDS.find(([limit]) => hours <= limit)?.[1] ?? LONG
}

/** The name of the cohort a colony belongs to. Example: cohortOf(colony, 'vacuum', options) = 'vacuum' or 'no vacuum'. */
export function cohortOf(c: ColonyFacts, by: Cohort, { heatLimitC, hemisphere }: CohortOptions): string {
  switch (by) {
    case 'removalType':
      return c.removalType
    case 'yard':
      return c.yard ?? UNKNOWN
    case 'season':
      return seasonWithYear(c.intakeOn, hemisphere)
    case 'year':
      return c.intakeOn.slice(0, 4)
    case 'heat':
      if (c.outdoorC === null) return UNKNOWN
      return hotterThan(c.outdoorC, heatLimitC) ? 'above the heat limit' : 'up to the heat limit'
    case 'queen':
      return c.queen === 'unknown' ? UNKNOWN : c.queen
    case 'brood':
      return c.broodSalvaged === null ? UNKNOWN : c.broodSalvaged ? 'brood came along' : 'no brood'
    case 'vacuum':
      return c.method === null ? UNKNOWN : c.method === 'vacuum' ? 'vacuum' : 'no vacuum'
    case 'method':
      return c.method ?? UNKNOWN
    case 'hours':
      return c.hoursOpenToBoxed === null ? UNKNOWN : hoursBand(c.hoursOpenToBoxed)
    case 'removedBy':
      return c.removedBy ?? UNKNOWN
    case 'lookedAfterBy':
      return c.lookedAfterBy ?? UNKNOWN
  }
}

/** Names that have an order of their own, as a number to sort by: seasons by time, hours by length; 0 for all others. */
function placeOf(name: string, by: Cohort, hemisphere: CohortOptions['hemisphere']): number {
  if (by === 'hours') return HOURS_NAMES.indexOf(name) + 1 || HOURS_NAMES.length + 1
  if (by !== 'season') return 0
  const [year = '', season] = name.split(' ')
  // In the south a year's first whole season is autumn.
  const first = hemisphere === 'south' ? SEASONS.indexOf('autumn') : 0
  return 4 * Number(year.slice(0, 4)) + ((SEASONS.indexOf(season as Season) - first + 4) % 4)
}

/** A cohort's names as a list of them reads: seasons by time, hours by length, the others by the alphabet. */
export const inOrder = (names: Iterable<string>, by: Cohort, { hemisphere }: CohortOptions): string[] =>
  [...names].sort().sort((a, b) => placeOf(a, by, hemisphere) - placeOf(b, by, hemisphere))

/** Colonies in named groups, the names in alphabetical order, so that the order of the colonies changes nothing. */
export function groupsOf(
  colonies: readonly ColonyFacts[],
  nameOf: (c: ColonyFacts) => string,
): { names: string[]; grouping: Grouping } {
  const found = new Map<string, number>()
  const seen = new Int32Array(colonies.length)
  let i = 0
  for (const c of colonies) {
    const name = nameOf(c)
    let place = found.get(name)
    if (place === undefined) {
      place = found.size
      found.set(name, place)
    }
    seen[i++] = place
  }
  const names = [...found.keys()].sort()
  const place = new Int32Array(names.length)
  for (const [g, name] of names.entries()) place[found.get(name) ?? 0] = g
  return { names, grouping: { of: seen.map((s) => place[s] ?? 0), count: names.length } }
}
