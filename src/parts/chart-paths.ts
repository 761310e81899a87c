/**
 * Shapes of the review's charts as SVG path text, in a box 1000 wide and 1000 high that is stretched over the plot. Days
 * run from 0 to the axis' end, shares from 0 to TOP, so that a line at 100 % is not cut.
 */
/** A day, the share from that day on, and its limits (null where there are none). */
export type StepPoint = [day: number, share: number, lower: number | null, upper: number | null]

export const BOX = 1000
/** A little above 100 %. */
export const TOP = 1.04

/** Both rounded to a tenth of the box's thousandth: finer than any screen or paper. */
const round = (n: number): number => Math.round(n * 10) / 10
export const xOf = (day: number, end: number): number => round((day / end) * BOX)
export const yOf = (share: number): number => round((1 - share / TOP) * BOX)

/** A step line: each share holds until the next point's day. Example: '[[0, 1], [5, 0.5]]' goes right, then down. */
export function stepPath(points: readonly StepPoint[], end: number): string {
  return points
    .map(([day, share], i) =>
      i === 0 ? `M${xOf(day, end)} ${yOf(share)}` : `H${xOf(day, end)}V${yOf(share)}`,
    )
    .join('')
}

/** Limits that hold between two days, in the box. */
interface Piece {
  from: number
  until: number
  lower: number
  upper: number
}

/** Runs of days that have limits; the last point has no width. */
function pieces(points: readonly StepPoint[], end: number): Piece[][] {
  const runs: Piece[][] = []
  let open: Piece[] | null = null
  for (const [i, [day, , lower, upper]] of points.entries()) {
    const next = points[i + 1]
    if (next === undefined) break
    if (lower === null || upper === null) {
      open = null
      continue
    }
    if (open === null) {
      open = []
      runs.push(open)
    }
    open.push({ from: xOf(day, end), until: xOf(next[0], end), lower: yOf(lower), upper: yOf(upper) })
  }
  return runs
}

/** The area between the limits, one shape for each run of days that has them; '' when none has. */
export const bandPath = (points: readonly StepPoint[], end: number): string =>
  pieces(points, end)
    .map((run) => {
      const above = run.map((p) => `${p.from} ${p.upper}L${p.until} ${p.upper}`)
      const below = run.toReversed().map((p) => `${p.until} ${p.lower}L${p.from} ${p.lower}`)
      return `M${[...above, ...below].join('L')}Z`
    })
    .join('')

/**
 * Limits as upright bars with ends, on some days only: where lines are compared, areas would hide each other. `aside`: moved so many
 * thousandths of the box, so that two lines' bars stand beside each other. '' where there are no limits.
 */
export const barPath = (
  points: readonly StepPoint[],
  days: readonly number[],
  end: number,
  aside = 0,
): string =>
  days
    .flatMap((day) => {
      const last = points.at(-1)?.[0] ?? -1
      const on = points.findLast(([from]) => from <= day)
      if (on === undefined || day > last || on[2] === null || on[3] === null) return []
      const [x, low, high] = [round(xOf(day, end) + aside), yOf(on[2]), yOf(on[3])]
      return [
        `M${x} ${low}V${high}M${x - BAR_END} ${low}h${2 * BAR_END}M${x - BAR_END} ${high}h${2 * BAR_END}`,
      ]
    })
    .join('')

/** Half the stroke at the end of a bar. */
const BAR_END = 4

/** Small upright ticks where colonies left: half a tick above the line, half below. */
export function tickPath(left: readonly [day: number, share: number][], end: number, height = 34): string {
  return left.map(([day, share]) => `M${xOf(day, end)} ${round(yOf(share) - height / 2)}v${height}`).join('')
}

/** The area between two step lines over the same days. */
export function areaPath(
  days: readonly number[],
  lower: readonly number[],
  upper: readonly number[],
  end: number,
): string {
  const edge = (values: readonly number[]): string[] =>
    days.flatMap((day, i) => {
      const [x, y] = [xOf(day, end), yOf(values[i] ?? 0)]
      return i === 0 ? [`${x} ${y}`] : [`${x} ${yOf(values[i - 1] ?? 0)}`, `${x} ${y}`]
    })
  return `M${[...edge(upper), ...edge(lower).reverse()].join('L')}Z`
}

/**
 * Heights for labels beside the ends of lines, in the box: near their line, in its order, none nearer to another than
 * `least`, all inside the plot.
 */
export function labelHeights(shares: readonly number[], least: number): number[] {
  const order = shares.map((share, i) => ({ i, share, y: yOf(share) })).sort((a, b) => b.share - a.share)
  let floor = Number.NEGATIVE_INFINITY
  for (const label of order) {
    label.y = Math.max(label.y, floor + least)
    floor = label.y
  }
  let ceiling = BOX - least / 2 + least
  for (const label of order.toReversed()) {
    label.y = Math.min(label.y, ceiling - least)
    ceiling = label.y
  }
  const heights = new Array<number>(shares.length).fill(0)
  for (const { i, y } of order) heights[i] = round(y)
  return heights
}
