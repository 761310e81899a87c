/** The plan as this yard makes it: the one way from its choices (protocol, rates, costs, what is at hand) to a plan. */
import type { Day } from '../days.ts'
import { type DecidedPlan, modelFor, planOf } from '../decision/index.ts'
import { DEFAULT_RATES, type Rates, ratesWith } from '../forecast/index.ts'
import type { History } from '../journal/index.ts'
import { type Exposure, type Protocol, yardProtocol } from '../recovery/index.ts'
import type { SettingKey, Settings } from './settings.ts'

/** What plans hang on: another value of one of these makes other plans. */
export const PLANNED_BY = ['protocol', 'ownRates', 'costs', 'supplies'] as const satisfies SettingKey[]

/**
 * A colony's plan on a day, as this yard makes it. Entries after `today` must not be in the history. `exposure`: its bond to a
 * colony with suspected brood disease.
 */
export type Planner = (history: History, today: Day, exposure?: Exposure | null) => DecidedPlan

/** The rates the yard goes by: its own where it chose them. */
export function ratesIn(settings: Pick<Settings, 'get'>): Rates {
  const own = settings.get('ownRates') ?? null
  return own === null ? DEFAULT_RATES : ratesWith(own.values as Partial<Rates>)
}

export function plannerOf(
  settings: Pick<Settings, 'get'>,
  protocol: () => Protocol = () => yardProtocol(settings.get('protocol')),
): Planner {
  return (history, today, exposure = null) => {
    const [p, costs, supplies] = [protocol(), settings.get('costs'), settings.get('supplies')]
    const model = modelFor(ratesIn(settings), p)
    return planOf(history, today, p, { model, costs, supplies, exposure })
  }
}
