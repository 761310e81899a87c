/** How far odds can be trusted: of everything given about 70 %, how much was so. */
import { addDays } from '../../src/days.ts'
import { oddsOn, storyOf } from '../../src/forecast/queen-odds.ts'
import type { Rates } from '../../src/forecast/rates.ts'
import { KINDS } from '../../src/forecast/story/kinds.ts'
import { type Model, modelOf } from '../../src/forecast/story/walk.ts'
import { historyOf } from '../../src/journal/history.ts'
import { type Random, seeded } from './random.ts'
import { Colony, playOut, START, someIntake } from './simulator.ts'

interface Bin {
  /** Middle of the bin: 0.05, 0.15, … */
  middle: number
  /** How many odds fell into it, their mean, and the share that was so. */
  n: number
  given: number
  so: number
}

export interface Calibration {
  bins: Bin[]
  /** Of those given 65-75 %. */
  atSeventy: Bin
  /** Mean squared error over the seven kinds, summed per forecast (0 = perfect, 2 = worst), and of a forecaster who always gives the overall shares. */
  brier: number
  brierOfBaseRates: number
  /** Share of forecasts whose likeliest kind was so. */
  right: number
  forecasts: number
}

interface Pair {
  p: number
  so: boolean
}

function binOf(pairs: readonly Pair[], from: number, to: number): Bin {
  const inside = pairs.filter((x) => x.p >= from && x.p < to)
  const mean = (f: (x: Pair) => number): number =>
    inside.length === 0 ? Number.NaN : inside.reduce((a, x) => a + f(x), 0) / inside.length
  return {
    middle: (from + to) / 2,
    n: inside.length,
    given: mean((x) => x.p),
    so: mean((x) => (x.so ? 1 : 0)),
  }
}

/** The last day of a simulated colony, and how many days lie between two forecasts of it. */
const LAST = 46
const EVERY = 4

/**
 * Simulates colonies whose true rates are `truth` and asks a model of `believed` rates for the odds every fourth day, each
 * time knowing only what had been seen by then.
 */
export function calibrate(
  colonies: number,
  seed: number,
  truth: Rates,
  believed: Rates,
  makeModel: (rates: Rates) => Model = modelOf,
): Calibration {
  const random: Random = seeded(seed)
  const model = makeModel(believed)
  const pairs: Pair[] = []
  const counts = KINDS.map(() => 0)
  let [squares, right, forecasts] = [0, 0, 0]
  for (let i = 0; i < colonies; i++) {
    const c = playOut(new Colony(random, truth, someIntake(random)), LAST)
    const history = historyOf(c.tag, c.entries)
    if (history === null) throw new Error('no history')
    const today = addDays(START, LAST)
    const story = storyOf(history, today, model, today)
    for (let t = 1 + Math.floor(random() * EVERY); t <= LAST; t += EVERY) {
      const odds = oddsOn(story, t)
      const so = c.truth[t]
      KINDS.forEach((kind, k) => {
        pairs.push({ p: odds[kind], so: kind === so })
        squares += (odds[kind] - (kind === so ? 1 : 0)) ** 2
        if (kind === so) counts[k] = (counts[k] ?? 0) + 1
      })
      forecasts++
      if ([...KINDS].sort((a, b) => odds[b] - odds[a])[0] === so) right++
    }
  }
  const shares = counts.map((n) => n / forecasts)
  return {
    bins: Array.from({ length: 10 }, (_, i) => binOf(pairs, i / 10, i === 9 ? 1.01 : (i + 1) / 10)),
    atSeventy: binOf(pairs, 0.65, 0.75),
    brier: squares / forecasts,
    brierOfBaseRates: 1 - shares.reduce((a, s) => a + s * s, 0),
    right: right / forecasts,
    forecasts,
  }
}
