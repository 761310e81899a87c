/** Health in words: washes and what they can tell, what changed, pests, feed. */

import { framesWords, plain, type Units, volume, type Words, weight, wordsIn } from '../../words/index.ts'
import { type Feed, type Need, SUGAR_PER_COMB_KG } from './feed.ts'
import type { Trend, Wash } from './mites.ts'
import type { Watch } from './watch.ts'

const ENGLISH = wordsIn('en')

const per100 = (n: number): string => plain(n, 1)

/** '2.7 per 100 bees (1.4 to 5.2)' */
export const rateWords = (w: Wash, { health }: Words = ENGLISH): string =>
  health.mites.rate(per100(w.rate), per100(w.lower), per100(w.upper))

/** The same in a column of its own: '2.7 (1.4 to 5.2)'. */
export const shortRate = (w: Wash, { likely }: Words): string =>
  `${per100(w.rate)} (${likely.strength.range(per100(w.lower), per100(w.upper))})`

/** The count against the threshold of its month, what the sample can tell, and what to do. */
export function standsWords(w: Wash, { health: { mites: said } }: Words = ENGLISH): string {
  const threshold = plain(w.threshold)
  const few = w.small ? said.few(w.bees) : ''
  switch (w.stands) {
    case 'over':
      return `${said.over(threshold)}${few}`
    case 'under':
      return `${said.under(threshold)}${few}`
    case 'either':
      return `${isOver(w) ? said.countOver(threshold, w.rate === w.threshold) : said.countUnder(threshold)}${few}`
  }
}

/** By the count alone. At the threshold is over it, as in the rules for moving out. */
const isOver = (w: Wash): boolean => w.rate >= w.threshold

/** The same after a rate, in a few words. */
export function standsShort(w: Wash, { health }: Words = ENGLISH): string {
  const { over, under, countOver, countUnder } = health.mites.short
  switch (w.stands) {
    case 'over':
      return over
    case 'under':
      return under
    case 'either':
      return isOver(w) ? countOver : countUnder
  }
}

/** What changed since the wash before. Never more sure than the limits are. */
export function trendWords(t: Trend, today: string, { dates, health: { mites: said } }: Words): string {
  const since = said.since(dates.day(t.from.on, today), t.days)
  const change = said.change(
    `${t.change >= 0 ? '+' : '−'}${per100(Math.abs(t.change))}`,
    signed(t.lower),
    signed(t.upper),
  )
  switch (t.is) {
    case 'rising':
      return `${said.rising(since, change)}${t.doublesIn === null ? '' : said.doubles(Math.round(t.doublesIn))}`
    case 'falling':
      return said.falling(since, change)
    case 'unclear':
      return said.unclear(since, change)
  }
}

const signed = (n: number): string => `${n < 0 ? '−' : '+'}${per100(Math.abs(n))}`

export function watchWords(w: Watch, today: string, { dates, health: { pests: said } }: Words): string {
  const day = (on: string | null): string => dates.day(on ?? today, today)
  switch (w.stands) {
    case 'not-looked':
      return said.notLooked
    case 'clear':
      return said.clear(day(w.lastLooked))
    case 'gone':
      return said.gone(w.timesSeen, day(w.lastSeen), day(w.lastLooked))
    case 'seen':
      return said.seen(day(w.lastSeen), w.late, dates.dayAndDistance(w.lookAgainBy ?? today, today))
  }
}

export function feedWords(f: Feed, units: Units, w: Words): string {
  const said = w.health.feed
  const amount = [
    f.litres === null ? '' : volume(f.litres, units, 2, w),
    f.kg === null ? '' : weight(f.kg, units),
  ].filter(Boolean)
  const what =
    f.what === 'pollen' ? said.pollen : `${said.syrup}${f.strength === null ? '' : ` ${f.strength}`}`
  return `${amount.length === 0 ? said.noAmount : amount.join(said.and)}, ${f.product ?? what}`
}

/** 'about 0.9 kg of sugar a week: 1.4 litres of 1:1 syrup, or 1 litre of 2:1', as an estimate. */
export const needWords = (n: Need, units: Units, w: Words): string =>
  w.health.feed.need(
    weight(n.sugarKgAWeek, units),
    volume(n.litres['1:1'], units, 1, w),
    volume(n.litres['2:1'], units, 1, w),
  )

export function needBasis(n: Need, today: string, w: Words): string {
  const said = w.health.feed
  const brood = n.brood === null ? said.noBrood : said.ofBrood(framesWords(n.brood, w))
  return said.basis(framesWords(n.frames, w), brood, w.dates.day(n.countedOn, today), n.stale)
}

export const combWords = (units: Units, { health }: Words): string =>
  health.feed.comb(weight(SUGAR_PER_COMB_KG, units))
