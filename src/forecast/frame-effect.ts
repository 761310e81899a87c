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
  /** 'One frame of capped brood on Tue 12 May lifts the lowest point from 2.8 to 4.0 frames…' */
  sentence: string
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
  const pc = (p: number): string => `${Math.round(p * 100)} %`
  const what = frames === 1 ? 'One frame' : `${frames} frames`
  const sentence =
    `${what} of capped brood lifts the lowest point from ${before.lowest.frames.toFixed(1)} to ` +
    `${after.lowest.frames.toFixed(1)} frames of bees; the chance of falling under ${options.minFrames} goes from ` +
    `${pc(before.chanceUnder)} to ${pc(after.chanceUnder)}.`
  return { on, frames, before, after, sentence }
}
