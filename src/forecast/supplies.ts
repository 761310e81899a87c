/** Queens and frames of eggs the whole yard is likely to need by each date, and how many to order. */
import { addDays, type Day } from '../days.ts'
import { enoughFor, meanOf, moreThan, poissonBinomial, quantile } from './poisson-binomial.ts'
import type { Story } from './queen-odds.ts'
import type { Rates } from './rates.ts'
import { KINDS, kindOf } from './story/kinds.ts'
import { Q, STATE } from './story/state.ts'

/** A colony's chance of having come to need one by each of the coming days; index 0 is today. Never falls. */
export interface ColonyNeed {
  tag: string
  queens: number[]
  eggFrames: number[]
}

/** Days after a frame of eggs until it is known that no cells, or none that hold, came of it; and that her daughter failed. Common practice: read by day 8; a virgin's last day is four to five weeks off. */
const EGG_FRAME_READ = 10
const VIRGIN_GIVEN_UP = 33

/** Chance that a frame of eggs leads nowhere by its reading, and later. About 0.92 of colonies begin a cell within six days. */
function eggFrameFails(rates: Rates): { soon: number; late: number } {
  const begins = 1 - (1 - rates.cellStartPerDay) ** 6
  const emerges = begins * rates.cellEmerges
  return { soon: 1 - emerges, late: emerges * (1 - rates.virginLays) }
}

const QUEENLESS = KINDS.indexOf('queenless')

/** Chance by day ahead that the colony is queenless with nothing to raise a queen from, or sits with a virgin too old. */
function hopeless(story: Story, ahead: number): number[] {
  const out: number[] = []
  let most = 0
  for (let d = 0; d <= ahead; d++) {
    const [shares, day] = [story.walk.byDay[story.t + d], story.days[story.t + d]]
    if (shares !== undefined && day !== undefined) {
      let now = 0
      for (let i = 0; i < shares.states.length; i++) {
        const s = STATE[shares.states[i] ?? 0]
        if (s === undefined) continue
        const nothing = s.stage === Q.none && kindOf(s, day.around) === QUEENLESS
        if (nothing || (s.stage === Q.virgin && s.age > 28)) now += shares.w[i] ?? 0
      }
      most = Math.max(most, Math.min(1, now))
    }
    out.push(most)
  }
  return out
}

export interface NeedOptions {
  /** Days ahead. */
  ahead: number
  /** A queen is bought at once, without a frame of eggs first (season, strength or time rule it out). */
  straightToQueen?: boolean
}

/**
 * What a colony may come to need. The ladder: a frame of eggs first, a bought queen when that has failed. One that has
 * had its frame of eggs needs a queen next. Laying workers are united, not given a queen. Nothing for a colony that left.
 */
export function needOf(story: Story, { ahead, straightToQueen = false }: NeedOptions): ColonyNeed {
  const { tag } = story.history
  const none = new Array<number>(ahead + 1).fill(0)
  if (story.history.outcome !== null && story.history.outcome.on <= story.today)
    return { tag, queens: none, eggFrames: none }
  const need = hopeless(story, ahead)
  const had = story.history.entries.some(
    (e) => e.kind === 'given' && (e.what === 'egg-frame' || e.what === 'mated-queen') && e.on <= story.today,
  )
  if (had || straightToQueen) return { tag, queens: need, eggFrames: none }
  const { soon, late } = eggFrameFails(story.model.rates)
  const queens = need.map(
    (_, d) => soon * (need[d - EGG_FRAME_READ] ?? 0) + late * (need[d - VIRGIN_GIVEN_UP] ?? 0),
  )
  return { tag, queens, eggFrames: need }
}

/** How many may be needed by a day. */
export interface NeedByDay {
  day: Day
  /** Chance of needing exactly 0, 1, 2, … */
  chances: Float64Array
  expected: number
  /** Half the time no more than this; nine times in ten no more than that. */
  median: number
  ninety: number
}

export interface SupplyForecast {
  queens: NeedByDay[]
  eggFrames: NeedByDay[]
}

