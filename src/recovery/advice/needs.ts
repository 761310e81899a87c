/** What is said beside the advice of the day: feed, mites, cells, a move. Each a reason or more, or none. */
import { MATES_AFTER_EMERGENCE } from '../../biology/index.ts'
import { addDays, type Day, daysBetween } from '../../days.ts'
import { isQuiet } from '../phase.ts'
import { matesOn, miteThresholdOn } from '../protocol.ts'
import { FORAGERS_RETURN_KM } from '../says/needs.ts'
import type { Reason } from '../says/said.ts'
import type { State } from '../state.ts'
import type { Context } from './context.ts'
import { removalNeed, signsNeed } from './signs.ts'

/** The day on which stores were found low, unless it was fed since; null when they were not. */
export const hungrySince = (s: State): Day | null =>
  s.stores?.level === 'low' && (s.fedOn === null || s.fedOn < s.stores.on) ? s.stores.on : null

function feedNeed({ s }: Context): Reason[] {
  const hungry = hungrySince(s)
  if (hungry === null) return []
  const robbed = s.signs?.seen.includes('robbing') === true
  return [{ code: robbed ? 'hungry-and-robbed' : 'hungry', since: hungry }]
}

/** A young queen, or one in a cage, whom a treatment can cost. */
function atRisk({ s, today, quiet }: Context): Reason[] {
  if (s.caged !== null) return [{ code: 'treatment-kills-caged' }]
  return s.queen.is === 'rearing' || isQuiet(today, quiet) ? [{ code: 'treatment-costs-young' }] : []
}

/** Mites over the threshold, unless it was treated since. */
function miteNeed(c: Context): Reason[] {
  const { mites, treatedOn, protocol } = c.s
  const treated = treatedOn !== null && (mites === null || treatedOn >= mites.on)
  if (treated) return washAgain(c)
  if (mites === null) return []
  const most = miteThresholdOn(protocol, mites.on)
  const { per100, on } = mites
  return per100 < most ? [] : [{ code: 'mites-over', per100, on, most }, ...atRisk(c)]
}

function washAgain({ s, today }: Context): Reason[] {
  const ask = s.pending('mite-wash')
  if (s.treatedOn === null || ask === undefined || today < ask.opens) return []
  return [{ code: 'treated-wash-again', on: s.treatedOn }]
}

/** A queen that is being raised too late, or too early, in the year. */
function matingNeed({ s }: Context): Reason[] {
  if (s.queen.is !== 'rearing') return []
  const mates = addDays(s.queen.emergence.likely, MATES_AFTER_EMERGENCE)
  return matesOn(s.protocol, mates) ? [] : [{ code: 'mates-when-none-do', about: mates }]
}

function cellsNeed({ s, today }: Context): Reason[] {
  const { cellsBeside: beside } = s
  if (beside === null) return []
  const came = beside.on === s.history.intake.on
  const now: Reason[] = today > beside.emergence.earliest ? [{ code: 'virgin-may-be-out' }] : []
  return came && s.caged !== null
    ? [{ code: 'cells-came-along' }, ...now]
    : [{ code: 'cells-beside-queen', since: beside.on }, ...now]
}

/** Frames of bees and cells from which a colony that raises a queen may swarm with a virgin: six of eight strong ones did (Punnett & Winston 1983). */
const STRONG_FRAMES = 6
const MANY_CELLS = 5

function castNeed({ s, today, quiet }: Context): Reason[] {
  const cells = s.cellsSeen
  if (cells?.holding !== true || (cells.count ?? 0) < MANY_CELLS || s.queen.is !== 'rearing') return []
  if (s.strength === null || s.strength.frames < STRONG_FRAMES || s.queen.emerged || isQuiet(today, quiet))
    return []
  return [{ code: 'may-cast', cells: cells.count ?? 0, before: s.queen.emergence.earliest }]
}

/** Days for which a move is spoken of: foragers learn a new place in about three (common practice: 72 hours). */
const AFTER_MOVE = 3

function moveNeed({ s, today, quiet }: Context): Reason[] {
  const { moved } = s
  if (moved === null || daysBetween(moved.on, today) > AFTER_MOVE) return []
  const km = moved.km ?? (moved.sameYard ? 0 : null)
  const { on } = moved
  const virgin: Reason[] = isQuiet(on, quiet) || isQuiet(today, quiet) ? [{ code: 'moved-young-queen' }] : []
  if (km !== null && km >= FORAGERS_RETURN_KM)
    return virgin.length === 0 ? [] : [{ code: 'moved', on }, ...virgin]
  return [{ code: km === null ? 'moved-maybe-near' : 'moved-near', on }, ...virgin]
}

/** Everything to be said beside the advice, in order of weight; `led`: what the advice says already. */
export const needsOf = (c: Context, led: readonly Reason[]): Reason[][] =>
  [
    feedNeed(c),
    removalNeed(c.s, c.today),
    signsNeed(c, led),
    cellsNeed(c),
    castNeed(c),
    miteNeed(c),
    matingNeed(c),
    moveNeed(c),
  ].filter((n) => n.length > 0)
