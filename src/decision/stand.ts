/** The decision that stands on a day: taken on the day of the last evidence, and again only on days that were announced. */

import { addDays, type Day, daysBetween, later } from '../days.ts'
import { type Model, Q, STATE, type Story } from '../forecast/index.ts'
import type { History, StandingEntry } from '../journal/index.ts'
import type { Protocol } from '../recovery/index.ts'
import type { Costs, Supplies } from './costs.ts'
import { type Decision, decisionOf } from './decide.ts'
import type { Library } from './library.ts'
import { Room } from './options.ts'
import { storyAt } from './stories.ts'
import { framesNow } from './strength-now.ts'

/** What may be done, by the facts and proofs of the plan. */
export interface Guards {
  mayOpen: (day: Day) => boolean
  mayGive: (day: Day) => boolean
  framesLeft: boolean
  mayBuy: boolean
  mayUnite: boolean
}

export interface Settings {
  model: Model
  library: Library
  protocol: Protocol
  costs: Costs
  supplies: Supplies
}

export interface Standing {
  decision: Decision
  /** The day on which it was taken. */
  taken: Day
  /** The day of the look it waits for; the day it was taken for what is done at once. */
  on: Day
  /** Frames of bees, with those about to emerge, when it was taken. */
  frames: number
  /** The stories it was taken on. */
  story: Story
}

/** Entries that tell of the queen, or change what can become of her. */
const isEvidence = (e: StandingEntry): boolean =>
  e.kind === 'intake' ||
  (e.kind === 'inspection' && e.opened) ||
  e.kind === 'queen-cage' ||
  (e.kind === 'given' &&
    (e.what.includes('brood') || e.what.includes('queen') || e.what === 'egg-frame' || e.what === 'virgin'))

/** A decision nobody has acted on is taken anew after so many days. */
const STANDS = 7
/** A box left alone longer than this is decided on at every such step. */
const LONG_ALONE = 42

/** Days a queen has been laying, as the belief has it: its mean over the share that lays; 0 where few do. */
export function laidFor(story: Story): number {
  const shares = story.walk.byDay[story.t]
  let [w, days] = [0, 0]
  shares?.states.forEach((n, i) => {
    const s = STATE[n]
    if (s?.stage !== Q.laying) return
    w += shares.w[i] ?? 0
    days += (shares.w[i] ?? 0) * s.age
  })
  return w > 0.5 ? days / w : 0
}

function decideOn(history: History, day: Day, guards: Guards, s: Settings): Standing | null {
  const story = storyAt(history, day, s.model)
  const frames = framesNow(history, day, s.model.rates, laidFor(story))
  const room = new Room({
    story,
    costs: s.costs,
    supplies: s.supplies,
    library: s.library,
    frames,
    protocol: s.protocol,
    mayOpen: (d) => guards.mayOpen(addDays(day, d)),
    mayGive: (d) => s.supplies.eggFrames > 0 && guards.mayGive(addDays(day, d)),
    framesLeft: s.supplies.eggFrames > 0 && guards.framesLeft,
    mayBuy: guards.mayBuy,
    mayUnite: guards.mayUnite,
    openToday: history.entries.some(
      (e) => (e.kind === 'intake' || (e.kind === 'inspection' && e.opened)) && e.on === day,
    ),
  })
  const decision = decisionOf(room.options(), s.costs.worth, (o) => room.orderGain(o))
  if (decision === null) return null
  return { decision, taken: day, on: addDays(day, decision.inDays), frames, story }
}

/** The day of the last evidence. */
export const lastEvidence = (history: History): Day =>
  history.entries.reduce<Day>((at, e) => (isEvidence(e) ? later(at, e.on) : at), history.intake.on)

/** The decision that stands today; null where no option is open. Entries after `today` must not be in the history. */
export function standingOn(history: History, today: Day, guards: Guards, s: Settings): Standing | null {
  const last = history.entries.reduce<Day>(
    (at, e) => (isEvidence(e) ? later(at, e.on) : at),
    history.intake.on,
  )
  const alone = daysBetween(last, today)
  let day = alone > LONG_ALONE ? addDays(last, STANDS * 2 * Math.floor(alone / (STANDS * 2))) : last
  for (;;) {
    const standing = decideOn(history, day, guards, s)
    if (standing === null) return null
    const until = addDays(standing.on, STANDS)
    // A look that was not made before quiet time, or the cold, is not made in it.
    const missed = today > standing.on && standing.decision.chosen.act === 'look' && !guards.mayOpen(today)
    if (today < until && !missed) return standing
    day = missed ? today : until
  }
}
