/** What is said before a colony leaves: what nobody should find out on the road. Pure. */
import type { Day } from '../days.ts'
import { type Permit, papersEnded, papersNotYet, permitWords } from '../records/index.ts'
import type { Plan, UnmetReason } from '../recovery/index.ts'
import { dayWords } from './dates.ts'

/**
 * Sentences, the gravest first: held for brood disease, a treatment in course, a paper that has ended or does not hold yet,
 * no paper at all. Empty where nothing keeps it. `day`: the day it goes.
 */
export function beforeItLeaves(plan: Plan, permits: readonly Permit[], day: Day): string[] {
  const on = (d: Day | undefined): string => (d === undefined ? '' : dayWords(d, plan.asOf))
  const because = (...codes: UnmetReason['code'][]): string[] =>
    plan.readiness.unmet.filter((u) => codes.includes(u.reason.code)).map((u) => u.what)
  return [
    ...[...because('disease-suspected'), ...because('bound')].map(sentence),
    ...because('withdrawal', 'treatment-unwashed').map((what) => `In course: ${what}.`),
    ...papersEnded(permits, day).map((p) => `Ended ${on(p.until)}: ${permitWords(p)}. It needs a new one.`),
    ...papersNotYet(permits, day).map((p) => `Good only from ${on(p.on)}: ${permitWords(p)}.`),
    ...(permits.length === 0
      ? ['No paper is noted. Which ones bees need to travel, local rules decide: ask before they go.']
      : []),
  ]
}

const sentence = (what: string): string => `${what.charAt(0).toUpperCase()}${what.slice(1)}.`
