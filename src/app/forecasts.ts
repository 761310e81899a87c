/**
 * Forecasts for pages, kept: worked out once for a colony, a day and the yard's rates. Runs in a phone too, so it needs
 * neither node: nor the database.
 */

import { hemisphereOf } from '../biology/index.ts'
import { addDays, type Day, daysBetween, earlier } from '../days.ts'
import {
  type ColonyNeed,
  type ColonySupplies,
  colonyForecast,
  colonySupplies,
  DEFAULT_RATES,
  effectOfCappedFrame,
  type ForecastSettings,
  type Foreseen,
  type FrameSeen,
  type Hemisphere,
  listModelOf,
  type Model,
  type MoveOutForecast,
  moveOutForecast,
  queenOdds,
  RATE_NAMES,
  type Rates,
  type Story,
  storyOf,
  strengthForecast,
  type TellingDay,
  tellingDays,
} from '../forecast/index.ts'
import type { ColonyId } from '../ids.ts'
import type { History } from '../journal/index.ts'
import type { Plan, Protocol } from '../recovery/index.ts'
import { type Repository, ratesIn } from '../store/index.ts'

/** A colony in the yard, with the plan of the day. */
export interface Known {
  id: string
  history: History
  plan: Plan
}

/** The yard's choices that forecasts hang on. */
export interface Ground {
  today: Day
  rates: Rates
  protocol: Protocol
  hemisphere: Hemisphere
  /** All of it as text: what is worked out for one ground is good for another that says the same. */
  key: string
}

export interface ForecastCache {
  /** The model of the yard's rates, for lists. */
  model(ground: Ground): Model
  colony(known: Known, ground: Ground): Foreseen
  frame(known: Known, ground: Ground, on: Day): FrameSeen
  /** Today and the days up to `until`, two weeks on at most. */
  telling(known: Known, ground: Ground, until: Day): TellingDay[]
  /** What the colony may come to need within {@link SUPPLIES_AHEAD} days. */
  supplies(known: Known, ground: Ground): ColonySupplies
  moveOut(known: Known, ground: Ground): MoveOutForecast
}

/** Days ahead that needs are foreseen. */
export const SUPPLIES_AHEAD = 28
/** Days ahead that stands are foreseen. */
export const STANDS_AHEAD = 42
const TELLING_AHEAD = 14

/** Colonies kept: more than the largest yard reckoned with, or a list that walks them all would never find one again. */
const MOST_KEPT = 2000

/** The yard's choices as of a day. */
export function groundIn(book: Repository, today: Day, zone: string): Ground {
  const ground = {
    today,
    rates: ratesIn(book.settings),
    protocol: book.protocol(),
    hemisphere: hemisphereOf(zone),
  }
  return { ...ground, key: JSON.stringify(ground) }
}

/** Without what is dated later: while a clock is set back, say. */
function knownOn(history: History, day: Day): History {
  if (history.entries.every((e) => e.on <= day)) return history
  return { ...history, entries: history.entries.filter((e) => e.on <= day || e === history.intake) }
}

/** Answers kept until something they hang on changes; the least lately asked for goes first. */
class Kept {
  #answers = new Map<string, { key: string; values: Map<string, unknown> }>()

  of<T>(colony: ColonyId, key: string, what: string, work: () => T): T {
    const found = this.#answers.get(colony)
    const slot = found?.key === key ? found : { key, values: new Map<string, unknown>() }
    this.#answers.delete(colony)
    this.#answers.set(colony, slot)
    if (this.#answers.size > MOST_KEPT) {
      const [oldest] = this.#answers.keys()
      if (oldest !== undefined) this.#answers.delete(oldest)
    }
    if (!slot.values.has(what)) slot.values.set(what, work())
    return slot.values.get(what) as T
  }
}

