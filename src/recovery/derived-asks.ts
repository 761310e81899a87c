/** Questions that follow from the whole story rather than from one entry. */
import { LAYING_WORKER_RISK } from '../biology/laying-workers.ts'
import { addDays, type Day, daysBetween, inWords } from '../days.ts'
import type { DayRange, Readiness } from './plan-types.ts'
import { readySince } from './readiness.ts'
import type { Ask, State } from './state.ts'

/** Looking again for laying workers every so many days once the risk has begun (common practice). */
const WATCH_EVERY = 7

/** Without a queen and without young brood: watch for laying workers from day 21 on. */
export function askLayingWorkerWatch(s: State): void {
  if (s.queen.is !== 'none' && s.queen.is !== 'unseen') return
  if (s.history.outcome !== null || s.pending('laying-workers') !== undefined) return
  const looks = s.history.entries.flatMap((e) =>
    e.kind === 'inspection' && e.opened && (e.eggs !== undefined || e.capped !== undefined) ? [e.on] : [],
  )
  const why = `Signs of laying workers? No queen is proven and the last young brood was laid by ${inWords(s.lastYoungBrood)}; the risk begins three weeks later.`
  let from = addDays(s.lastYoungBrood, LAYING_WORKER_RISK.earliest)
  for (;;) {
    const ask = s.ask('laying-workers', from, why)
    const look = looks.find((on) => on >= ask.opens)
    if (look === undefined) return
    ask.answeredOn = look
    from = addDays(look, WATCH_EVERY)
  }
}

/** Tied combs are not touched in quiet time: the window waits until it is over. */
export function keepOutOfQuiet(s: State, quiet: DayRange | null): void {
  const ask = s.pending('comb-ties')
  if (ask === undefined || quiet === null || ask.due < quiet.from || ask.opens > quiet.to) return
  const late = daysBetween(ask.opens, addDays(quiet.to, 1))
  ask.opens = addDays(ask.opens, late)
  ask.due = addDays(ask.due, late)
  ask.closes = addDays(ask.closes, late)
}

/** Move-out: the day on which all is met; until then, the span in which that is expected. */
export function askMoveOut(s: State, readiness: Readiness): Ask | null {
  const { outcome } = s.history
  if (outcome !== null) {
    if (outcome.what !== 'moved-out') return null
    const ask = s.ask('move-out', outcome.on, 'The colony has moved on.')
    ask.answeredOn = outcome.on
    return ask
  }
  if (readiness.ready)
    return s.ask(
      'move-out',
      readySince(s),
      'The hold is over and every condition is met: a last disease look, and it may go.',
    )
  if (readiness.expected === null) return null
  const ask = s.ask(
    'move-out',
    readiness.expected.earliest,
    'Expected from what has been seen; the hold is only the minimum.',
  )
  ask.due = readiness.expected.likely
  ask.closes = readiness.expected.latest
  return ask
}

/** The day on which the last look was, if it was so recent that asking again today would be idle. */
export const lookedLately = (ask: Ask, today: Day): boolean =>
  ask.lookedOn !== null && daysBetween(ask.lookedOn, today) < 4 && today < ask.closes
