/**
 * The odds of a queen: what a colony has, on every day, given everything seen so far.
 *
 * Example (from the removal day on, for ninety days):
 *   const model = modelOf(DEFAULT_RATES)
 *   const story = storyOf(history, '2026-05-09', model)
 *   queenOdds(story).today.laying   // 0.31
 */

import { addDays, type Day, daysBetween, earlier, later } from '../days.ts'
import type { History } from '../journal/index.ts'
import { toTheEnd } from '../steps.ts'
import { type EvidenceWeight, evidenceOf } from './evidence.ts'
import type { DayPmf } from './pmf.ts'
import { hindsight } from './story/back.ts'
import { KINDS, type Kind, kindOf } from './story/kinds.ts'
import { followedFrom, longPast } from './story/long-past.ts'
import { Q, STATE } from './story/state.ts'
import { type DayOfStory, daysOf } from './story/steps.ts'
import { type Model, type Shares, startShares, type Walk, walking } from './story/walk.ts'

/** All stories of a colony that fit what is known on a day. The other forecasts start from it. */
export interface Story {
  history: History
  today: Day
  /** Days from the removal to today. */
  t: number
  /** The first day followed night by night: 0 unless the colony has stayed for months. */
  first: number
  model: Model
  days: DayOfStory[]
  walk: Walk
}

/** Shares of the seven kinds; they sum to 1. */
export type KindShares = Record<Kind, number>

export interface QueenOdds {
  asOf: Day
  /** Odds on the day asked for. */
  today: KindShares
  /** One row a day from the removal: days past in hindsight, days to come as forecast. */
  days: (KindShares & { day: Day })[]
  /** Chance by day that a queen leaves her cell here, and that one lays her first egg; `from` counts days since the removal. */
  emergence: DayPmf
  firstEgg: DayPmf
  /** What each thing seen says, in order. */
  evidence: EvidenceWeight[]
  /** Natural logarithm of the chance of everything seen; very low when the record contradicts itself. */
  logChance: number
}

/** Days beyond today that a forecast runs unless told otherwise, and at least to this day after the removal. */
const AHEAD = 45
const AT_LEAST = 90

/**
 * Follows all stories of a colony; what is entered after `today` is not used. A colony that has left is followed to its last
 * day. Pauses now and then: {@link storyOf} does it in one go. Of a colony that has stayed for months the far past is
 * summed up, so that it costs no more than a young one. `wayBack` false: for today's odds and forecasts, without hindsight.
 */
export function* following(
  history: History,
  today: Day,
  model: Model,
  until?: Day,
  wayBack = true,
): Generator<undefined, Story> {
  const end = history.outcome !== null && history.outcome.on <= today ? history.outcome.on : today
  const asOf = later(history.removedOn, earlier(today, end))
  const last = later(asOf, until ?? later(addDays(asOf, AHEAD), addDays(history.removedOn, AT_LEAST)))
  const days = daysOf(history, asOf, last, model.matingMonths)
  const t = daysBetween(history.removedOn, asOf)
  const first = followedFrom(days, t)
  const begin = startShares(history.intake, model)
  if (first === 0)
    return {
      history,
      today: asOf,
      t,
      first,
      model,
      days,
      walk: yield* walking(model, begin, days, 0, wayBack),
    }
  const past = longPast(begin, days, first, model)
  const walked = yield* walking(model, past.start, days, first, wayBack)
  const byDay = [...past.byDay, ...walked.byDay.slice(first)]
  return { history, today: asOf, t, first, model, days, walk: { ...walked, byDay } }
}

/** The same in one go. */
export const storyOf = (history: History, today: Day, model: Model, until?: Day, wayBack = true): Story =>
  toTheEnd(following(history, today, model, until, wayBack))

const NONE: KindShares = {
  laying: 0,
  present: 0,
  raising: 0,
  virgin: 0,
  chance: 0,
  queenless: 0,
  'laying-workers': 0,
}

/** The shares of the seven kinds among all states on a day. */
export function kindShares(shares: Shares, day: DayOfStory): KindShares {
  const sums = new Float64Array(KINDS.length)
  shares.states.forEach((s, i) => {
    const state = STATE[s]
    if (state === undefined) return
    const k = kindOf(state, day.around)
    sums[k] = (sums[k] ?? 0) + (shares.w[i] ?? 0)
  })
  const out = { ...NONE }
  KINDS.forEach((kind, k) => {
    out[kind] = sums[k] ?? 0
  })
  return out
}

/** The odds `t` days after the removal, from what was known by then; days after today are forecasts. Throws RangeError beyond the story. */
export function oddsOn(story: Story, t: number): KindShares {
  const [shares, day] = [story.walk.byDay[t], story.days[t]]
  if (shares === undefined || day === undefined) throw new RangeError(`oddsOn: the story has no day ${t}`)
  return kindShares(shares, day)
}

/** The odds today: cheap, for lists of many colonies. */
export const oddsToday = (story: Story): KindShares => oddsOn(story, story.t)

/** Chance by day that a queen is on the first day of a stage. */
function firstDays(byDay: readonly Shares[], stage: number): DayPmf {
  const p = byDay.map((shares) => {
    let sum = 0
    shares.states.forEach((s, i) => {
      const state = STATE[s]
      if (state?.stage === stage && state.age === 0) sum += shares.w[i] ?? 0
    })
    return sum
  })
  return { from: 0, p }
}

/** The odds of a colony, with the weight of all evidence. */
export function queenOdds(story: Story): QueenOdds {
  const { byDay } = hindsight(story.walk)
  if (story.first > 0) {
    const { history, days, first, model } = story
    longPast(startShares(history.intake, model), days, first, model, true).byDay.forEach((s, t) => {
      byDay[t] = s
    })
  }
  const days = byDay.flatMap((shares, t) => {
    const day = story.days[t]
    if (day === undefined) return []
    return [{ day: addDays(story.history.removedOn, t), ...kindShares(shares, day) }]
  })
  return {
    asOf: story.today,
    today: oddsToday(story),
    days,
    emergence: firstDays(byDay, Q.virgin),
    firstEgg: firstDays(byDay, Q.laying),
    evidence: evidenceOf(story),
    logChance: story.walk.logChance,
  }
}
