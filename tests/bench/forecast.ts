/** The forecasts: a colony's odds, strength and most telling day; supplies for a yard of 500; the calibration on simulated yards. */
import { addDays, type Day } from '../../src/days.ts'
import { queenOdds, storyOf } from '../../src/forecast/queen-odds.ts'
import { DEFAULT_RATES } from '../../src/forecast/rates.ts'
import { listModelOf, modelOf } from '../../src/forecast/story/walk.ts'
import { strengthForecast } from '../../src/forecast/strength.ts'
import { orderAdvice } from '../../src/forecast/supplies.ts'
import { tellingDays } from '../../src/forecast/telling-day.ts'
import { yardSupplies } from '../../src/forecast/yard-supplies.ts'
import { type History, historyOf } from '../../src/journal/history.ts'
import { calibrate } from '../forecast/calibration.ts'
import { seeded } from '../forecast/random.ts'
import { Colony, playOut, START, someIntake } from '../forecast/simulator.ts'
import { report, timed } from './clock.ts'

function yard(colonies: number): { history: History; today: Day }[] {
  const random = seeded(1)
  return Array.from({ length: colonies }, (_, i) => {
    const c = playOut(
      new Colony(random, DEFAULT_RATES, someIntake(random), `F-${i}`),
      5 + Math.floor(random() * 30),
    )
    const history = historyOf(c.tag, c.entries)
    if (history === null) throw new Error('no history')
    return { history, today: addDays(START, c.t) }
  })
}

function oneColony(): void {
  const colonies = yard(40)
  const model = modelOf(DEFAULT_RATES)
  let n = 0
  const next = () => colonies[n++ % colonies.length] as (typeof colonies)[number]
  const stories = colonies.map(({ history, today }) => storyOf(history, today, model))
  const odds = stories.map(queenOdds)
  report(
    'odds of one colony, 90 days, with evidence',
    timed(() => {
      const { history, today } = next()
      queenOdds(storyOf(history, today, model))
    }, 200),
    'all three under 20 ms',
  )
  const at = (): number => n++ % stories.length
  report(
    'strength of one colony, 90 days',
    timed(() => {
      const i = at()
      const [story, o] = [stories[i], odds[i]]
      if (story !== undefined && o !== undefined)
        strengthForecast(story, o.firstEgg, { minFrames: 3, holdDays: 30 })
    }, 200),
  )
  report(
    'most telling day of one colony, 14 days',
    timed(() => {
      const story = stories[at()]
      if (story !== undefined) tellingDays(story, 14)
    }, 200),
  )
}

function wholeYard(): void {
  const histories = yard(500).map((c) => c.history)
  const today = addDays(START, 36)
  const model = listModelOf(DEFAULT_RATES)
  report(
    'supplies of a yard of 500: needs, order, donors',
    timed(
      () => {
        orderAdvice(yardSupplies(histories, today, model, { ahead: 21 }).forecast.queens)
      },
      5,
      2,
    ),
    'under 500 ms',
  )
}

const percent = (p: number): string => `${(100 * p).toFixed(1)} %`.padStart(7)

function calibration(): void {
  const c = calibrate(2500, 11, DEFAULT_RATES, DEFAULT_RATES)
  process.stdout.write(`calibration on 2,500 simulated colonies, ${c.forecasts} forecasts of seven kinds\n`)
  for (const b of c.bins)
    process.stdout.write(
      `  given ${percent(b.given)}   so ${percent(b.so)}   ${String(b.n).padStart(7)} odds\n`,
    )
  const { given, so, n } = c.atSeventy
  process.stdout.write(
    `  of ${n} odds of 65-75 % (mean ${percent(given).trim()}) ${percent(so).trim()} were so\n`,
  )
  process.stdout.write(
    `  Brier score ${c.brier.toFixed(3)} (base rates alone ${c.brierOfBaseRates.toFixed(3)}); the likeliest was so in ${percent(c.right).trim()}\n`,
  )
}

export function bench(): void {
  oneColony()
  wholeYard()
  calibration()
}
