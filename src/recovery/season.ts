/** What the season allows, as far as the yard has said in which months its queens mate. */
import { FULL_LOOK_C, SHORT_LOOK_C } from '../biology/index.ts'
import type { Day } from '../days.ts'
import { MONTHS, type Month, type Protocol, type ProtocolOverrides } from './protocol.ts'

/** From so many months away from any in which queens mate, the lid stays on but for a warm spell (judgement). */
const COLD_FROM = 2

/** Months between two months, the shorter way round the year. */
const apart = (a: number, b: number): number => Math.min((a - b + 12) % 12, (b - a + 12) % 12)

/** Whether no lid comes off without need: two months or more from the mating months. Never, where none were said. */
export function coldSeason(p: Protocol, day: Day): boolean {
  const month = Number(day.slice(5, 7))
  return p.matingMonths.length > 0 && p.matingMonths.every((m) => apart(Number(m), month) >= COLD_FROM)
}

/** Least outdoor temperature for a full look at every frame, and for a short one at two or three, °C (D. Caron). */
export const leastC = (look: 'full' | 'short'): number => (look === 'full' ? FULL_LOOK_C : SHORT_LOOK_C)

export const CLIMATES = ['cold', 'temperate', 'warm', 'tropical'] as const
export type Climate = (typeof CLIMATES)[number]

/**
 * Months in which queens mate in the north, by climate: calm days above about 20 °C, and drones about (judgement; sources
 * for the temperature say 16-21 °C). Cold: short summers. Warm: mild winters. Tropical: all the year.
 */
const NORTHERN: Record<Climate, readonly [first: number, last: number]> = {
  cold: [6, 8],
  temperate: [5, 8],
  warm: [3, 10],
  tropical: [1, 12],
}

/** A first suggestion, for the yard to correct. Example: suggestedMatingMonths('south', 'temperate') = 11, 12, 1, 2. */
export function suggestedMatingMonths(hemisphere: 'north' | 'south', climate: Climate): Month[] {
  const [first, last] = NORTHERN[climate]
  const shift = hemisphere === 'north' ? 0 : 6
  return MONTHS.filter((m) => {
    const there = ((Number(m) - 1 - shift + 12) % 12) + 1
    return there >= first && there <= last
  })
}

/** Mites per 100 bees that are too many where no brood is reared (common practice: 1 to 2; from memory). */
export const DORMANT_MITES = 2

/** What a yard that says its mating months does otherwise than the default; nothing where every month is one. */
export function seasonOf(
  matingMonths: readonly Month[],
): Pick<ProtocolOverrides, 'matingMonths' | 'miteThresholdByMonth'> {
  if (matingMonths.length === 0 || matingMonths.length === MONTHS.length) return {}
  const cold = MONTHS.filter((m) => matingMonths.every((x) => apart(Number(x), Number(m)) >= COLD_FROM))
  return {
    matingMonths: [...matingMonths],
    ...(cold.length === 0
      ? {}
      : { miteThresholdByMonth: Object.fromEntries(cold.map((m) => [m, DORMANT_MITES])) }),
  }
}