/** One for the whole server, or for a phone. */
export function forecastCache(): ForecastCache {
  const kept = new Kept()
  let model = listModelOf(DEFAULT_RATES)
  const modelFor = (rates: Rates): Model => {
    if (RATE_NAMES.some((name) => model.rates[name] !== rates[name])) model = listModelOf(rates)
    return model
  }
  const keyOf = ({ history }: Known, g: Ground): string =>
    `${g.key} ${history.entries.map((e) => e.id).join(' ')}`
  const keep = <T>(known: Known, g: Ground, what: string, work: (history: History, model: Model) => T): T =>
    kept.of(known.id, keyOf(known, g), what, () => work(knownOn(known.history, g.today), modelFor(g.rates)))
  const settings = (known: Known, g: Ground, m: Model): ForecastSettings => ({
    model: m,
    protocol: g.protocol,
    plan: known.plan,
    hemisphere: g.hemisphere,
  })

  const colony: ForecastCache['colony'] = (known, g) =>
    keep(known, g, 'colony', (history, m) => {
      const {
        story: _large,
        strengthOptions,
        ...seen
      } = colonyForecast(history, g.today, settings(known, g, m))
      return { ...seen, strengthOptions }
    })

  return {
    model: (g) => modelFor(g.rates),
    colony,
    frame: (known, g, on) =>
      keep(known, g, `frame ${on}`, (history, m) => {
        const { odds, strength, strengthOptions } = colony(known, g)
        const story = storyOf(history, g.today, m)
        const { after } = effectOfCappedFrame(story, odds.firstEgg, strengthOptions, on, 1, strength)
        return {
          on,
          lowest: after.lowest,
          chanceUnder: after.chanceUnder,
          days: after.days.map(({ day, median }) => ({ day, median })),
        }
      }),
    telling: (known, g, until) =>
      keep(known, g, `telling ${until}`, (history, m) => {
        const last = earlier(until, addDays(g.today, TELLING_AHEAD))
        const story = storyOf(history, g.today, m, last)
        return tellingDays(story, Math.max(0, daysBetween(story.today, last)))
      }),
    supplies: (known, g) =>
      keep(known, g, 'supplies', (history, m) => {
        const options = { ahead: SUPPLIES_AHEAD, straightToQueen: straightToQueen(known) }
        const found = colonySupplies(history, g.today, m, options)
        return { ...found, need: asPlanned(found.need, known.plan) }
      }),
    moveOut: (known, g) =>
      keep(known, g, 'move-out', (history, m) => {
        const story = storyOf(history, g.today, m, addDays(g.today, STANDS_AHEAD))
        const { firstEgg } = queenOdds(story)
        const strength = strengthForecast(story, firstEgg, strengthFor(story, g))
        return moveOutForecast(story, firstEgg, strength, known.plan, g.protocol)
      }),
  }
}

/** The strength forecast as far as the stands are foreseen, and no farther. */
const strengthFor = (story: Story, g: Ground) => ({
  minFrames: g.protocol.minFramesOfBees,
  holdDays: g.protocol.holdDays,
  hemisphere: g.hemisphere,
  days: daysBetween(story.history.intake.on, g.today) + STANDS_AHEAD,
})

/** The plan's advice before the odds: what it says to give is needed; what it says to unite, or to close up, gets nothing. */
function asPlanned(need: ColonyNeed, { advice }: Plan): ColonyNeed {
  if (advice.action === 'unite' || advice.action === 'call-inspector')
    return { ...need, queens: need.queens.map(() => 0), eggFrames: need.eggFrames.map(() => 0) }
  const surely = (n: number[]): number[] => n.map(() => 1)
  if (advice.action === 'buy-queen') return { ...need, queens: surely(need.queens) }
  if (advice.action === 'give-egg-frame') return { ...need, eggFrames: surely(need.eggFrames) }
  return need
}

/** Whether the plan says to buy a queen without a frame of eggs first. */
const straightToQueen = ({ history, plan }: Known): boolean =>
  plan.advice.action === 'buy-queen' &&
  !history.entries.some((e) => e.kind === 'given' && e.what === 'egg-frame')
