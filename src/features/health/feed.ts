/**
 * Feed: what was given, in kilograms of sugar, and what the colony needs where nothing comes in from outside.
 *
 * The need is Khoury, Barron & Myerscough 2013 (PLoS ONE 8(5):e59084): 0.007 g of food a day for each adult and 0.018 g
 * for each open brood cell. How many there are is reckoned from the last counts of frames, so it is an estimate of an
 * estimate: good for "one bottle or four", not for more.
 */
import { BEES_PER_FRAME, CELLS_PER_FRAME_SIDE, framesOfBees, STEADY_BROOD } from '../../biology/index.ts'
import { type Day, daysBetween } from '../../days.ts'
import type { Given, History, Inspection } from '../../journal/index.ts'

/** Grams of food a day (Khoury et al. 2013). */
const PER_ADULT_G = 0.007
const PER_OPEN_CELL_G = 0.018

/** Sugar in food taken as honey. Honey is about four fifths sugar (handbook value, from memory). */
const SUGAR_IN_HONEY = 0.8

/**
 * Kilograms of sugar in a litre of syrup: sugar to water 1:1 by weight is 50 % sugar of 1.23 kg a litre, 2:1 is 66.7 %
 * of 1.33 kg a litre (densities of sucrose solutions at 20 °C, from memory).
 */
const SUGAR_PER_LITRE = { '1:1': 0.615, '2:1': 0.886 } as const

/** Share of a frame's cells that hold brood where somebody calls it a frame of brood. Judgement. */
const BROOD_ON_A_FRAME = 0.7

/**
 * Sugar to build one deep frame of comb, kg: about 77,000 cells from a kilogram of wax, 8.4 kg of honey for a kilogram
 * of wax (Whitcomb 1946); both from memory, and other figures run from 6 to 20.
 */
export const SUGAR_PER_COMB_KG = (2 * CELLS_PER_FRAME_SIDE * 8.4 * SUGAR_IN_HONEY) / 77_000

/** A count older than this says little of today. Judgement. */
const COUNT_VALID_DAYS = 14

export interface Feed {
  on: Day
  what: 'syrup' | 'pollen'
  litres: number | null
  kg: number | null
  /** Null: the strength was not noted; reckoned as 1:1. */
  strength: '1:1' | '2:1' | null
  product: string | null
  /** Of pollen 0: it is protein. Null: no amount was noted. */
  sugarKg: number | null
}

export const isFeed = (e: { kind: string; what?: string }): e is Given =>
  e.kind === 'given' && (e.what === 'syrup' || e.what === 'pollen')

export function feedOf(e: Given): Feed {
  const strength = e.syrup ?? null
  const sugar =
    e.what === 'pollen'
      ? 0
      : e.litres === undefined && e.kg === undefined
        ? null
        : (e.litres ?? 0) * SUGAR_PER_LITRE[strength ?? '1:1'] + (e.kg ?? 0)
  return {
    on: e.on,
    what: e.what === 'pollen' ? 'pollen' : 'syrup',
    litres: e.litres ?? null,
    kg: e.kg ?? null,
    strength,
    product: e.product ?? null,
    sugarKg: sugar,
  }
}

export interface Need {
  /** Sugar a week where nothing comes in, kg. */
  sugarKgAWeek: number
  /** The same as syrup, litres. */
  litres: { '1:1': number; '2:1': number }
  frames: number
  /** Frames of brood it is reckoned with; null: never counted, so none is reckoned. */
  brood: number | null
  countedOn: Day
  /** The count is old. */
  stale: boolean
}

/** Null when nobody has counted or weighed the bees. */
export function needOf(history: History, today: Day): Need | null {
  const looks = history.entries.filter((e): e is Inspection => e.kind === 'inspection' && e.on <= today)
  const counted = looks.findLast((e) => e.framesOfBees !== undefined)
  const { bees } = history.intake
  const atIntake = bees?.frames ?? (bees?.kg === undefined ? undefined : framesOfBees(bees.kg))
  const frames = counted?.framesOfBees ?? atIntake
  if (frames === undefined) return null
  const brood = looks.findLast((e) => e.framesOfBrood !== undefined)?.framesOfBrood ?? null
  const countedOn = counted?.on ?? history.intake.on
  const sugarKgAWeek = (7 * SUGAR_IN_HONEY * (adultsG(frames) + broodG(brood ?? 0))) / 1000
  return {
    sugarKgAWeek,
    litres: {
      '1:1': sugarKgAWeek / SUGAR_PER_LITRE['1:1'],
      '2:1': sugarKgAWeek / SUGAR_PER_LITRE['2:1'],
    },
    frames,
    brood,
    countedOn,
    stale: daysBetween(countedOn, today) > COUNT_VALID_DAYS,
  }
}

const adultsG = (frames: number): number => frames * BEES_PER_FRAME * PER_ADULT_G

/** Eggs and open larvae are 3 of 7 brood cells under a steady queen; capped brood is not fed. */
function broodG(frames: number): number {
  const { eggs, open, capped } = STEADY_BROOD
  const fed = (eggs + open) / (eggs + open + capped)
  return frames * 2 * CELLS_PER_FRAME_SIDE * BROOD_ON_A_FRAME * fed * PER_OPEN_CELL_G
}

/** Sugar given in the `days` days up to today, kg; feeds without an amount count nothing and are counted apart. */
export function givenLately(
  feeds: readonly Feed[],
  today: Day,
  days: number,
): { sugarKg: number; unmeasured: number } {
  const lately = feeds.filter((f) => f.on <= today && daysBetween(f.on, today) < days)
  return {
    sugarKg: lately.reduce((sum, f) => sum + (f.sugarKg ?? 0), 0),
    unmeasured: lately.filter((f) => f.sugarKg === null).length,
  }
}
