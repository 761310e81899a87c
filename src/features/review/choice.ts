/** Which colonies a review looks at, and how: what stands in the address of the page. */
import type { Day } from '../../days.ts'
import { COHORTS, type Cohort, type CohortOptions, cohortOf, inOrder, knownOn } from './cohort.ts'
import type { ColonyFacts } from './facts.ts'

export interface Choice {
  /** What was known at the end of this day. */
  asOf: Day
  /** Taken in on this day or later; null: from the beginning. */
  from: Day | null
  /** Taken in on this day or earlier; null: up to `asOf`. */
  to: Day | null
  /** What groups are compared by. */
  by: Cohort
  /** United counts as a loss; otherwise it is a way of leaving of its own. */
  unitedIsLoss: boolean
  /** Only colonies of these cohorts. */
  only: Partial<Record<Cohort, string>>
  /** Names of the groups drawn in the large chart; empty: the largest. */
  shown: string[]
}

/** Everything, as of a day, by removal type. */
export const everything = (asOf: Day): Choice => ({
  asOf,
  from: null,
  to: null,
  by: 'removalType',
  unitedIsLoss: false,
  only: {},
  shown: [],
})

/** Whether a choice leaves colonies out. */
export const narrows = (c: Choice): boolean =>
  c.from !== null || c.to !== null || Object.keys(c.only).length > 0

/** The records whose colonies the choice takes. */
export function chosen<T extends { facts: ColonyFacts }>(
  records: readonly T[],
  choice: Choice,
  options: CohortOptions,
): T[] {
  const known = new Set(
    knownOn(
      records.map((r) => r.facts),
      choice.asOf,
    ),
  )
  const wanted = COHORTS.flatMap((cohort) => {
    const name = choice.only[cohort]
    return name === undefined ? [] : [{ cohort, name }]
  })
  return records.filter(
    ({ facts }) =>
      known.has(facts) &&
      (choice.from === null || facts.intakeOn >= choice.from) &&
      (choice.to === null || facts.intakeOn <= choice.to) &&
      wanted.every(({ cohort, name }) => cohortOf(facts, cohort, options) === name),
  )
}

/** The names there are in each cohort, in order: what can be chosen. */
export function namesIn(colonies: readonly ColonyFacts[], options: CohortOptions): Record<Cohort, string[]> {
  return Object.fromEntries(
    COHORTS.map((cohort) => [
      cohort,
      inOrder(new Set(colonies.map((c) => cohortOf(c, cohort, options))), cohort, options),
    ]),
  ) as Record<Cohort, string[]>
}
