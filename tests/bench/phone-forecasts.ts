/** Runs in a browser page: the forecasts of colonies as their pages show them, and how long each took. */

import { forecastCache, type Ground } from '../../src/app/forecasts.ts'
import type { Day } from '../../src/days.ts'
import { DEFAULT_RATES } from '../../src/forecast/rates.ts'
import type { Entry } from '../../src/journal/entry.ts'
import { historyOf } from '../../src/journal/history.ts'
import { planOf } from '../../src/recovery/plan.ts'
import { DEFAULT_PROTOCOL } from '../../src/recovery/protocol.ts'

export interface PhoneColony {
  tag: string
  entries: Entry[]
  today: Day
}

/** Milliseconds of each colony's forecasts, in order; the first one pays for loading the tables. */
function forecastAll(colonies: readonly PhoneColony[]): number[] {
  const forecasts = forecastCache()
  return colonies.flatMap(({ tag, entries, today }) => {
    const history = historyOf(tag, entries)
    if (history === null) return []
    const ground: Ground = {
      today,
      rates: DEFAULT_RATES,
      protocol: DEFAULT_PROTOCOL,
      hemisphere: 'north',
      key: today,
    }
    const known = { id: tag, history, plan: planOf(history, today) }
    const from = performance.now()
    forecasts.colony(known, ground)
    forecasts.telling(known, ground, today)
    return [performance.now() - from]
  })
}

Object.assign(globalThis, { forecastAll })
