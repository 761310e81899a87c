/** What a chart says of one day, in words: under the finger, or for whoever asks. */

import type { StepPoint } from '../../parts/index.ts'
import { fewWords, percent, percentRange } from '../../words/index.ts'
import type { Line, Stack, StackedWays } from './chart-data.ts'
import { STACK_WAYS, STACKED } from './stack.ts'

/** The point that holds on a day; null before the first and after the last. */
export function pointOn(points: readonly StepPoint[], day: number): StepPoint | null {
  const last = points.at(-1)
  if (last === undefined || day > last[0]) return null
  return points.findLast((p) => p[0] <= day) ?? null
}

/** 'Day 23: all 78 % (72 to 83 %), wall 70 % (54 to 81 %)' */
export function linesOn(lines: readonly Line[], day: number): string {
  const said = lines.flatMap((line) => {
    const point = pointOn(line.points, day)
    if (point === null) return []
    const [, share, lower, upper] = point
    const limits = lower === null || upper === null ? '' : ` (${percentRange(lower, upper)})`
    return [`${line.name} ${percent(share)}${limits}${fewWords(line.colonies)}`.trim()]
  })
  return `Day ${day}: ${said.length === 0 ? 'nobody was followed that long' : said.join(', ')}`
}

/** 'Day 23: died 12 %, absconded 5 %, united 3 %' */
export function waysOn(ways: StackedWays, day: number): string {
  if (day > (ways.days.at(-1) ?? 0)) return `Day ${day}: nobody was followed that long`
  const i = ways.days.findLastIndex((d) => d <= day)
  const share = (way: readonly number[]): string => percent(way[i] ?? 0)
  return `Day ${day}: died ${share(ways.died)}, absconded ${share(ways.absconded)}, united ${share(ways.united)}`
}

/** 'wall, day 42: 31 % moved out, 22 % still here, 13 % united, 34 % died or absconded'. A way that nobody took is left out. */
export function stackOn({ name, lastDay, steps }: Stack, day: number): string {
  if (day > lastDay) return `${name}, day ${day}: nobody was followed that long`
  const step = steps.findLast(([on]) => on <= day)
  const said = STACKED.flatMap((way, i) => {
    const share = step === undefined ? (way === 'stillHere' ? 1 : 0) : (step[i + 1] ?? 0)
    return share === 0 ? [] : [`${percent(share)} ${STACK_WAYS[way]}`]
  })
  return `${name}, day ${day}: ${said.join(', ')}`
}
