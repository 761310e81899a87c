/** Yards whose true rates are others than the believed ones: what is left of the odds there. */
import { type Rates, ratesWith } from '../../src/forecast/rates.ts'

export const OTHER_YARDS: Readonly<Record<string, Rates>> = {
  'fewer queens come along': ratesWith({ aliveUnseen: 0.3, aliveLoose: 0.7 }),
  'more queens come along': ratesWith({ aliveUnseen: 0.7 }),
  'eggs are missed more often': ratesWith({ seesEggs: 0.7, seesCells: 0.85 }),
  'virgins mate worse': ratesWith({ virginLays: 0.55 }),
  'bees begin cells reluctantly': ratesWith({ cellStartPerDay: 0.22, cellEmerges: 0.75 }),
}
