/** Questions, and shifts of questions, that follow from the whole story rather than from one entry. */
import { addDays, type Day, daysBetween, earlier, later } from '../days.ts'
import { lastOpening } from '../journal/index.ts'
import type { DayRange, Readiness } from './plan-types.ts'
import { readySince } from './readiness.ts'
import { CHORES, factsOf, type Rule, rulesWhere } from './rules.ts'
import type { Ask, State } from './state.ts'
import type { Exposure } from './tracing.ts'

/** Days after quiet time within which a mite wash that fell into it is made up for. */
const WASH_AFTER_QUIET = 7

/**
 * Chores are not done in quiet time. Tied combs: a window that is due in it, or was missed before it, waits until it is over. A mite
 * wash keeps the trade's days, and is not late before it could be made.
 */
export function keepOutOfQuiet(s: State, quiet: DayRange | null, today: Day): void {
  if (quiet === null) return
  const wash = s.pending('mite-wash')
  if (wash !== undefined && wash.opens <= quiet.to && wash.closes >= quiet.from)
    wash.closes = later(wash.closes, addDays(quiet.to, WASH_AFTER_QUIET))
  const ask = s.pending('comb-ties')
  if (ask === undefined || ask.opens > quiet.to || ask.closes < quiet.from) return
  if (ask.due < quiet.from && today < quiet.from) {
    ask.closes = earlier(ask.closes, addDays(quiet.from, -1))
    return
  }
  const late = daysBetween(ask.opens, addDays(quiet.to, 1))
  ask.opens = addDays(ask.opens, late)
  ask.due = addDays(ask.due, late)
  ask.closes = addDays(ask.closes, late)
}

/**
 * Days past its last day for which a chore waits for an opening that was decided, so that the lid comes off once for both.
 * Bands are chewed off or built in by then, whatever is done; mites take about a month to double. Judgement.
 */
const WAITS_FOR_LOOK: Partial<Record<Rule, number>> = { 'comb-ties': 60, 'mite-wash': 7 }
/** Days before its last day on which a chore that cannot wait for the look is asked for: somebody comes once a week. */
const ASKED_BEFORE = 5
/** Days for which a box that was opened is not opened again for a chore alone. */
const OPENED_LATELY = 7

/**
 * Chores whose window ends before a look that was decided are done at that look: their window reaches to it. Returns the one
 * that cannot wait so long, and the day on which the box is opened for it: not within days of another opening.
 */
export function choresWaitFor(s: State, look: Day): { ask: Ask; from: Day } | null {
  const rested = addDays(lastOpening(s.history)?.on ?? s.history.intake.on, OPENED_LATELY)
  const late = CHORES.flatMap((rule) => s.pending(rule) ?? []).filter((ask) => ask.closes < look)
  const [presses] = late.filter((ask) => daysBetween(ask.closes, look) > (WAITS_FOR_LOOK[ask.rule] ?? 0))
  const from =
    presses === undefined ? look : later(later(presses.due, addDays(presses.closes, -ASKED_BEFORE)), rested)
  if (presses !== undefined && from < look) {
    // One opening serves them all.
    for (const ask of late) ask.closes = later(ask.closes, from)
    return { ask: presses, from }
  }
  for (const ask of late) {
    ask.due = later(ask.due, look)
    ask.closes = look
  }
  return null
}

/** A box that is held, or bound to one, is not opened for chores; of one that is lost nothing is asked. */
export function keepFromHeld(s: State, today: Day, exposure: Exposure | null): void {
  if (s.lost !== null) for (const rule of rulesWhere(() => true)) s.void(rule, today)
  if (s.diseaseLook?.suspected !== true && exposure === null) return
  for (const rule of CHORES) s.void(rule, today)
}

/** Days since the last young brood after which a test frame, not given, is asked for no more: the ladder has its own say. */
export const INSURED_UNTIL = 28

/** A frame of eggs as insurance is asked for in its days, and not for ever after. */
export function endInsurance(s: State, today: Day): void {
  const insured = s.pending('egg-frame')?.insurance === true
  if (insured && today > addDays(s.lastYoungBrood, INSURED_UNTIL)) s.void('egg-frame', today)
}

/** Days before its window from which the frame as insurance is listed: most colonies will have shown their layer by then. */
const INSURANCE_AHEAD = 4

export const isFarInsurance = (ask: Ask, today: Day): boolean =>
  ask.insurance === true && ask.answeredOn === null && ask.opens > addDays(today, INSURANCE_AHEAD)

/** Move-out: the day on which all is met; until then, the span in which that is expected. */
export function askMoveOut(s: State, readiness: Readiness): Ask | null {
  const { outcome } = s.history
  if (outcome !== null) {
    if (outcome.what !== 'moved-out') return null
    const ask = s.ask('move-out', outcome.on, { code: 'has-moved-on' })
    ask.answeredOn = outcome.on
    return ask
  }
  if (readiness.ready) return s.ask('move-out', readySince(s), { code: 'may-go' })
  if (readiness.expected === null) return null
  const ask = s.ask('move-out', readiness.expected.earliest, { code: 'expected-to-go' })
  ask.due = readiness.expected.likely
  ask.closes = readiness.expected.latest
  return ask
}

/**
 * Was there a look inside the window so recent that asking again today would be idle? Where eggs are only awaited, for
 * some days; where the look was incomplete or could not tell whose brood it was, for the rest of that day.
 */
export const lookedLately = (ask: Ask, today: Day): boolean =>
  ask.missing.length === 0 && today < (askedAgain(ask) ?? today)

/** The day from which looking again tells more than it disturbs; null when nobody has looked. */
export function askedAgain(ask: Ask): Day | null {
  if (ask.lookedOn === null) return null
  const letBe = ask.lookedOn < ask.opens ? 1 : (factsOf(ask.rule).letBe ?? 1)
  return later(addDays(ask.lookedOn, 1), earlier(addDays(ask.lookedOn, letBe), ask.closes))
}
