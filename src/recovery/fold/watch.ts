/** While no queen is proven and none is being raised: watch for laying workers from three weeks after the last young brood. */
import { LAYING_WORKER_RISK } from '../../biology/index.ts'
import { addDays, type Day, later } from '../../days.ts'
import type { Inspection } from '../../journal/index.ts'
import type { Ask, State } from '../state.ts'

/** Looking again every so many days once the risk has begun (common practice). */
const WATCH_EVERY = 7

const watching = (s: State): boolean => s.queen.is === 'none' || s.queen.is === 'unseen'

/** The open watch; not the follow-up of doubles, nor what is asked once laying workers are there. */
function pendingWatch(s: State): Ask | undefined {
  return s.doublesSince === null && s.queen.is !== 'laying-workers' ? s.pending('laying-workers') : undefined
}

/**
 * Days after the last young brood on which a frame of eggs is given where no layer is proven: it answers within four days
 * whether there is a queen, holds laying workers off and lets them start again (common practice; day 18 to 22 measured best).
 */
const INSURANCE = { opens: 18, due: 20, closes: 22 }
const UNPROVEN: readonly string[] = ['unseen', 'present', 'rearing']

/** The question of the frame as insurance stands while no layer is proven, and counts from the youngest brood. */
function insure(s: State): void {
  const pending = s.pending('egg-frame')
  if (pending !== undefined && pending.insurance !== true && s.queen.is === 'none') return
  if (!UNPROVEN.includes(s.queen.is) || s.testFrame?.read === null) {
    if (pending !== undefined) s.asks.splice(s.asks.indexOf(pending), 1)
    return
  }
  const opens = addDays(s.lastYoungBrood, INSURANCE.opens)
  if (pending?.opens === opens) return
  if (pending !== undefined) s.asks.splice(s.asks.indexOf(pending), 1)
  const ask = s.ask(
    'egg-frame',
    s.lastYoungBrood,
    { code: 'insurance', lastYoung: s.lastYoungBrood },
    INSURANCE,
  )
  ask.insurance = true
}

/** Any look at brood answers the watch once it is asked, whatever was seen. */
export function answerWatch(s: State, look: Inspection): void {
  const ask = pendingWatch(s)
  if (ask !== undefined && look.on >= ask.opens && (look.eggs !== undefined || look.capped !== undefined))
    ask.answeredOn = look.on
}

/** After every entry: the watch stands exactly while it is needed, and counts from the youngest brood there was. */
export function keepWatch(s: State, on: Day): void {
  insure(s)
  const pending = pendingWatch(s)
  if (!watching(s)) {
    if (pending !== undefined) pending.voidSince = on
    s.watchingSince = null
    return
  }
  s.watchingSince ??= on
  if (s.doublesSince !== null) return
  const answered = s.asks.findLast((a) => a.rule === 'laying-workers' && a.answeredOn !== null)?.answeredOn
  const risk = addDays(s.lastYoungBrood, LAYING_WORKER_RISK.earliest)
  // Nobody could have looked before there was a reason to.
  const asked = later(risk, s.watchingSince)
  const from = answered ? later(asked, addDays(answered, WATCH_EVERY)) : asked
  if (pending?.opens === from) return
  if (pending !== undefined) s.asks.splice(s.asks.indexOf(pending), 1)
  s.ask('laying-workers', from, { code: 'watch-for-laying-workers', lastYoung: s.lastYoungBrood })
}
