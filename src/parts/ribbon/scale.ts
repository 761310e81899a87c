/** Where days lie on the strip: across, in per cent, so that it fits any width. */
import { type Day, daysBetween } from '../../days.ts'
import type { Ribbon } from './model.ts'

/** As an attribute: '12.5%'. */
export const pct = (n: number): string => `${Number(n.toFixed(2))}%`

export interface Scale {
  days: number
  /** Left edge of a day, in per cent. */
  at: (day: Day) => number
}

/** The scale of a ribbon. */
export const scaleOf = (r: Ribbon): Scale => {
  const days = daysBetween(r.from, r.to) + 1
  return { days, at: (day) => (daysBetween(r.from, day) / days) * 100 }
}

/** How wide some days are, both included, in per cent. */
export const width = (s: Scale, from: Day, to: Day): number => ((daysBetween(from, to) + 1) / s.days) * 100
