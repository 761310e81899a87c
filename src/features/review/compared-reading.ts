/** Years, yards, people, methods and heat compared, in sentences. */

import { holm } from '../../statistics/index.ts'
import { FEW } from '../../words/index.ts'
import type { Cohort } from './cohort.ts'
import type { Comparison } from './compare.ts'
import { chance } from './readings.ts'

/** What an operator compares beside kinds of job, in the order of the page. */
export const COMPARED = [
  'year',
  'yard',
  'removedBy',
  'lookedAfterBy',
  'method',
  'heat',
] as const satisfies Cohort[]

/** Those in which there are two groups to compare. */
export const comparable = (all: readonly Comparison[]): Comparison[] => all.filter((c) => c.groups.length > 1)

const isEnough = (c: Comparison): boolean => c.groups.filter((g) => g.colonies >= FEW).length > 1

/** Who made most of the visits hangs on how long a colony lived (immortal time): Suissa S (2008) American Journal of Epidemiology 167:492-499. */
const KNOWN_AFTERWARDS =
  'Who made most of the visits is known only afterwards, and a colony lost early had none: a hint, not a measure.'

/** The p that is read: within kinds of job where there is one. */
const pOf = ({ p }: Comparison): number | null => p.lostHeld ?? p.lost

/**
 * A sentence or two for each comparison, Holm's adjustment over them all: many looks at once find something by chance.
 * Example: 'These numbers do not show that they were lost at different rates (p = 0.41), kinds of job held equal.'
 */
export function comparisonReadings(all: readonly Comparison[]): string[] {
  // Only what is read counts among the looks: a comparison of too few is none.
  const read = all.filter((c) => isEnough(c) && pOf(c) !== null)
  const adjusted = holm(read.map((c) => pOf(c) ?? 1))
  return all.map((c) => {
    const p = adjusted[read.indexOf(c)] ?? 1
    const held = c.p.lostHeld === null ? '' : ', kinds of job held equal'
    const test = !isEnough(c)
      ? 'Too few to say whether they differ.'
      : pOf(c) === null
        ? 'No loss to compare.'
        : p < 0.05
          ? `They were lost at different rates (${chance(p)})${held}: more than chance alone would often make them.`
          : `These numbers do not show that they were lost at different rates (${chance(p)})${held}; that is not proof that they are alike.`
    const mix =
      c.held === null
        ? `As it was, not held to one mix of jobs: ${c.whyNot ?? 'there are too few'}.`
        : `“Same jobs”: had each had the same mix of ${c.held.types.join(', ')} (${Math.round(100 * c.held.share)} % of all compared).`
    const left = c.notRecorded === 0 ? '' : ` Of ${c.notRecorded} it was not recorded.`
    return `${test} ${mix}${left}${c.by === 'lookedAfterBy' ? ` ${KNOWN_AFTERWARDS}` : ''}`
  })
}
