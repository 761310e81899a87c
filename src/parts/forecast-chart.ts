/**
 * Shapes of the forecasts' charts as SVG path text, one value a day from the first to the last, in the box of paths.ts
 * that is stretched over the plot.
 */
import { addDays, type Day, daysBetween } from '../days.ts'
import { BOX } from './chart-paths.ts'

/** The days a chart shows, both included, and those with a date under the axis. */
export interface Stretch {
  from: Day
  to: Day
  /** Days from the first to the last. */
  length: number
  ticks: Day[]
}

/** Dates under an axis: so many fit on a phone, the last of them drawn inside its edge. */
const MOST_TICKS = 3.5

/** Example: from 1 May to 12 June, a date every 14 days. */
export function stretchOf(from: Day, to: Day): Stretch {
  const length = Math.max(1, daysBetween(from, to))
  const step = [1, 2, 7, 14, 28, 56, 112].find((n) => length / n < MOST_TICKS) ?? 112
  const ticks = Array.from({ length: Math.floor(length / step) + 1 }, (_, i) => addDays(from, i * step))
  return { from, to, length, ticks }
}

const round = (n: number): number => Math.round(n * 10) / 10

/** How far along the day lies, in per cent. */
export const along = (s: Stretch, day: Day): number =>
  round((daysBetween(s.from, day) / s.length) * 1000) / 10
/** How far below the top the value lies, in per cent. */
export const below = (value: number, top: number): number => round((1 - value / top) * 1000) / 10

const x = (i: number, last: number): number => round((i / Math.max(1, last)) * BOX)
const y = (value: number, top: number): number => round((1 - value / top) * BOX)

/** A line through one value a day. Example: linePath([0, 1], 1) = 'M0 1000L1000 0'. */
export function linePath(values: readonly number[], top: number): string {
  const last = values.length - 1
  return values.map((v, i) => `${i === 0 ? 'M' : 'L'}${x(i, last)} ${y(v, top)}`).join('')
}

/** The area between two lines over the same days. */
export function betweenPath(lower: readonly number[], upper: readonly number[], top: number): string {
  const last = upper.length - 1
  const edge = (values: readonly number[]): string[] => values.map((v, i) => `${x(i, last)} ${y(v, top)}`)
  return `M${[...edge(upper), ...edge(lower).reverse()].join('L')}Z`
}

export interface Layer<K extends string> {
  of: K
  path: string
  lower: number[]
  upper: number[]
}

/** Shares stacked one above the other, the first at the bottom. Layers that are nowhere worth seeing are left out. */
export function stacked<K extends string>(
  kinds: readonly K[],
  days: readonly Readonly<Record<K, number>>[],
  least = 0.005,
): Layer<K>[] {
  let lower = days.map(() => 0)
  return kinds.flatMap((of) => {
    const below_ = lower
    const upper = days.map((d, i) => Math.min(1, (below_[i] ?? 0) + d[of]))
    lower = upper
    const most = days.reduce((m, d) => Math.max(m, d[of]), 0)
    return most < least ? [] : [{ of, path: betweenPath(below_, upper, 1), lower: below_, upper }]
  })
}

export interface LayerName<K extends string> {
  of: K
  /** Per cent from the left and from the top. */
  x: number
  y: number
}

/** A name needs so much of the height, and so much of the width for each letter, on a phone. */
const NAME_HEIGHT = 0.13
const LETTER_WIDTH = 3

/**
 * Names inside their layers: each where the layer is high enough all along the name, the highest such place; the coming
 * days (from `now` on) before the past ones. A layer without such a place has no name; the legend has it.
 */
export function namesIn<K extends string>(
  layers: readonly Layer<K>[],
  names: Readonly<Record<K, string>>,
  now: number,
): LayerName<K>[] {
  return layers.flatMap(({ of, lower, upper }) => {
    const last = upper.length - 1
    const half = Math.ceil(((names[of].length * LETTER_WIDTH) / 200) * last)
    let best: { at: number; room: number; middle: number } | null = null
    for (let at = half; at <= last - half; at++) {
      let [floor, ceiling] = [0, 1]
      for (let i = at - half; i <= at + half; i++) {
        floor = Math.max(floor, lower[i] ?? 0)
        ceiling = Math.min(ceiling, upper[i] ?? 0)
      }
      const room = ceiling - floor
      if (room < NAME_HEIGHT) continue
      const better = best === null || room > best.room + 1e-6
      const inTime = best !== null && best.at < now && at >= now
      if (inTime || (better && (best === null || best.at < now || at >= now)))
        best = { at, room, middle: (floor + ceiling) / 2 }
    }
    return best === null ? [] : [{ of, x: (best.at / last) * 100, y: (1 - best.middle) * 100 }]
  })
}

/** A round number at or above the value, for the top of a scale, and its steps. Example: scaleFor(11) = 12 in steps of 4. */
export function scaleFor(most: number): { top: number; steps: number[] } {
  const step = [0.5, 1, 2, 3, 4, 5, 10, 20, 50, 100].find((n) => most / n <= 4.5) ?? 200
  const top = Math.max(step, Math.ceil(most / step - 1e-9) * step)
  return { top, steps: Array.from({ length: Math.round(top / step) + 1 }, (_, i) => i * step) }
}
