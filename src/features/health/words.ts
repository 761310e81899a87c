/** Health in words: washes and what they can tell, what changed, pests, feed. */

import {
  dayAndDistance,
  dayWords,
  framesWords,
  plain,
  type Units,
  volume,
  weight,
} from '../../words/index.ts'
import { type Feed, type Need, SUGAR_PER_COMB_KG } from './feed.ts'
import type { Trend, Wash } from './mites.ts'
import type { Watch, Watched } from './watch.ts'

const per100 = (n: number): string => plain(n, 1)

/** '2.7 per 100 bees (1.4 to 5.2)' */
export const rateWords = (w: Wash): string =>
  `${per100(w.rate)} per 100 bees (${per100(w.lower)} to ${per100(w.upper)})`

/** What to do at once about a count over the threshold, whatever its limits: a wash costs less than a colony. */
const WASH_OR_TREAT = 'wash again, or treat (the label is the law)'
const TREAT = 'treat (the label is the law), then wash again'

/** The count against the threshold of its month, what the sample can tell, and what to do. */
export function standsWords(w: Wash): string {
  const threshold = `the threshold of ${plain(w.threshold)} per 100`
  const few = w.small ? ` ${w.bees} bees are few: half a cup, about 300, tells more.` : ''
  switch (w.stands) {
    case 'over':
      return `Over ${threshold}, even at the lower limit: ${TREAT}.${few}`
    case 'under':
      return `Under ${threshold}, even at the upper limit.${few}`
    case 'either':
      return isOver(w)
        ? `${w.rate > w.threshold ? 'Over' : 'At'} ${threshold} by the count: ${WASH_OR_TREAT}. The sample leaves room for chance.${few}`
        : `Under ${threshold} by the count, but the sample is too small to be sure: wash again.${few}`
  }
}

/** By the count alone. At the threshold is over it, as in the rules for moving out. */
const isOver = (w: Wash): boolean => w.rate >= w.threshold

/** The same after a rate, in a few words. */
export function standsShort(w: Wash): string {
  switch (w.stands) {
    case 'over':
      return `over the threshold: ${TREAT}`
    case 'under':
      return 'under the threshold'
    case 'either':
      return isOver(w)
        ? `over the threshold by the count: ${WASH_OR_TREAT}`
        : 'under the threshold by the count, not for sure: wash again'
  }
}

/** What changed since the wash before. Never more sure than the limits are. */
export function trendWords(t: Trend, today: string): string {
  const since = `since ${dayWords(t.from.on, today)}, ${t.days} ${t.days === 1 ? 'day' : 'days'} before`
  const change = `${t.change >= 0 ? '+' : '−'}${per100(Math.abs(t.change))} per 100 (${signed(t.lower)} to ${signed(t.upper)})`
  switch (t.is) {
    case 'rising':
      return `More mites ${since}: ${change}.${t.doublesIn === null ? '' : ` At this pace they double about every ${Math.round(t.doublesIn)} days.`}`
    case 'falling':
      return `Fewer mites ${since}: ${change}.`
    case 'unclear':
      return `No clear change ${since}: ${change} can be chance.`
  }
}

const signed = (n: number): string => `${n < 0 ? '−' : '+'}${per100(Math.abs(n))}`

export const WATCH_NAMES: Record<Watched, string> = {
  beetles: 'Hive beetles',
  moths: 'Wax moth',
  robbing: 'Robbing',
}

export function watchWords(w: Watch, today: string): string {
  switch (w.stands) {
    case 'not-looked':
      return 'Nobody has noted the signs of trouble yet.'
    case 'clear':
      return `Looked for, never seen; last ${dayWords(w.lastLooked ?? today, today)}.`
    case 'gone':
      return `Seen ${w.timesSeen === 1 ? 'once' : `${w.timesSeen} times`}, last ${dayWords(w.lastSeen ?? today, today)}; not at the last look, ${dayWords(w.lastLooked ?? today, today)}.`
    case 'seen':
      return `Seen ${dayWords(w.lastSeen ?? today, today)}. Look again ${w.late ? 'now: it was due' : 'by'} ${dayAndDistance(w.lookAgainBy ?? today, today)}.`
  }
}

export function feedWords(f: Feed, units: Units): string {
  const amount = [
    f.litres === null ? '' : volume(f.litres, units),
    f.kg === null ? '' : weight(f.kg, units),
  ].filter(Boolean)
  const what = f.what === 'pollen' ? 'pollen' : `syrup${f.strength === null ? '' : ` ${f.strength}`}`
  return `${amount.length === 0 ? 'no amount noted' : amount.join(' and ')}, ${f.product ?? what}`
}

/** 'about 0.9 kg of sugar a week: 1.4 litres of 1:1 syrup, or 1 litre of 2:1', as an estimate. */
export const needWords = (n: Need, units: Units): string =>
  `about ${weight(n.sugarKgAWeek, units)} of sugar a week: ${volume(n.litres['1:1'], units, 1)} of 1:1 syrup, or ${volume(n.litres['2:1'], units, 1)} of 2:1`

export function needBasis(n: Need, today: string): string {
  const brood = n.brood === null ? 'without brood, which nobody counted' : `${framesWords(n.brood)} of brood`
  return `Reckoned from ${framesWords(n.frames)} of bees, ${brood}, counted ${dayWords(n.countedOn, today)}${n.stale ? ', which is long ago: count again' : ''}.`
}

export const combWords = (units: Units): string =>
  `Each deep frame of comb they still have to build costs about ${weight(SUGAR_PER_COMB_KG, units)} more.`
