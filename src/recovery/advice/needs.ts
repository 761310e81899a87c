/** What is said beside the advice of the day: feed, mites, cells, a move. Each a sentence, or null. */
import { MATES_AFTER_EMERGENCE } from '../../biology/index.ts'
import { addDays, type Day, daysBetween, inWords } from '../../days.ts'
import { isQuiet } from '../phase.ts'
import { matesOn, miteThresholdOn } from '../protocol.ts'
import type { State } from '../state.ts'
import type { Context } from './context.ts'
import { removalNeed, signsNeed } from './signs.ts'

/** The day on which stores were found low, unless it was fed since; null when they were not. */
export const hungrySince = (s: State): Day | null =>
  s.stores?.level === 'low' && (s.fedOn === null || s.fedOn < s.stores.on) ? s.stores.on : null

function feedNeed({ s }: Context): string | null {
  const hungry = hungrySince(s)
  if (hungry === null) return null
  return s.signs?.seen.includes('robbing') === true
    ? `Stores were low on ${inWords(hungry)}: close down against robbers first, then feed it at dusk, inside.`
    : `Stores were low on ${inWords(hungry)}: feed it.`
}

/** A young queen, or one in a cage, whom a treatment can cost. */
function atRisk({ s, today, quiet }: Context): string {
  if (s.caged !== null)
    return ' A queen is in a cage in there: formic acid, thymol and the like can kill her. See to her first.'
  return s.queen.is === 'rearing' || isQuiet(today, quiet)
    ? ' A young queen may be in there: formic acid, thymol and the like can cost her, so wait until she lays, lid on, unless the mites cannot wait.'
    : ''
}

/** Mites over the threshold, unless it was treated since. */
function miteNeed(c: Context): string | null {
  const { mites, treatedOn, protocol } = c.s
  const treated = treatedOn !== null && (mites === null || treatedOn >= mites.on)
  if (treated) return washAgain(c)
  if (mites === null) return null
  const most = miteThresholdOn(protocol, mites.on)
  return mites.per100 < most
    ? null
    : `Mites: ${mites.per100.toFixed(1)} per 100 bees on ${inWords(mites.on)}, the threshold is ${most}. Treat as the label allows, best while there is no capped brood, and wash again.${atRisk(c)}`
}

function washAgain({ s, today }: Context): string | null {
  const ask = s.pending('mite-wash')
  if (s.treatedOn === null || ask === undefined || today < ask.opens) return null
  return `It was treated on ${inWords(s.treatedOn)}: wash again, to see whether it worked.`
}

/** A queen that is being raised too late, or too early, in the year. */
function matingNeed({ s }: Context): string | null {
  if (s.queen.is !== 'rearing') return null
  const mates = addDays(s.queen.emergence.likely, MATES_AFTER_EMERGENCE)
  return matesOn(s.protocol, mates)
    ? null
    : `She would fly to mate about ${inWords(mates)}, when queens do not mate here: have a mated queen or a colony to unite it with in mind.`
}

function cellsNeed({ s, today }: Context): string | null {
  const { cellsBeside: beside } = s
  if (beside === null) return null
  const came = beside.on === s.history.intake.on
  const now = today > beside.emergence.earliest ? ' A virgin may be out already.' : ''
  return came && s.caged !== null
    ? `Queen cells came along: cut every one before the caged queen is let out, or one of them kills her; or keep one cell and not her.${now}`
    : `Queen cells beside a queen since ${inWords(beside.on)}: she may be replaced, or they swarm. Cut them all, or leave one.${now}`
}

/** Frames of bees and cells from which a colony that raises a queen may swarm with a virgin: six of eight strong ones did (Punnett & Winston 1983). */
const STRONG_FRAMES = 6
const MANY_CELLS = 5

function castNeed({ s, today, quiet }: Context): string | null {
  const cells = s.cellsSeen
  if (cells?.holding !== true || (cells.count ?? 0) < MANY_CELLS || s.queen.is !== 'rearing') return null
  if (s.strength === null || s.strength.frames < STRONG_FRAMES || s.queen.emerged || isQuiet(today, quiet))
    return null
  return `Strong, and ${cells.count} queen cells: cut all but one or two before ${inWords(s.queen.emergence.earliest)}, or expect a cast swarm with the first virgin.`
}

/** Foragers fly back to an old stand nearer than this, km (common practice: 3 km, 2 miles). */
const FORAGERS_RETURN_KM = 3
/** Days for which a move is spoken of: foragers learn a new place in about three (common practice: 72 hours). */
const AFTER_MOVE = 3

function moveNeed({ s, today, quiet }: Context): string | null {
  const { moved } = s
  if (moved === null || daysBetween(moved.on, today) > AFTER_MOVE) return null
  const km = moved.km ?? (moved.sameYard ? 0 : null)
  const near =
    km === null
      ? `Moved on ${inWords(moved.on)}: if it was under ${FORAGERS_RETURN_KM} km, foragers fly back to the old stand.`
      : km < FORAGERS_RETURN_KM
        ? `Moved on ${inWords(moved.on)} by less than ${FORAGERS_RETURN_KM} km: foragers fly back to the old stand and are lost to it.`
        : null
  const virgin =
    isQuiet(moved.on, quiet) || isQuiet(today, quiet)
      ? ' A young queen who has learnt the old place may not come home from her flight.'
      : ''
  if (near === null) return virgin === '' ? null : `Moved on ${inWords(moved.on)}.${virgin}`
  return `${near} Move in the evening, closed, and lean branches before the entrance so that they learn the place anew.${virgin}`
}

/** Everything to be said beside the advice, in order of weight; `led`: what the advice says already. */
export const needsOf = (c: Context, led: string): string[] =>
  [
    feedNeed(c),
    removalNeed(c.s, c.today),
    signsNeed(c, led),
    cellsNeed(c),
    castNeed(c),
    miteNeed(c),
    matingNeed(c),
    moveNeed(c),
  ].filter((n) => n !== null)
