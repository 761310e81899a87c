/** The hours of the forecast that somebody typed in, against the protocol's heat limit. */

import type { ForecastHour, Sheet } from '../../records/index.ts'
import { minutesFrom } from '../../time-of-day.ts'
import { hotterThan } from '../../units.ts'
import type { Facts } from './item.ts'

/** How quantities are written, in the yard's units. */
export interface Shows {
  temperature: (c: number) => string
  depth: (mm: number) => string
}

/** Hours that a forecast may end before the work does: hotter ones could hide there (judgement). */
const GAP_HOURS = 3

/** Stretches of hours at or under the limit, '06:00 to 10:00', in order. An hour stands until the next one typed. */
export function underLimit(hours: readonly ForecastHour[], limitC: number): string[] {
  const sorted = inOrder(hours)
  const runs: { from: string; to: string }[] = []
  sorted.forEach((h, i) => {
    if (hotterThan(h.c, limitC)) return
    const last = runs.at(-1)
    const follows = i > 0 && !hotterThan(sorted[i - 1]?.c ?? limitC + 1, limitC)
    if (last !== undefined && follows) last.to = h.at
    else runs.push({ from: h.at, to: h.at })
  })
  return runs.map((r) => (r.from === r.to ? `at ${r.from}` : `${r.from} to ${r.to}`))
}

const inOrder = (hours: readonly ForecastHour[]): ForecastHour[] =>
  [...hours].sort((a, b) => (a.at < b.at ? -1 : 1))

/**
 * Hours within the planned work; all of them when no times are planned. One that stands when they begin counts, though it was typed of a
 * little before.
 */
export function workingHours(s: Sheet, now?: string): ForecastHour[] {
  const { hours = [], from, until } = s.check
  const begins = from !== undefined && now !== undefined && now > from ? now : from
  const standing = inOrder(hours).findLast((h) => begins !== undefined && h.at <= begins)
  const counts = standing !== undefined && hoursLater(standing.at, begins ?? standing.at) < GAP_HOURS
  return inOrder(hours).filter(
    (h) =>
      (from === undefined || h.at >= from || (counts && h.at === standing.at)) &&
      (until === undefined || h.at <= until),
  )
}

/** Why the forecast of that day says nothing of what is begun at `now` ('15:00'); null where it looks so far, or is one hottest hour. */
export function forecastOver(
  { check: { hours = [], until, on } }: Sheet,
  day: string,
  now: string,
): string | null {
  const over = until ?? inOrder(hours).at(-1)?.at
  return over !== undefined && over < now && (on ?? day) === day
    ? `Work until ${over} is over: until when do you work now?`
    : null
}

/** What was forecast for this hour, where it is over the limit: said while it is open, for the morning was cool. */
export function hotByNow(
  { check: { hours = [], on } }: Sheet,
  limitC: number,
  shows: Shows,
  { today, now }: { today: string; now: string },
): string | null {
  const hour = inOrder(hours).findLast((h) => h.at <= now)
  return hour === undefined || on !== today || !hotterThan(hour.c, limitC)
    ? null
    : `${shows.temperature(hour.c)} from ${hour.at} on, as it was forecast, over the limit of ${shows.temperature(limitC)}`
}

