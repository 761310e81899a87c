/** One colony's health as of a day: mites, treatment window, suspected disease, pests, feed. */

import { type Day, daysBetween } from '../../days.ts'
import type { Given, History, Inspection } from '../../journal/index.ts'
import { type DayRange, type Protocol, type Suspicion, suspicionOn } from '../../recovery/index.ts'
import { type Feed, feedOf, givenLately, isFeed, type Need, needOf } from './feed.ts'
import { type Trend, trendOf, type Wash, washesOf } from './mites.ts'
import { WATCHED, type Watch, watchOf } from './watch.ts'

interface Treatment {
  on: Day
  product: string | null
}

export interface Health {
  washes: Wash[]
  last: Wash | null
  /** The last wash is older than the protocol lets it count. */
  washStale: boolean
  trend: Trend | null
  treatments: Treatment[]
  /** When all mites are on the bees; null when there is no such time in sight. */
  broodless: DayRange | null
  suspicion: Suspicion | null
  lastDiseaseLook: Day | null
  watches: Watch[]
  feeds: Feed[]
  /** Sugar in the last 14 days. */
  lately: { sugarKg: number; unmeasured: number }
  need: Need | null
  stores: { level: 'low' | 'enough' | 'heavy'; on: Day } | null
  /** Comb and honey of a sprayed colony are not to be fed. */
  sprayed: boolean
}

/** Days over which feed is summed. */
export const LATELY_DAYS = 14

/** `broodless` is the plan's own span. */
export function healthOf(
  history: History,
  today: Day,
  protocol: Protocol,
  broodless: DayRange | null,
): Health {
  const entries = history.entries.filter((e) => e.on <= today)
  const looks = entries.filter((e): e is Inspection => e.kind === 'inspection')
  const washes = washesOf(entries, today, protocol)
  const feeds = entries.filter(isFeed).map(feedOf)
  const last = washes.at(-1) ?? null
  const stores = looks.findLast((e) => e.stores !== undefined)
  return {
    washes,
    last,
    washStale: last !== null && daysBetween(last.on, today) > protocol.miteWashValidDays,
    trend: trendOf(washes),
    treatments: entries
      .filter((e): e is Given => e.kind === 'given' && e.what === 'treatment')
      .map((e) => ({ on: e.on, product: e.product ?? null })),
    broodless,
    suspicion: suspicionOn(entries, today),
    lastDiseaseLook: looks.findLast((e) => e.opened && e.signs !== undefined)?.on ?? null,
    watches: WATCHED.map((w) => watchOf(w, entries, today)),
    feeds,
    lately: givenLately(feeds, today, LATELY_DAYS),
    need: needOf(history, today),
    stores: stores?.stores === undefined ? null : { level: stores.stores, on: stores.on },
    sprayed: history.intake.removal.sprayed === 'yes',
  }
}

/** How pressing a colony's troubles are: 0 a suspected disease, then what is seen and late, then what is seen, then the rest. */
export function urgencyOf(h: Health): number {
  if (h.suspicion !== null) return 0
  if (h.watches.some((w) => w.stands === 'seen') || h.stores?.level === 'low') return 1
  if (h.last?.stands === 'over' || h.last?.stands === 'either') return 2
  return h.last === null || h.washStale ? 3 : 4
}

/** No wash yet, or the last one is too old to count: whatever else presses. Not a held box: it stays closed. */
export const needsWash = (h: Health): boolean => h.suspicion === null && (h.last === null || h.washStale)
