/** What is said before a colony leaves: what nobody should find out on the road. Pure. */
import type { Day } from '../days.ts'
import { type Permit, papersEnded, papersNotYet, permitWords } from '../records/index.ts'
import type { Plan } from '../recovery/index.ts'
import { dayWords } from './dates.ts'

/**
 * Sentences, the gravest first: held for brood disease, a treatment in course, a paper that has ended or does not hold yet,
 * no paper at all. Empty where nothing keeps it. `day`: the day it goes.
 */
export function beforeItLeaves(plan: Plan, permits: readonly Permit[], day: Day): string[] {
  const on = (d: Day | undefined): string => (d === undefined ? '' : dayWords(d, plan.asOf))
  const unmet = plan.readiness.unmet.map((u) => u.what)
  const because = (begins: string): string[] => unmet.filter((what) => what.startsWith(begins))
  return [
    ...[...because('disease look without suspicion'), ...because('clear of brood disease')].map(sentence),
    ...because('treatment').map((what) => `In course: ${what}.`),
    ...papersEnded(permits, day).map((p) => `Ended ${on(p.until)}: ${permitWords(p)}. It needs a new one.`),
    ...papersNotYet(permits, day).map((p) => `Good only from ${on(p.on)}: ${permitWords(p)}.`),
    ...(permits.length === 0
      ? ['No paper is noted. Which ones bees need to travel, local rules decide: ask before they go.']
      : []),
  ]
}

const sentence = (what: string): string => `${what.charAt(0).toUpperCase()}${what.slice(1)}.`
