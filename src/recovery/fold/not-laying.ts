/** A queen is here, or may be, and does not lay: a virgin of a cast, a queen that pauses, one that is finished. */
import { EMERGENCE_AFTER_LOSS, FIRST_EGG_AFTER_EMERGENCE_HARD } from '../../biology/index.ts'
import { addDays, type Day, daysBetween } from '../../days.ts'
import type { Inspection } from '../../journal/index.ts'
import { emergence, emergenceOfGivenVirgin } from '../rearing.ts'
import type { Rule } from '../rules.ts'
import type { Queen, State } from '../state.ts'
import { fall } from './ladder.ts'
import { cellsAway } from './look.ts'
import { startRearing } from './raise.ts'

/** A look at brood that could not settle these questions. A visit with nothing noted has looked at nothing. */
export function unsettled(s: State, look: Inspection, ...rules: Rule[]): void {
  const nothing = look.eggs === undefined && look.open === undefined && look.capped === undefined
  if (nothing && look.cells === undefined) return
  s.looked(look.on, ...rules)
}

/**
 * A swarm without brood may have brought a virgin, unless somebody knows its queen by a mark or a clipped wing: "no cells" says
 * nothing of it, and she has her weeks.
 */
export function mayBeCast(s: State): boolean {
  const { intake } = s.history
  const known = intake.queenMarked === true || intake.queenClipped === true || intake.queen === 'caged'
  return intake.removal.type === 'swarm' && !known && s.sources.every((x) => !x.young)
}

export function awaitVirgin(s: State, on: Day): void {
  s.surprises.push({ code: 'swarm-may-have-virgin', on })
  startRearing(s, emergence(emergenceOfGivenVirgin(s.lastOldEgg), null), 'emerged', on, { assumed: true })
}

/** A queen that laid until the removal and has not begun again by so many days after it is finished (common practice: 10-14). */
const BEGINS_AGAIN_BY = 12

/** Days out of the cage a queen of their own is given before she is called finished (common practice). */
const OUT_AT_LEAST = 7

const isFinished = (s: State, look: Inspection, q: Extract<Queen, { is: 'released' }>): boolean =>
  q.origin === 'salvaged' &&
  look.queen !== undefined &&
  cellsAway(look) &&
  daysBetween(s.lastOldEgg, look.on) >= BEGINS_AGAIN_BY &&
  daysBetween(q.on, look.on) >= OUT_AT_LEAST

/** She laid until the removal and has not begun again: seen or not, she is replaced. */
function finished(s: State, on: Day, seen: boolean): void {
  if (seen) s.takeOut = on
  const days = daysBetween(s.lastOldEgg, on)
  fall(s, on, [seen ? { code: 'finished-seen', on, days } : { code: 'finished', days }], 'own')
}

/** Known as the queen that laid before the removal: no virgin can have been out so early. */
const isTheOldQueen = (s: State, since: Day): boolean =>
  !mayBeCast(s) && since < addDays(s.lastOldEgg, EMERGENCE_AFTER_LOSS.earliest)

/** She is here and does not lay yet: asked again, until she is too old to begin. */
export function lookAgain(s: State, on: Day): void {
  const since = s.queen.is === 'present' ? s.queen.seenOn : on
  if (isTheOldQueen(s, since) && daysBetween(s.lastOldEgg, on) >= BEGINS_AGAIN_BY) {
    finished(s, on, true)
    return
  }
  if (daysBetween(since, on) >= FIRST_EGG_AFTER_EMERGENCE_HARD.latest) {
    s.takeOut = on
    fall(s, on, [{ code: 'seen-not-laying', since }], 'raised')
    return
  }
  s.queen = { is: 'present', seenOn: since }
  s.ask('telling-visit', on, { code: 'seen-no-eggs', on })
}

export function afterRelease(s: State, look: Inspection, q: Extract<Queen, { is: 'released' }>): void {
  const ask = s.pending('eggs-after-introduction')
  if (ask === undefined || look.eggs !== 'none') {
    unsettled(s, look, 'eggs-after-introduction')
    return
  }
  if (isFinished(s, look, q)) {
    s.answer(look.on, 'eggs-after-introduction')
    finished(s, look.on, look.queen === 'seen')
    return
  }
  if (look.on < ask.closes) {
    unsettled(s, look, 'eggs-after-introduction')
    return
  }
  s.answer(look.on, 'eggs-after-introduction')
  if (look.queen === 'seen' && q.asked < 2) {
    s.queen = { ...q, asked: q.asked + 1 }
    s.ask('eggs-after-introduction', look.on, { code: 'seen-not-yet', on: look.on })
    return
  }
  const bought = q.origin === 'bought'
  fall(
    s,
    look.on,
    [{ code: 'let-out-not-laying', bought, out: q.on, by: look.on }],
    bought ? 'bought' : 'own',
  )
}
