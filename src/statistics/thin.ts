/**
 * Risk sets too small to lean on, where colonies are entered late: one loss among the first few that were followed pulls
 * the whole curve down, though many more were followed later. (With everyone followed from intake small risk sets come at
 * the far end only, where the limits tell of them.) Klein JP, Moeschberger ML (2003) Survival Analysis, 2nd ed., section
 * 4.6, on what such a curve then estimates.
 */
import { type DayCounts, lostOn } from './day-counts.ts'

/** A loss among fewer than this moves the curve by a fifth or more at once (our choice). */
const THIN = 5

/** A day on which somebody was lost out of a handful, with others entered only later. */
export interface ThinDay {
  day: number
  atRisk: number
}

/** The first such day; null when there is none. Example: A lost on day 2, when only A was followed: { day: 2, atRisk: 1 }. */
export function thinDay(counts: DayCounts): ThinDay | null {
  let lastEntry = -1
  for (let d = 0; d < counts.lastDay; d++) {
    const stayed = (counts.atRisk[d] ?? 0) - lostOn(counts, d) - (counts.left[d] ?? 0)
    if ((counts.atRisk[d + 1] ?? 0) > stayed) lastEntry = d
  }
  for (let d = 0; d <= lastEntry; d++) {
    const atRisk = counts.atRisk[d] ?? 0
    if (atRisk < THIN && lostOn(counts, d) > 0) return { day: d, atRisk }
  }
  return null
}
