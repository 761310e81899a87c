/** How long bees live and how many eggs are laid, by season. */
import { type Day, dayNumber, dayOf } from '../days.ts'

export type Hemisphere = 'north' | 'south'

/** Numbers of the strength forecast, with what they rest on. */
export const LIFE = {
  /** Mean life of a worker in high summer, days: 15-38 (Winston 1987, from memory; americasbeekeeper.com). */
  summerDays: 28,
  /** The same in mid-winter: 140-320; the low end, since a rescued colony still rears brood. */
  winterDays: 150,
  /** Bees with no brood to feed age this much slower. Judgement; that they live longer: Maurizio 1950 (from memory). */
  broodlessAgeing: 0.7,
  /** Shape of dying (Weibull): few die young, most at about the mean. Judgement; 1 would be a constant death rate. */
  shape: 3,
  /** Eggs a day of a good queen in season: 1,000 on average, peaks of 2,000 (UC 1987; Tofilski). */
  eggsPerDay: 1500,
  /** Days from first egg to her full rate. Judgement: a mated queen is at it within the week. */
  rampDays: 4,
  /** Cells of open brood one adult can care for: one adult per 1-2 cells is sustainable (common practice, from memory); the upper end gives the published package curve. */
  cellsPerBee: 2,
  /** Frames of brood are seldom full. Share of their cells in use. Judgement. */
  frameFill: 0.7,
  /** Capped brood lives through the removal and a night outside the nest. Judgement: tougher than larvae (Wang et al. 2016). */
  cappedLives: 0.85,
} as const

const YEAR = 365.25
/** High summer: about 5 July in the north; the solstice, two weeks on. */
const SUMMER = dayNumber('2026-07-05')

/** 1 in high summer, 0 in mid-winter. */
function summerness(day: Day, hemisphere: Hemisphere = 'north'): number {
  const turn = (2 * Math.PI * (dayNumber(day) - SUMMER)) / YEAR
  return (1 + Math.cos(hemisphere === 'north' ? turn : turn + Math.PI)) / 2
}

/** Mean life of a worker at that time of year, days. Example: 28 in July, about 43 at the equinox, 150 in January. */
export function meanLife(day: Day, hemisphere: Hemisphere = 'north'): number {
  const winter = (1 - summerness(day, hemisphere)) ** 2
  return LIFE.summerDays * (LIFE.winterDays / LIFE.summerDays) ** winter
}

/** Eggs a day a good queen lays at that time of year: full from mid-April to early September, less than half a month before and after, few in winter. Judgement on the shape. */
export const eggsInSeason = (day: Day, hemisphere: Hemisphere = 'north'): number =>
  LIFE.eggsPerDay * Math.min(1, Math.max(0.05, 2.4 * (summerness(day, hemisphere) - 0.2)))

/** Mean of the Weibull distribution of scale 1: 0.893 for shape 3 (Gamma(4/3)). */
const UNIT_MEAN = 0.8929795115692492

/** Share alive after a life's worth `x` (age over mean life). Example: alive(1) = 0.49. */
export const alive = (x: number): number => Math.exp(-((x * UNIT_MEAN) ** LIFE.shape))

/**
 * Days of ageing, in mean lives, from `start` to each of the coming days: bees age slower towards winter, and on days without
 * open brood.
 */
export function ageing(
  start: Day,
  days: number,
  hemisphere: Hemisphere = 'north',
  broodless: (day: number) => boolean = () => false,
): Float64Array {
  const out = new Float64Array(days + 1)
  const first = dayNumber(start)
  for (let d = 1; d <= days; d++) {
    const slower = broodless(d - 1) ? LIFE.broodlessAgeing : 1
    out[d] = (out[d - 1] ?? 0) + slower / meanLife(dayOf(first + d - 1), hemisphere)
  }
  return out
}

const ALIVE_STEP = 0.005

/** {@link alive} by a table: it is asked a hundred thousand times a forecast. */
const ALIVE: readonly number[] = Array.from({ length: 1000 }, (_, k) => alive(k * ALIVE_STEP))

/** {@link alive} from its table, linear in between; off by less than 0.00001. */
export function aliveAt(x: number): number {
  const at = x / ALIVE_STEP
  const k = Math.floor(at)
  const here = ALIVE[k] ?? 0
  return here + (at - k) * ((ALIVE[k + 1] ?? 0) - here)
}

const TAIL_STEP = 0.01
const TAIL_TO = 6

/** Integral of {@link alive} from each hundredth of a life on, by the trapezium rule; nothing lives six lives. */
const TAIL: readonly number[] = (() => {
  const out = new Array<number>(Math.round(TAIL_TO / TAIL_STEP) + 1).fill(0)
  for (let k = out.length - 2; k >= 0; k--)
    out[k] = (out[k + 1] ?? 0) + (TAIL_STEP * (alive(k * TAIL_STEP) + alive((k + 1) * TAIL_STEP))) / 2
  return out
})()

/**
 * Share left, after ageing by `x` mean lives, of adults of all ages as a steady colony has them: the part of all lives that is
 * still ahead. Example: mixedLeft(0) = 1, mixedLeft(0.5) = 0.5, mixedLeft(1) = 0.11.
 */
export function mixedLeft(x: number): number {
  const at = Math.min(x, TAIL_TO) / TAIL_STEP
  const k = Math.floor(at)
  const [here, next] = [TAIL[k] ?? 0, TAIL[k + 1] ?? 0]
  return (here + (at - k) * (next - here)) / (TAIL[0] ?? 1)
}
