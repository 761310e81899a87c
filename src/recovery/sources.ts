/**
 * Brood sources and the ambiguity horizon.
 *
 * A sighting proves a NEW layer only when no other source explains it. Every source has a last-egg day: the old queen's
 * is the removal day, a donor frame's the day it was given, a former layer's the day she was lost or replaced.
 */
import { OLDEST_FOR_QUEEN } from '../biology/queen-rearing.ts'
import { WORKER_EGG_LAID } from '../biology/sightings.ts'
import { addDays, type Day, later } from '../days.ts'
import type { Given, Inspection, Intake } from '../journal/entry.ts'
import type { Horizon } from './plan-types.ts'

export interface Source {
  from: 'old-queen' | 'donor' | 'former-layer'
  /** Last day on which an egg of this source can have been laid. */
  lastEgg: Day
  /** Eggs or larvae young enough to become a queen came with it. */
  young: boolean
  /** What was given, for donor frames. */
  gift?: Given['what']
  /** When it was given, if a time was noted. */
  at?: string | undefined
}

/** What the brood that came along allows. 'unknown' is treated as there: a chance is not written off unseen. */
export function broodAlong(intake: Intake): { any: boolean; young: boolean } {
  const b = intake.brood
  if (b === undefined || (b.eggs === undefined && b.open === undefined && b.capped === undefined))
    return { any: true, young: intake.removal.sprayed !== 'yes' }
  const young = (b.eggs ?? (b.open === undefined ? 1 : 0)) + (b.open ?? (b.eggs === undefined ? 1 : 0)) > 0
  const any = young || (b.capped ?? 0) > 0
  // Comb from a sprayed colony is not kept: no queen comes from it, but a stray piece may still confuse.
  return { any, young: young && intake.removal.sprayed !== 'yes' }
}

/** Brood frames from a donor. They may carry brood of every age, so each is a source from the day it was given. */
export const BROOD_GIFTS: readonly Given['what'][] = ['egg-frame', 'open-brood', 'capped-brood']

/**
 * Does this source stand against what was seen in the inspection? A frame given the same day was given after the look,
 * as is the custom, unless the times say otherwise; a frame of eggs counts all the same, since eggs reported
 * with it may be its own.
 */
function confuses(source: Source, look: Inspection): boolean {
  if (source.lastEgg !== look.on || source.from !== 'donor') return source.lastEgg <= look.on
  if (source.at !== undefined && look.at !== undefined) return source.at <= look.at
  return source.gift === 'egg-frame'
}

export interface Conclusive {
  eggs: boolean
  open: boolean
  capped: boolean
}

const LAST = {
  eggs: WORKER_EGG_LAID.eggs.first,
  open: WORKER_EGG_LAID.open.first,
  capped: WORKER_EGG_LAID.capped.first,
}

/** The last egg day of the latest source, or null without any. */
export const lastEggOf = (sources: readonly Source[]): Day | null =>
  sources.reduce<Day | null>((at, s) => (at === null ? s.lastEgg : later(at, s.lastEgg)), null)

/** The last day on which each sighting proves nothing new. Example: removal on 1 May: eggs 4 May, open 10 May, capped 22 May. */
export function horizonOf(sources: readonly Source[]): Horizon {
  const last = lastEggOf(sources)
  if (last === null) return { eggs: null, open: null, capped: null }
  return {
    eggs: addDays(last, LAST.eggs),
    open: addDays(last, LAST.open),
    capped: addDays(last, LAST.capped),
  }
}

/** Brood said to be on fresh comb, but older than the days since intake allow: open 3 days, capped 8 (one day early at most). */
export function tooOldForFreshComb(look: Inspection, intakeOn: Day): boolean {
  if (look.onFreshComb !== true) return false
  const capped = look.capped === 'worker' || look.capped === 'drone-in-worker'
  const open = look.open === 'some' || look.open === 'plenty'
  const days = capped ? WORKER_EGG_LAID.capped.last - 1 : open ? WORKER_EGG_LAID.open.last : 0
  return look.on < addDays(intakeOn, days)
}

/** Which sightings of this inspection can only be a new layer's, were they made. */
export function conclusive(sources: readonly Source[], look: Inspection, intakeOn: Day): Conclusive {
  // Comb drawn since intake cannot hold brood older than the stay; a claim that it does proves nothing.
  if (look.onFreshComb === true && !tooOldForFreshComb(look, intakeOn))
    return { eggs: true, open: true, capped: true }
  const horizon = horizonOf(sources.filter((s) => confuses(s, look)))
  const past = (limit: Day | null): boolean => limit === null || look.on > limit
  return { eggs: past(horizon.eggs), open: past(horizon.open), capped: past(horizon.capped) }
}

/** Last day on which young brood at hand can still be made a queen, or null when there is none. */
export function cellsPossibleUntil(sources: readonly Source[]): Day | null {
  const last = lastEggOf(sources.filter((s) => s.young))
  return last === null ? null : addDays(last, OLDEST_FOR_QUEEN)
}
