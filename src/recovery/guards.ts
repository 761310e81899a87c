/**
 * Guard rails: what may not be done today, whatever it would be worth. Each says null, or why not. Pure; the decision which
 * of the open ways is best is somebody else's.
 */

import { EMERGENCE_AFTER_LOSS, MATES_AFTER_EMERGENCE } from '../biology/index.ts'
import { addDays, type Day, daysBetween } from '../days.ts'
import { isQuiet, quietOf } from './phase.ts'
import { matesOn } from './protocol.ts'
import { lastFirstEggOf } from './rearing.ts'
import type { Reason } from './reasons.ts'
import { coldSeason, leastC } from './season.ts'
import type { State } from './state.ts'
import type { Exposure } from './tracing.ts'
import { deedOf } from './tracing.ts'

/** Frames of bees from which a colony with a laying queen is a nucleus and not lost (common practice: 1.5-3). */
export const NUCLEUS_FRAMES = 1.5
/** Least frames of bees for a nucleus whose virgin is to mate: two medium frames (Ohio queen breeders' practice, 2013). */
export const MATING_NUCLEUS_FRAMES = 2
/** Days for which robbing keeps the lid on (common practice: until the evening of the day after it was stopped). */
const ROBBING_DAYS = 2

/** About when a queen raised from brood given or left on that day would fly to mate. */
export const wouldMate = (day: Day): Day => addDays(day, EMERGENCE_AFTER_LOSS.likely + MATES_AFTER_EMERGENCE)

/** Suspected here, or bound to a suspected colony. */
export function isHeld(s: State, exposure: Exposure | null): Reason | null {
  if (s.diseaseLook?.suspected === true)
    return { code: 'held', since: s.diseaseLook.suspectedOn ?? s.diseaseLook.on }
  return exposure === null ? null : { code: 'exposed', since: exposure.on, how: deedOf(exposure) }
}

/** Robbing at the last look that noted signs, within days. */
export const robbedOn = (s: State, today: Day): Day | null =>
  s.signs?.seen.includes('robbing') && daysBetween(s.signs.on, today) <= ROBBING_DAYS ? s.signs.on : null

export interface Around {
  exposure?: Exposure | null
  /** Outdoor temperature at the box, where somebody knows it, °C. */
  outdoorC?: number
  look?: 'full' | 'short'
}

/** May the lid come off? */
export function mayOpen(s: State, today: Day, around: Around = {}): Reason | null {
  if (s.lost !== null) return { code: 'lost-box', on: s.lost.on }
  const held = isHeld(s, null)
  if (held !== null) return held
  const robbed = robbedOn(s, today)
  if (robbed !== null) return { code: 'robbing', on: robbed }
  const quiet = quietOf(s)
  if (isQuiet(today, quiet)) return { code: 'quiet', until: quiet.to }
  const least = leastC(around.look ?? 'short')
  if (around.outdoorC !== undefined)
    return around.outdoorC < least ? { code: 'cold-day', outdoorC: around.outdoorC, leastC: least } : null
  return coldSeason(s.protocol, today) ? { code: 'cold-season' } : null
}

/** May it be united with another colony, as the one that is given up? Cells and queens not wanted are dealt with then. */
export function mayUnite(s: State, _today: Day, { exposure = null }: Around = {}): Reason | null {
  if (s.lost !== null) return { code: 'lost-box', on: s.lost.on }
  const held = isHeld(s, exposure)
  if (held !== null) return held
  if (s.caged !== null) return { code: 'caged-queen', since: s.caged.since }
  const lays = s.queen.is === 'laying' || s.queen.is === 'queenright'
  const frames = s.strength?.counted === true ? s.strength.frames : null
  if (lays && (frames === null || frames >= NUCLEUS_FRAMES)) return { code: 'layer-with-bees', frames }
  if (s.otherQueen !== null) return { code: 'another-queen', since: s.otherQueen }
  return null
}

/** The day since which a queen that fails is to come out; null also once she was looked for on a later day and not found. */
export function toTakeOut(s: State): Day | null {
  const since = s.takeOut
  if (since === null) return null
  const looked = s.history.entries.findLast(
    (e) => e.kind === 'inspection' && e.opened && e.queen !== undefined && e.on > since,
  )
  return looked?.kind === 'inspection' && looked.queen !== 'seen' ? null : since
}

/** May a bought mated queen go in? */
export function mayBuy(s: State, today: Day, { exposure = null }: Around = {}): Reason | null {
  const held = s.lost === null ? isHeld(s, exposure) : ({ code: 'lost-box', on: s.lost.on } as const)
  if (held !== null) return held
  if (s.caged !== null) return { code: 'caged-queen', since: s.caged.since }
  if (s.otherQueen !== null) return { code: 'another-queen', since: s.otherQueen }
  switch (s.queen.is) {
    case 'laying':
    case 'queenright':
      return { code: 'layer' }
    case 'laying-workers':
      return { code: 'laying-workers' }
    case 'rearing': {
      const until = lastFirstEggOf(s.queen.emergence)
      return today <= until && matesOn(s.protocol, addDays(s.queen.emergence.likely, MATES_AFTER_EMERGENCE))
        ? { code: 'raising', until }
        : null
    }
    default:
      return null
  }
}

/** May a frame of eggs go in, as a cure or as a test? */
export function mayGive(s: State, today: Day, { exposure = null }: Around = {}): Reason | null {
  const held = s.lost === null ? isHeld(s, exposure) : ({ code: 'lost-box', on: s.lost.on } as const)
  if (held !== null) return held
  if (s.queen.is === 'laying' || s.queen.is === 'queenright') return { code: 'layer' }
  const about = wouldMate(today)
  if (!matesOn(s.protocol, about)) return { code: 'no-mating', about }
  return coldSeason(s.protocol, today) ? { code: 'cold-season' } : null
}
