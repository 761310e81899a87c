/** How far the odds can be trusted: what the calibration on simulated colonies found (calibration.json, with its command). */
import data from './calibration.json' with { type: 'json' }

export interface CalibrationBin {
  /** How many odds fell into it, their mean, and the share that was so. */
  n: number
  given: number
  so: number
}

interface CalibrationResult {
  colonies: number
  forecasts: number
  /** Ten, by odds given: under 10 %, 10 to 20 %, … */
  bins: CalibrationBin[]
  /** Of those given 65 to 75 %. */
  atSeventy: CalibrationBin
  /** Mean squared error, summed over the seven kinds: 0 is perfect, 2 the worst; and of one who always gives the overall shares. */
  brier: number
  brierOfBaseRates: number
  /** Share of forecasts whose likeliest kind was so. */
  right: number
}

export interface CalibrationData {
  /** What made these numbers. */
  command: string
  seed: number
  /** Yards as the defaults believe them to be. */
  believed: CalibrationResult
  /** Yards whose true rates are others; the Brier score of one who knows them beside. */
  elsewhere: ({ name: string; brierOfKnowing: number } & CalibrationResult)[]
}

export const CALIBRATION: CalibrationData = data
