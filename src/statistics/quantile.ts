/**
 * The day by which a share of colonies was lost (the median for one half), with limits from the curve's own limits.
 * Brookmeyer R, Crowley J (1982) Biometrics 38:29-41; the choices at ties are those of R's quantile.survfit.
 */
import type { Curve, Step } from './kaplan-meier.ts'

export interface QuantileDay {
  day: number | null
  lower: number | null
  upper: number | null
}

/** Survival this near to the share counts as equal to it (R: the square root of the machine's epsilon). */
const TOLERANCE = 1.4901161193847656e-8

/**
 * The day on which the curve comes down to `level`: that of its highest value at or below it. A survival curve only
 * falls, so that is the first such day; a limit may rise again at its far end, and there this is what R reads.
 * Where the curve stays exactly at `level` for a while: the middle between that day and the next drop (or the last day,
 * when there is none).
 */
function crossing(steps: readonly Step[], of: (s: Step) => number | null, level: number): number | null {
  const highest = (ceiling: number): Step | undefined => {
    let best: Step | undefined
    for (const s of steps) {
      const value = of(s)
      if (value === null || value > ceiling) continue
      if (best === undefined || value > (of(best) ?? 0)) best = s
    }
    return best
  }
  const first = highest(level + TOLERANCE)
  if (first === undefined) return null
  const next = highest(level - TOLERANCE) ?? steps.findLast((s) => of(s) !== null) ?? first
  return (first.day + next.day) / 2
}

/**
 * The day by which the share `lost` is lost; null where the curve does not fall that far.
 * Example: quantileDay(curve, 0.5) is the median.
 */
export function quantileDay(curve: Curve, lost: number): QuantileDay {
  const level = 1 - lost
  return {
    day: crossing(curve.steps, (s) => s.survival, level),
    lower: crossing(curve.steps, (s) => s.lower, level),
    upper: crossing(curve.steps, (s) => s.upper, level),
  }
}