function byDay(needs: readonly (readonly number[])[], today: Day, ahead: number): NeedByDay[] {
  return Array.from({ length: ahead + 1 }, (_, d) => {
    const chances = poissonBinomial(needs.map((n) => n[d] ?? 0).filter((p) => p > 0))
    return {
      day: addDays(today, d),
      chances,
      expected: meanOf(chances),
      median: quantile(chances, 0.5),
      ninety: quantile(chances, 0.9),
    }
  })
}

/** The whole yard's needs by each coming day. Colonies count as independent: a bad week for mating makes the spread wider than stated. */
export function supplyForecast(needs: readonly ColonyNeed[], today: Day, ahead: number): SupplyForecast {
  return {
    queens: byDay(
      needs.map((n) => n.queens),
      today,
      ahead,
    ),
    eggFrames: byDay(
      needs.map((n) => n.eggFrames),
      today,
      ahead,
    ),
  }
}

export interface OrderOptions {
  /** Days from order to arrival. */
  leadDays: number
  /** Days the order must last after it arrives, until the next could. */
  coverDays: number
  /** Chance of running short that is accepted. */
  chanceShort: number
  /** Queens already on hand or on the way. */
  inHand: number
  /** Cost of one queen too many, and of one too few (a colony set back or lost), in the yard's money. */
  costOver: number
  costShort: number
}

/** Judgement: five days to deliver, a week to last, one chance in ten of running short; a queen costs 35, a colony without one 150. */
export const DEFAULT_ORDER: OrderOptions = {
  leadDays: 5,
  coverDays: 7,
  chanceShort: 0.1,
  inHand: 0,
  costOver: 35,
  costShort: 150,
}

interface OrderRow {
  /** Queens to order. */
  order: number
  chanceShort: number
  /** Expected number missing, and left over. */
  short: number
  over: number
  /** Expected cost of both. */
  cost: number
}

export interface OrderAdvice {
  /** Needs through this day are covered. */
  until: Day
  /** Smallest order that keeps the accepted chance of running short. */
  order: number
  /** The cheapest order, given the two costs. */
  cheapest: number
  rows: OrderRow[]
  sentence: string
}

function rowFor(chances: Float64Array, order: number, o: OrderOptions): OrderRow {
  const have = order + o.inHand
  let [short, over] = [0, 0]
  chances.forEach((p, k) => {
    if (k > have) short += p * (k - have)
    else over += p * (have - k)
  })
  return {
    order,
    chanceShort: moreThan(chances, have),
    short,
    over,
    cost: short * o.costShort + over * o.costOver,
  }
}

const percent = (p: number): string =>
  p < 0.005 ? 'under 1 %' : p > 0.995 ? 'over 99 %' : `${Math.round(p * 100)} %`

/** How many queens to order today. Too many cost their price; too few cost a colony its chance. */
export function orderAdvice(
  queens: readonly NeedByDay[],
  options: OrderOptions = DEFAULT_ORDER,
): OrderAdvice {
  const at = queens[Math.min(queens.length - 1, options.leadDays + options.coverDays)]
  if (at === undefined) throw new RangeError('orderAdvice: the forecast holds no day')
  const order = Math.max(0, enoughFor(at.chances, options.chanceShort) - options.inHand)
  const most = Math.max(order, quantile(at.chances, 0.999) - options.inHand, 0) + 1
  const rows = Array.from({ length: most + 1 }, (_, n) => rowFor(at.chances, n, options))
  const cheapest = rows.reduce((best, r) => (r.cost < best.cost - 1e-9 ? r : best)).order
  const risk = rows[order]?.chanceShort ?? 0
  const queensWord = order === 1 ? '1 queen' : `${order} queens`
  const sentence =
    order === 0
      ? `No need to order: the chance of running short is ${percent(risk)}.`
      : `Order ${queensWord}: the chance of running short is then ${percent(risk)}.`
  return { until: at.day, order, cheapest, rows, sentence }
}
