/** Before anything else: it has left, it is lost, it may be sick. */
import { inWords } from '../../days.ts'
import { exposureWords } from '../tracing.ts'
import type { Adviser } from './context.ts'

export const left: Adviser = ({ s }) =>
  s.history.outcome === null
    ? null
    : { action: 'none', why: `The colony left the yard on ${inWords(s.history.outcome.on)}.` }

const HOW = { 'no-bees': 'without bees', dead: 'dead', gone: 'gone' } as const

/** Nothing is asked of a box that is lost, but that a beekeeper says how it left. */
export const lostBox: Adviser = ({ s }) =>
  s.lost === null
    ? null
    : {
        action: 'none',
        why: `Found ${HOW[s.lost.how]} on ${inWords(s.lost.on)}: a beekeeper looks, closes the entrance so that it is not robbed, and records how it left (died, or absconded). Comb from a dead colony goes to no other before the brood has been looked at for disease.`,
      }

/** Said where a later look was clean and the suspicion still stands. */
const cleanSince: (look: { on: string; suspectedOn?: string }) => string = (look) =>
  look.suspectedOn !== undefined && look.on > look.suspectedOn
    ? ', and a clean look since does not clear it'
    : ''

export const sick: Adviser = ({ s }) =>
  s.diseaseLook?.suspected === true
    ? {
        action: 'call-inspector',
        why: `Brood disease was suspected on ${inWords(s.diseaseLook.suspectedOn ?? s.diseaseLook.on)}${cleanSince(s.diseaseLook)}: close up, do not move or unite it, take no brood from it, and call the apiary inspector. Local codes decide.`,
      }
    : null

/** Bound to a suspected colony: held, and looked at in its weeks. */
export const exposed: Adviser = ({ exposure, today, quiet }) => {
  if (exposure === null || today < exposure.look.opens) return null
  if (quiet !== null && today >= quiet.from && today <= quiet.to) return null
  return { action: 'open-and-look', why: exposureWords(exposure) }
}
