/** What a frame of capped brood would change. */
import type { Day } from '../days.ts'
import type { DayPmf } from './pmf.ts'
import type { Story } from './queen-odds.ts'
import { type StrengthForecast, type StrengthOptions, strengthForecast } from './strength.ts'

export interface FrameEffect {
  on: Day
  frames: number
  before: StrengthForecast
  after: StrengthForecast
}

/** What a frame of capped brood given on that day would change. `before`: the forecast without it, where it is known already. */
export function effectOfCappedFrame(
  story: Story,
  firstEgg: DayPmf,
  options: StrengthOptions,
  on: Day,
  frames = 1,
  before: StrengthForecast = strengthForecast(story, firstEgg, options),
): FrameEffect {
  const after = strengthForecast(story, firstEgg, { ...options, extra: { on, frames } })
  return { on, frames, before, after }
}
