/**
 * What jobs earn, by kind: the customer's price and the price of the colony at move-out, against queens, frames, feed,
 * visits and days in the yard, these three at the yard's own costs. A job without a price is counted and left out, and what
 * is missing of the others is said.
 */

import { type Day, daysBetween } from '../../days.ts'
import type { Costs } from '../../decision/index.ts'
import { betaQuantile } from '../../statistics/index.ts'
import type { ColonyFacts, Spending } from '../../stays/index.ts'
import { plain } from '../../words/index.ts'

/** What work and place cost, in the yard's currency. */
export interface Rates {
  /** A visit to the box: way and time. */
  visit: number
  /** A day that the box stands in the yard. */
  day: number
  /** A frame of brood or comb given from another colony. */
  frame: number
}

/** The yard's costs of its decisions, taken for jobs: a visit is an opening, a frame one of brood. */
export const ratesOf = ({ opening, day, frame }: Costs): Rates => ({ visit: opening, day, frame })

/** One job, from the customer's price to the colony's leaving. */
export interface Job {
  type: string
  /** What the customer paid; null: not known. A job done for nothing has 0. */
  price: number | null
  /** What the colony brought at move-out; null when none was written down. */
  colonyPrice: number | null
  movedOut: boolean
  queens: number
  feed: number
  other: number
  frames: number
  visits: number
  days: number
  /** Queens and feed given without a price: what the job earned is less by as much. */
  unpriced: number
}

/** A job whose colony has left by a day; null while it is there. Prices come from the removal sheet and the move-out record. */
export function jobOf(
  { removalType, intakeOn, outcome }: ColonyFacts,
  { unpricedQueens, unpricedFeed, queens, feed, other, frames, visits }: Spending,
  asOf: Day,
  prices: { job: number | null; colony: number | null },
): Job | null {
  if (outcome === null || outcome.on === null || outcome.on > asOf) return null
  return {
    type: removalType,
    price: prices.job,
    colonyPrice: prices.colony,
    movedOut: outcome.what === 'moved-out',
    queens,
    feed,
    other,
    frames,
    visits,
    days: daysBetween(intakeOn, outcome.on),
    unpriced: unpricedQueens + unpricedFeed,
  }
}

/** Cost of a job, beside the removal itself. */
const costOf = (j: Job, rates: Rates): number =>
  j.queens + j.feed + j.other + j.frames * rates.frame + j.visits * rates.visit + j.days * rates.day

export interface Earned {
  type: string
  /** Jobs with a price whose colony has left: what everything below rests on. */
  jobs: number
  /** Jobs whose colony has left, without a price: not in it. */
  withoutPrice: number
  /** Of `jobs`, moved out. */
  movedOut: number
  /** Mean a job. */
  price: number
  colonyPrice: number
  cost: number
  earned: number
  /** 95 % limits of the mean earned a job (Student's t); null for fewer than {@link FEWEST_JOBS}. */
  lower: number | null
  upper: number | null
  /** Queens and feed without a price, in all these jobs. */
  unpriced: number
  /** Moved out, and nobody wrote down what the colony brought: counted as nothing. */
  colonyUnpriced: number
}

/** With fewer jobs their spread is not known well enough for limits (our choice, as elsewhere in the review). */
export const FEWEST_JOBS = 10

/** What jobs earned by kind, the kinds with the most jobs first; a kind without a single price has 0 jobs. */
export function earnedByType(jobs: readonly Job[], rates: Rates): Earned[] {
  return [...new Set(jobs.map((j) => j.type))]
    .map((type) =>
      earnedIn(
        type,
        jobs.filter((j) => j.type === type),
        rates,
      ),
    )
    .sort((a, b) => b.jobs - a.jobs || (a.type < b.type ? -1 : 1))
}

