/** What other parts may import from here; README.md explains. */
export { type ChiSquareTest, type Column, type CoxFit, cox } from './cox.ts'
export {
  asLost,
  countByDay,
  type DayCounts,
  type Durations,
  firstWays,
  type Grouping,
  thisWayOrOther,
  together,
} from './day-counts.ts'
export { grayTest } from './gray.ts'
export { holm } from './holm.ts'
export {
  cumulativeIncidence,
  type Incidence,
  incidenceLimits,
  smallSampleLimits,
  stdErrBehind,
  stepAt,
} from './incidence.ts'
export { jeffreys, wilson } from './intervals.ts'
export { type Curve, kaplanMeier, type SurvivalAt, survivalAt } from './kaplan-meier.ts'
export { logRank, stratifiedLogRank } from './log-rank.ts'
export { effectiveCounts, type Pooled, pool } from './pooling.ts'
export { smallestDifference } from './power.ts'
export { type QuantileDay, quantileDay } from './quantile.ts'
export { coveredDays, restrictedMean } from './restricted-mean.ts'
export { betaQuantile, zFor } from './special.ts'
export { type ThinDay, thinDay } from './thin.ts'
export { turnbull } from './turnbull.ts'
