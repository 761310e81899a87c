/** Weather of the invented valley, enough to make some removals hot. */
import { type Day, dayNumber } from '../../src/days.ts'
import { type Draw, normal } from '../seeded.ts'

const HOTTEST_DAY_OF_YEAR = 201
const YEARLY_MEAN_C = 16
const YEARLY_SWING_C = 11
const DAILY_SPREAD_C = 4

/** Outdoor temperature when the comb was cut out, °C, to the degree. */
export function outdoorC(draw: Draw, day: Day): number {
  const dayOfYear = dayNumber(day) - dayNumber(`${day.slice(0, 4)}-01-01`)
  const season = Math.cos((2 * Math.PI * (dayOfYear - HOTTEST_DAY_OF_YEAR)) / 365)
  return Math.round(normal(draw, YEARLY_MEAN_C + YEARLY_SWING_C * season, DAILY_SPREAD_C))
}
