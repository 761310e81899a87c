/** While no queen is proven and none is being raised: watch for laying workers from three weeks after the last young brood. */
import { LAYING_WORKER_RISK } from '../../biology/index.ts'
import { addDays, type Day, inWords, later } from '../../days.ts'
import type { Inspection } from '../../journal/index.ts'
import type { Ask, State } from '../state.ts'

/** Looking again every so many days once the risk has begun (common practice). */
const WATCH_EVERY = 7

const watching = (s: State): boolean => s.queen.is === 'none' || s.queen.is === 'unseen'

/** The open watch; not the follow-up of doubles, nor what is asked once laying workers are there. */
function pendingWatch(s: State): Ask | undefined {
  return s.doublesSince === null && s.queen.is !== 'laying-workers' ? s.pending('laying-workers') : undefined
}

/** Any look at brood answers the watch once it is asked, whatever was seen. */
export function answerWatch(s: State, look: Inspection): void {
  const ask = pendingWatch(s)
  if (ask !== undefined && look.on >= ask.opens && (look.eggs !== undefined || look.capped !== undefined))
    ask.answeredOn = look.on
}

/** After every entry: the watch stands exactly while it is needed, and counts from the youngest brood there was. */
export function keepWatch(s: State, on: Day): void {
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
  s.ask(
    'laying-workers',
    from,
    `Signs of laying workers? No queen is proven and the last young brood was laid by ${inWords(s.lastYoungBrood)}; the risk begins three weeks later.`,
  )
}
