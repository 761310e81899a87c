/** The door of this room; README.md says what is behind it. */
export { emergingByDay } from './brood-sources.ts'
export { CALIBRATION, type CalibrationBin } from './calibration-data.ts'
export { colonyForecast, type ForecastSettings } from './colony-forecast.ts'
export { DEFAULT_DONOR_RULES, type Donor } from './donors.ts'
export { type EvidenceWeight, strengthOf } from './evidence.ts'
export type { Foreseen, FrameSeen } from './foreseen.ts'
export { effectOfCappedFrame } from './frame-effect.ts'
export { type Learned, type LearnedRate, learning } from './learn.ts'
export { type Hemisphere, LIFE, meanLife, mixedLeft } from './life.ts'
export { freeFrom, type OccupancyDay, occupancyForecast } from './occupancy.ts'
export { calibrating, type KindTrust, type OwnCalibration } from './own-calibration.ts'
export { moreThan } from './poisson-binomial.ts'
export {
  type KindShares,
  oddsOn,
  oddsToday,
  type QueenOdds,
  queenOdds,
  type Story,
  storyOf,
} from './queen-odds.ts'
export {
  type Basis,
  DEFAULT_RATES,
  FIRST_EGG,
  RATE_NAMES,
  RATE_TABLE,
  type Rate,
  type Rates,
  ratesWith,
} from './rates.ts'
export { type MoveOutForecast, moveOutForecast } from './readiness.ts'
export { type Around, NOTHING_AROUND } from './story/around.ts'
export { KINDS, type Kind } from './story/kinds.ts'
export { broodSeen, cappedChances, cellChances, eggsChances } from './story/look.ts'
export { freed, nightFrom } from './story/night.ts'
export { LAST_AGE, NO_OLD, pack, Q, STATE, type State } from './story/state.ts'
export { matesOnDay } from './story/steps.ts'
export { listModelOf, type Model, overnight, type Shares } from './story/walk.ts'
export { framesAtIntake, type StrengthForecast, strengthForecast } from './strength.ts'
export { ASSUMED_FRAMES } from './strength-stories.ts'
export {
  type ColonyNeed,
  DEFAULT_ORDER,
  type NeedByDay,
  type OrderAdvice,
  type OrderOptions,
  orderAdvice,
  type SupplyForecast,
} from './supplies.ts'
export {
  type BestLook,
  bestLook,
  HARDLY_TELLING,
  mostTelling,
  type TellingDay,
  tellingDays,
} from './telling-day.ts'
export { type ColonySupplies, colonySupplies, type YardSupplies, yardSupplies } from './yard-supplies.ts'
