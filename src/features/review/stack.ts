/** What became of colonies as areas one above the other, over the days since intake. */
import { BOX } from '../../parts/index.ts'
import type { OutcomeRow } from './outcomes.ts'

/** From the bottom up: the good end first, the losses hang from the top. */
export const STACKED = ['movedOut', 'stillHere', 'united', 'other', 'lost'] as const
export type Stacked = (typeof STACKED)[number]

/** The same last day for every kind, so that they can be compared. */
export const END_OF_STACK = 90

export const STACK_WAYS: Record<Stacked, string> = {
  movedOut: 'moved out',
  stillHere: 'still here',
  united: 'united',
  other: 'other',
  lost: 'died or absconded',
}

const shareOf = (row: OutcomeRow, way: Stacked): number => {
  if (way === 'lost') return row.died.share + row.absconded.share
  if (way === 'other') return row.other.share + (row.unknown?.share ?? 0)
  return row[way].share
}

/** Shares from a day on, as they are read: the day, then each of STACKED. */
export type StackStep = [day: number, ...shares: number[]]

/** The steps of a stack up to the last day on which anybody was followed. */
export const stackSteps = (rows: readonly OutcomeRow[]): StackStep[] =>
  rows.flatMap((r): StackStep[] =>
    r.day > END_OF_STACK ? [] : [[r.day, ...STACKED.map((way) => Math.round(shareOf(r, way) * 1000) / 1000)]],
  )

export interface StackArea {
  way: Stacked
  path: string
}

/** Areas in a box of BOX by BOX; they end on the last day on which anybody was followed, and never pretend to know more. */
export function stackOf(rows: readonly OutcomeRow[], lastDay: number): StackArea[] {
  const end = Math.min(END_OF_STACK, lastDay)
  const x = (day: number): number => Math.round((day / END_OF_STACK) * BOX)
  const y = (share: number): number => Math.round((1 - share) * BOX)
  const steps = rows.filter((r) => r.day <= end)
  const days = [0, ...steps.map((r) => r.day), end]
  return STACKED.map((way, w): StackArea => {
    // The share below this area, and up to its top, from each of the days on.
    const upTo = (n: number): number[] =>
      [null, ...steps, steps.at(-1) ?? null].map((row) =>
        row === null
          ? n > STACKED.indexOf('stillHere')
            ? 1
            : 0
          : STACKED.slice(0, n).reduce((sum, s) => sum + shareOf(row, s), 0),
      )
    return { way, path: between(days, upTo(w), upTo(w + 1), x, y) }
  })
}

/** The outline between two step lines over the same days. */
function between(
  days: readonly number[],
  low: readonly number[],
  high: readonly number[],
  x: (day: number) => number,
  y: (share: number) => number,
): string {
  const line = (values: readonly number[]): string[] =>
    days.flatMap((day, i) => {
      const at = `${x(day)} ${y(values[i] ?? 0)}`
      return i === 0 ? [at] : [`${x(day)} ${y(values[i - 1] ?? 0)}`, at]
    })
  return `M${[...line(high), ...line(low).reverse()].join('L')}Z`
}
