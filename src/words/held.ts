/** A box held for brood disease: suspected itself, or bound to one that is. */
import type { Plan } from '../recovery/index.ts'
import { type Words, wordsIn } from './catalogue.ts'

/** Not to be opened today, but by the inspector, or when its look at the brood is due. */
export const isHeld = ({ advice, exposed, asOf }: Plan): boolean =>
  advice.action === 'call-inspector' || (exposed !== null && asOf < exposed.look.opens)

/** The same where the advice does not say it already; null where there is nothing to say. */
export const boundBeside = (plan: Plan, w: Words = wordsIn('en')): string | null =>
  plan.advice.reasons.some((r) => r.code === 'bound') ? null : boundWords(plan, w)

/** 'bound to W-7, in which brood disease is suspected: it got a frame of eggs from W-7'; null where it is bound to none. */
export const boundWords = ({ exposed }: Plan, w: Words = wordsIn('en')): string | null =>
  exposed === null ? null : w.visit.bound(exposed.from, w.reasons.deed(exposed))
