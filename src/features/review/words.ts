/** The review's words: names of groups and facts as people say them. */

import { dayWords, NOT_WRITTEN_DOWN, plain, temperature, type Units } from '../../words/index.ts'
import type { Choice } from './choice.ts'
import { COHORTS, type Cohort, UNKNOWN } from './cohort.ts'
import { HEAT_STEP_C } from './factor-columns.ts'
import type { Finding } from './factors.ts'
import type { RecoveryPath } from './recovery-path.ts'

/** What one compares by. */
export const COHORT_WORDS: Record<Cohort, string> = {
  removalType: 'removal type',
  yard: 'yard',
  season: 'season of intake',
  year: 'year of intake',
  heat: 'heat at removal',
  queen: 'queen at intake',
  brood: 'brood that came along',
  vacuum: 'vacuum or not',
  method: 'method',
  hours: 'hours open to boxed',
  removedBy: 'who removed it',
  lookedAfterBy: 'who looked after it',
}

/** What is needed to name groups. */
export interface Naming {
  units: Units
  heatLimitC: number
}

const SHIPPED: Record<string, string> = {
  'utility-box': 'utility box',
  'abandoned-hive': 'abandoned hive',
  [NOT_WRITTEN_DOWN]: 'type not known',
}

/** A removal type in a sentence. Example: typeName('utility-box') = 'utility box'. */
export const typeName = (type: string): string => SHIPPED[type] ?? type

const QUEENS: Record<string, string> = {
  caged: 'queen caged',
  loose: 'queen loose',
  unseen: 'queen not seen',
  lost: 'queen dead or lost',
  unknown: 'queen not written down',
}

/** A group's name as it is shown. Example: groupName('heat', 'above the heat limit', naming) = 'above 85 °F'. */
export function groupName(by: Cohort, name: string, { units, heatLimitC }: Naming): string {
  if (name === UNKNOWN && by !== 'yard') return name
  switch (by) {
    case 'removalType':
      return typeName(name)
    case 'heat':
      return `${name.startsWith('above') ? 'above' : 'up to'} ${temperature(heatLimitC, units)}`
    case 'queen':
      return QUEENS[name] ?? name
    case 'season': {
      const [year, season] = name.split(' ')
      return `${season} ${year}`
    }
    case 'brood':
      return name === 'no brood' ? 'no brood came along' : name
    case 'vacuum':
      return name === 'vacuum' ? 'vacuumed' : 'not vacuumed'
    case 'yard':
    case 'year':
    case 'method':
    case 'hours':
    case 'removedBy':
    case 'lookedAfterBy':
      return name
  }
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)

/**
 * A sentence about a group. Removal types go into the sentence, other groups before it.
 * Example: 'Of 41 wall colonies, …'; 'Queen caged: of 30 colonies, …'.
 */
export function aboutGroup(
  by: Cohort,
  name: string,
  naming: Naming,
  sentence: (name: string) => string,
): string {
  const shown = groupName(by, name, naming)
  if (by === 'removalType') return sentence(shown)
  return `${shown.charAt(0).toUpperCase()}${shown.slice(1)}: ${lowerFirst(sentence(''))}`
}

/** What groups are called together. */
export const GROUPS: Record<Cohort, string> = {
  removalType: 'types',
  yard: 'yards',
  season: 'seasons',
  year: 'years',
  heat: 'groups',
  queen: 'groups',
  brood: 'groups',
  vacuum: 'groups',
  method: 'methods',
  hours: 'groups',
  removedBy: 'people',
  lookedAfterBy: 'people',
}

/** A finding with its types named as they are said, and its step of heat in the yard's degrees. */
export function named(f: Finding, units: Units): Finding {
  if (f.factor === 'type') return { ...f, label: typeName(f.label), against: typeName(f.against) }
  if (f.factor !== 'heat' || units.temperature === 'C') return f
  const step = plain((HEAT_STEP_C * 9) / 5)
  return { ...f, label: `${step} °F warmer`, against: `${step} °F cooler` }
}

export const PATH_NAMES: Record<RecoveryPath, string> = {
  'own-queen': 'own queen laid on',
  'own-brood': 'queen raised from own brood',
  'egg-frame': 'queen raised on a frame of eggs',
  'given-cell': 'from a cell or virgin given',
  'purchased-queen': 'purchased queen',
  united: 'united with another',
  lost: 'lost before a queen was proven',
  'left-unproven': 'left without a proven queen',
  'not-yet': 'still open',
}

/** What a choice leaves out, in words; empty when it takes everything. */
export function choiceWords(choice: Choice, naming: Naming): string[] {
  const { from, to, asOf } = choice
  const between =
    from !== null && to !== null
      ? `taken in from ${dayWords(from, asOf)} to ${dayWords(to, asOf)}`
      : from !== null
        ? `taken in since ${dayWords(from, asOf)}`
        : to !== null
          ? `taken in until ${dayWords(to, asOf)}`
          : null
  const kept = COHORTS.flatMap((cohort) => {
    const name = choice.only[cohort]
    return name === undefined ? [] : [`${COHORT_WORDS[cohort]}: ${groupName(cohort, name, naming)}`]
  })
  return between === null ? kept : [between, ...kept]
}
