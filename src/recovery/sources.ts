/**
 * Brood sources and the ambiguity horizon.
 *
 * A sighting proves a NEW layer only when no other source explains it. Every source has a last-egg day: the old queen's
 * is the removal day, a donor frame's the day it was given, a former layer's the day she was lost or replaced.
 */
import { OLDEST_FOR_QUEEN, WORKER_EGG_LAID } from '../biology/index.ts'
import { addDays, type Day, later } from '../days.ts'
import type { Given, Inspection, Intake } from '../journal/index.ts'
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
  /** Looked at since: no cells had been begun on it. */
  passedOver?: true
  /** For a former layer: last day on which an egg of hers can have been laid that the look would have missed. */
  youngUntil?: Day
}

/** What the brood that came along allows. 'unknown' is treated as there: a chance is not written off unseen. */
export function broodAlong(intake: Intake): { any: boolean; young: boolean } {
  const b = intake.brood
  // A queen comes only of brood that lives, and comb from a sprayed colony is not kept; a stray piece may still confuse.
  const alive =
    intake.removal.sprayed !== 'yes' && (intake.broodState === undefined || intake.broodState === 'alive')
  if (b === undefined || (b.eggs === undefined && b.open === undefined && b.capped === undefined))
    return { any: true, young: alive }
  const young = (b.eggs ?? (b.open === undefined ? 1 : 0)) + (b.open ?? (b.eggs === undefined ? 1 : 0)) > 0
  const any = young || (b.capped ?? 0) > 0
  return { any, young: young && alive }
}

/** Brood frames from a donor. They may carry brood of every age, so each is a source from the day it was given. */
export const BROOD_GIFTS: readonly Given['what'][] = ['egg-frame', 'open-brood', 'capped-brood']

/**
 * Had a frame given on the day of a look been in the box at the look? The times say so, if both are known. Else it went in
 * after the look, as is the custom; but a frame of eggs counts all the same, since eggs reported with it may be its own.
 */
export function wasThereAt(
  gift: { what: Given['what'] | undefined; at?: string | undefined },
  look: Inspection,
): boolean {
  if (gift.at !== undefined && look.at !== undefined) return gift.at <= look.at
  return gift.what === 'egg-frame'
}

/** Does this source stand against what was seen in the inspection? */
const confuses = (source: Source, look: Inspection): boolean =>
  source.lastEgg === look.on && source.from === 'donor'
    ? wasThereAt({ what: source.gift, at: source.at }, look)
    : source.lastEgg <= look.on

/** As a source, from the day it was given. */
export const gifted = (gift: Given): Source => ({
  from: 'donor',
  lastEgg: gift.on,
  young: gift.what !== 'capped-brood',
  gift: gift.what,
  at: gift.at,
})

/** Brood that queen cells of that day can come from: what nobody passed over, if it can; else any. */
export function cellBrood(sources: readonly Source[], seenOn: Day): { likeliest: Source[]; any: Source[] } {
  const any = sources.filter((s) => s.young && s.lastEgg <= seenOn)
  return { likeliest: any.filter((s) => s.passedOver !== true), any }
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