function earnedIn(type: string, all: readonly Job[], rates: Rates): Earned {
  const jobs = all.filter((j) => j.price !== null)
  const mean = (of: (j: Job) => number): number =>
    jobs.length === 0 ? 0 : jobs.reduce((sum, j) => sum + of(j), 0) / jobs.length
  const earnedOf = (j: Job): number => (j.price ?? 0) + (j.colonyPrice ?? 0) - costOf(j, rates)
  const earned = mean(earnedOf)
  const variance = jobs.reduce((sum, j) => sum + (earnedOf(j) - earned) ** 2, 0) / (jobs.length - 1)
  const half =
    jobs.length < FEWEST_JOBS ? null : studentFor(0.95, jobs.length - 1) * Math.sqrt(variance / jobs.length)
  return {
    type,
    jobs: jobs.length,
    withoutPrice: all.length - jobs.length,
    movedOut: jobs.filter((j) => j.movedOut).length,
    price: mean((j) => j.price ?? 0),
    colonyPrice: mean((j) => j.colonyPrice ?? 0),
    cost: mean((j) => costOf(j, rates)),
    earned,
    lower: half === null ? null : earned - half,
    upper: half === null ? null : earned + half,
    unpriced: jobs.reduce((sum, j) => sum + j.unpriced, 0),
    colonyUnpriced: jobs.filter((j) => j.movedOut && j.colonyPrice === null).length,
  }
}

/** Student's t for a two-sided confidence level. Example: studentFor(0.95, 10) = 2.228 (any printed table). */
export function studentFor(confidence: number, df: number): number {
  // t² / (t² + df) is Beta(1/2, df/2).
  const x = betaQuantile(confidence, 0.5, df / 2)
  return Math.sqrt((df * x) / (1 - x))
}

const sum = (n: number, currency: string): string => `${n < 0 ? '-' : ''}${currency}${Math.abs(n).toFixed(0)}`

/** Example: 'Costs are queens and feed as written down, $4 a visit, $1 a day in the yard, $15 a frame given without a price.' */
export const ratesReading = (r: Rates, currency: string): string =>
  `Costs are queens and feed as written down, ${currency}${plain(r.visit)} a visit, ${currency}${plain(r.day)} a day in the yard, ${currency}${plain(r.frame)} a frame given without a price.`

/**
 * Example: 'A wall job earned $412 on average over 23 jobs ($310 to $514): $480 from the customer and $95 for the colony,
 * less $163. Not in it: 4 jobs without a price.'
 */
export function earnedReading(e: Earned, typeWords: string, currency: string): string {
  const missing = [
    e.withoutPrice > 0 ? `${e.withoutPrice} ${e.withoutPrice === 1 ? 'job' : 'jobs'} without a price` : '',
    e.unpriced > 0
      ? `${e.unpriced} ${e.unpriced === 1 ? 'queen or feed' : 'queens or feeds'} without a price`
      : '',
    e.colonyUnpriced > 0
      ? `what ${e.colonyUnpriced} ${e.colonyUnpriced === 1 ? 'colony' : 'colonies'} that moved out brought`
      : '',
  ].filter(Boolean)
  const note = missing.length > 0 ? ` Not in it: ${missing.join(', ')}.` : ''
  if (e.jobs === 0) return `No ${typeWords} job that is over has a price.${note}`
  const range =
    e.lower === null || e.upper === null
      ? ', too few to foretell the next'
      : ` (${sum(e.lower, currency)} to ${sum(e.upper, currency)})`
  const over = `over ${e.jobs} ${e.jobs === 1 ? 'job' : 'jobs'}`
  return `A ${typeWords} job earned ${sum(e.earned, currency)} on average ${over}${range}: ${sum(e.price, currency)} from the customer and ${sum(e.colonyPrice, currency)} for the colony, less ${sum(e.cost, currency)}.${note}`
}

/**
 * Which kinds earn most and least, among those with enough jobs to have limits. Example: 'Earns most: wall, $526 a job ($491 to
 * $562, 41 jobs); least: swarm, $80 ($52 to $108, 14 jobs).' '' where none has enough.
 */
export function earnsMostReading(
  all: readonly Earned[],
  nameOf: (type: string) => string,
  currency: string,
): string {
  const known = all.filter((e) => e.lower !== null).sort((a, b) => b.earned - a.earned)
  const [most, least] = [known[0], known.at(-1)]
  if (most === undefined || least === undefined) return ''
  const said = (e: Earned, first: boolean): string =>
    `${nameOf(e.type)}, ${sum(e.earned, currency)}${first ? ' a job' : ''} (${sum(e.lower ?? 0, currency)} to ${sum(e.upper ?? 0, currency)}, ${e.jobs} jobs)`
  return `Earns most: ${said(most, true)}${most === least ? '' : `; least: ${said(least, false)}`}.`
}
