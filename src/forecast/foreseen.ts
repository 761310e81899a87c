/** What pages keep of a colony's forecasts: everything but the stories, which are large. */
import type { Day } from '../days.ts'
import type { ColonyForecast } from './colony-forecast.ts'
import type { StrengthDay } from './strength.ts'

export type Foreseen = Omit<ColonyForecast, 'story'>

/** What a frame of capped brood given on a day would change. */
export interface FrameSeen {
  on: Day
  lowest: { day: Day; frames: number }
  chanceUnder: number
  days: Pick<StrengthDay, 'day' | 'median'>[]
}