/** Whether the planned hours stay at or under the limit. `now`: where something is still to be begun, the hour of `today` ('15:00'). */
export function heatOf(s: Sheet, limitC: number, shows: Shows, today: string, now?: string): Facts {
  const { hours = [], on, hottestC } = s.check
  const limit = shows.temperature(limitC)
  if (hours.length === 0 && hottestC === undefined)
    return { state: 'unsaid', why: `How hot does it get while you work? Above ${limit} nothing is cut out.` }
  // A job of more days, or one on another day than planned, is held to the forecast of today.
  if (on !== undefined && s.job.plannedOn !== undefined && on !== s.job.plannedOn && on !== today)
    return { state: 'unsaid', why: 'The forecast is for another day than the one planned.' }
  if (on !== undefined && on < today)
    return { state: 'unsaid', why: 'The forecast is of a day that is gone: look at today’s.' }
  const over = now === undefined ? null : forecastOver(s, today, now)
  if (over !== null) return { state: 'unsaid', why: over, moved: true }
  const coldest = Math.min(...(hours.length > 0 ? hours.map((h) => h.c) : [hottestC ?? limitC]))
  if (coldest < TOO_COLD_C) return { state: 'unmet', why: coldWords(coldest, shows) }
  if (hottestC !== undefined && hotterThan(hottestC, limitC))
    return {
      state: 'unmet',
      why: `${shows.temperature(hottestC)} while you work, over the limit of ${limit}. Begin earlier, another day, or refuse. ${LOSERS}`,
    }
  const under = hours.length > 0 ? hoursUnder(s, limitC, shows, now) : null
  if (under !== null && under.state !== 'met') return under
  if (on !== undefined && on > today)
    return { state: 'unsaid', why: 'The forecast is of a day that has not come: it counts on that day.' }
  if (under !== null) return under
  return { state: 'met', why: `Up to ${shows.temperature(hottestC ?? limitC)}; the limit is ${limit}.` }
}

/**
 * Colder than this nobody opens a nest (common practice), and 38 typed in a yard that writes °F is 3 °C: a slip of the unit
 * must not pass for a cool day.
 */
export const TOO_COLD_C = 8

export const coldWords = (c: number, shows: Shows): string =>
  `${shows.temperature(c)}: too cold to open a nest. Or was it typed in the other unit?`

const LOSERS = 'Bees, brood and people lose in the heat.'

function hoursUnder(s: Sheet, limitC: number, shows: Shows, now: string | undefined): Facts {
  const { hours = [], from, until } = s.check
  const limit = shows.temperature(limitC)
  const working = workingHours(s, now)
  const cooler = underLimit(hours, limitC)
  const instead =
    cooler.length === 0
      ? 'None of the hours typed in is under it: another day, or refuse.'
      : `At or under it: ${cooler.join(', ')}.`
  if (working.length === 0)
    return {
      state: 'unsaid',
      why: `No forecast hour falls between ${from ?? 'the start'} and ${until ?? 'the end'}.`,
    }
  const first = working.find((h) => hotterThan(h.c, limitC))
  if (first !== undefined)
    return {
      state: 'unmet',
      why: `${shows.temperature(first.c)} at ${first.at}, over the limit of ${limit}. ${instead} ${LOSERS}`,
    }
  const last = working.at(-1)
  // Six in the morning is cool anywhere.
  if (until === undefined && s.check.hottestC === undefined)
    return {
      state: 'unsaid',
      why: `Hours up to ${last?.at ?? ''} are no forecast of the whole work: type until when you work, or the hottest hour.`,
    }
  const long = s.agreement.hours ?? 0
  if (from !== undefined && until !== undefined && hoursLater(from, until) + GAP_HOURS < long)
    return {
      state: 'unsaid',
      why: `The work is agreed for ${long} hours, and the forecast looks at ${from} to ${until}.`,
    }
  if (until !== undefined && last !== undefined && hoursLater(last.at, until) > GAP_HOURS)
    return {
      state: 'unsaid',
      why: `The forecast ends at ${last.at}, the work at ${until}: type the hours between.`,
    }
  const gap = working.find((h, i) => i > 0 && hoursLater(working[i - 1]?.at ?? h.at, h.at) > GAP_HOURS)
  if (gap !== undefined && s.check.hottestC === undefined)
    return {
      state: 'unsaid',
      why: `Hours are missing before ${gap.at}: type those between, or the hottest one.`,
    }
  return { state: 'met', why: `Up to ${shows.temperature(hottest(working))}; the limit is ${limit}.` }
}

/** Hours from one time of the day to a later one. */
const hoursLater = (from: string, to: string): number => minutesFrom(from, to) / 60

const hottest = (hours: readonly ForecastHour[]): number => Math.max(...hours.map((h) => h.c))
