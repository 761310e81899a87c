/**
 * Kaplan-Meier: the share not yet lost, by day, with colonies that left or are still in the yard counted for as long as
 * they were followed.
 *
 * Kaplan EL, Meier P (1958) JASA 53:457-481; Greenwood's variance; log-log limits as in Kalbfleisch and Prentice (1980).
 */
import { type DayCounts, lostOn } from './day-counts.ts'
import { zFor } from './special.ts'
import { type ThinDay, thinDay } from './thin.ts'

export type LimitKind = 'log-log' | 'log' | 'plain'

/** A day on which somebody was lost or left. */
export interface Step {
  day: number
  /** Colonies at risk just before. */
  atRisk: number
  lost: number
  /** Left, or last known there: not lost. */
  left: number
  /** Share not lost up to and including this day. */
  survival: number
  /** Standard error of log S (Greenwood); null where S is 0. */
  logStdErr: number | null
  /** Confidence limits of S; null where the method defines none (for log-log: where S is 1 or 0). */
  lower: number | null
  upper: number | null
}

export interface Curve {
  colonies: number
  lost: number
  confidence: number
  /** From this day on the curve hangs on a handful of colonies; null: it does not. */
  thin: ThinDay | null
  steps: Step[]
}

/** Limits of S from the standard error of log S, as R's survfit gives them. */
function survivalLimits(
  survival: number,
  logStdErr: number,
  z: number,
  kind: LimitKind,
): [lower: number, upper: number] | null {
  if (survival <= 0) return null
  const half = z * logStdErr
  if (kind === 'plain')
    return [Math.max(0, survival - half * survival), Math.min(1, survival + half * survival)]
  if (kind === 'log') return [survival * Math.exp(-half), Math.min(1, survival * Math.exp(half))]
  if (survival >= 1) return null
  const logS = Math.log(survival)
  const shift = half / logS
  const hazard = Math.log(-logS)
  return [Math.exp(-Math.exp(hazard - shift)), Math.exp(-Math.exp(hazard + shift))]
}

/**
 * The Kaplan-Meier curve of one group; a step for every day on which somebody was lost or left.
 *
 * Example: kaplanMeier(countByDay({ day: [1, 2], way: [1, 0] })[0]) steps to 0.5 on day 1 and stays there.
 */
export function kaplanMeier(counts: DayCounts, confidence = 0.95, kind: LimitKind = 'log-log'): Curve {
  const z = zFor(confidence)
  const steps: Step[] = []
  let survival = 1
  let greenwood = 0
  let allLost = 0
  for (let day = 0; day <= counts.lastDay; day++) {
    const lost = lostOn(counts, day)
    const left = counts.left[day] ?? 0
    if (lost === 0 && left === 0) continue
    const atRisk = counts.atRisk[day] ?? 0
    if (lost > 0) {
      survival *= (atRisk - lost) / atRisk
      greenwood += lost / (atRisk * (atRisk - lost))
      allLost += lost
    }
    const logStdErr = survival > 0 ? Math.sqrt(greenwood) : null
    const limits = logStdErr === null ? null : survivalLimits(survival, logStdErr, z, kind)
    steps.push({
      day,
      atRisk,
      lost,
      left,
      survival,
      logStdErr,
      lower: limits?.[0] ?? null,
      upper: limits?.[1] ?? null,
    })
  }
  return { colonies: counts.colonies, lost: allLost, confidence, thin: thinDay(counts), steps }
}

/** Greenwood's standard error of S itself; null where S is 0. */
export const stdErr = (step: Step): number | null =>
  step.logStdErr === null ? null : step.survival * step.logStdErr

export interface SurvivalAt {
  survival: number | null
  lower: number | null
  upper: number | null
}

/**
 * The curve read on a day: the last step on or before it; 1 without limits before the first. All null when nobody was
 * followed that long, unless everyone was lost by then.
 */
export function survivalAt(curve: Curve, day: number): SurvivalAt {
  const end = curve.steps.at(-1)
  if (end === undefined || (day > end.day && end.survival > 0))
    return { survival: null, lower: null, upper: null }
  const step = curve.steps.findLast((s) => s.day <= day)
  return step === undefined
    ? { survival: 1, lower: null, upper: null }
    : { survival: step.survival, lower: step.lower, upper: step.upper }
}
