/** Types beside each other on one day: each type's own survival with limits, and the estimate after pooling. */
import {
  type Curve,
  effectiveCounts,
  jeffreys,
  type Pooled,
  pool,
  survivalAt,
  type ThinDay,
} from '../../statistics/index.ts'

export interface ShareAlive {
  colonies: number
  /** Null when nobody was followed that long. */
  survival: number | null
  lower: number | null
  upper: number | null
  /** Where the limits come from: the curve's log-log limits, or Jeffreys' where none or all were lost. */
  limitsBy: 'log-log' | 'jeffreys' | null
  /** Why there is no share though colonies were followed that long: one was lost out of so few, the others entered later. */
  thin: ThinDay | null
}

/**
 * Survival on a day, always with limits where there is an estimate: a curve at 1 or 0 has no log-log limits, so there
 * Jeffreys' interval of the numbers followed that long is given.
 * Example: 5 of 5 followed to day 30 and none lost: 1, with limits 0.62 to 1.
 */
export function shareAlive(curve: Curve, day: number): ShareAlive {
  const { survival, lower, upper } = survivalAt(curve, day)
  const { colonies } = curve
  const none = { colonies, survival: null, lower: null, upper: null, limitsBy: null, thin: null }
  if (curve.thin !== null && curve.thin.day <= day) return { ...none, thin: curve.thin }
  if (survival === null) return none
  if (lower !== null && upper !== null)
    return { colonies, survival, lower, upper, limitsBy: 'log-log', thin: null }
  const counts = effectiveCounts(curve, day)
  if (counts === null || counts.of === 0) return { ...none, survival }
  const [low, high] = jeffreys(counts.kept, counts.of, curve.confidence)
  return { colonies, survival, lower: low, upper: high, limitsBy: 'jeffreys', thin: null }
}

export interface TypeOnDay extends ShareAlive {
  name: string
  /** What to expect of the next colony of this type, leaning on all types; null with fewer than two types to lean on. */
  pooled: Pooled | null
}

/** One row a type, in the order given. */
export function typesOnDay(names: readonly string[], curves: readonly Curve[], day: number): TypeOnDay[] {
  const counts = curves.map((c) => effectiveCounts(c, day) ?? { kept: 0, of: 0 })
  const pooled = pool(counts)
  return curves.map((curve, i) => ({
    name: names[i] ?? '',
    ...shareAlive(curve, day),
    pooled: pooled?.[i] ?? null,
  }))
}
