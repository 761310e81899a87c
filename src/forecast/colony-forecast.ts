/** Everything foreseen of one colony, for its page: the way in for pages and the island. */

import type { Day } from '../days.ts'
import type { History } from '../journal/index.ts'
import { DEFAULT_PROTOCOL, type Plan, type Protocol, planOf } from '../recovery/index.ts'
import type { Hemisphere } from './life.ts'
import { type QueenOdds, queenOdds, type Story, storyOf } from './queen-odds.ts'
import { type MoveOutForecast, moveOutForecast } from './readiness.ts'
import type { Model } from './story/walk.ts'
import { type StrengthForecast, type StrengthOptions, strengthForecast } from './strength.ts'
import { type TellingDay, tellingDays } from './telling-day.ts'

export interface ColonyForecast {
  story: Story
  odds: QueenOdds
  /** Today and the coming fourteen days. */
  telling: TellingDay[]
  strength: StrengthForecast
  moveOut: MoveOutForecast
  /** What the strength forecast was asked, for `effectOfCappedFrame`. */
  strengthOptions: StrengthOptions
}

export interface ForecastSettings {
  model: Model
  protocol?: Protocol
  hemisphere?: Hemisphere
  /** The plan on that day, when it is known already. */
  plan?: Plan
}

const TELLING_AHEAD = 14

/** The forecasts of a colony on a day. Entries after `today` must not be in the history (as for `planOf`). */
export function colonyForecast(history: History, today: Day, settings: ForecastSettings): ColonyForecast {
  const { model, protocol = DEFAULT_PROTOCOL, hemisphere = 'north' } = settings
  const plan = settings.plan ?? planOf(history, today, protocol)
  const story = storyOf(history, today, model)
  const odds = queenOdds(story)
  const strengthOptions = { minFrames: protocol.minFramesOfBees, holdDays: protocol.holdDays, hemisphere }
  const strength = strengthForecast(story, odds.firstEgg, strengthOptions)
  return {
    story,
    odds,
    telling: history.outcome === null ? tellingDays(story, TELLING_AHEAD) : [],
    strength,
    moveOut: moveOutForecast(story, odds.firstEgg, strength, plan, protocol),
    strengthOptions,
  }
}
