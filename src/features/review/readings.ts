/**
 * One sentence a statistic, in plain words. They say what the numbers can carry and no more: what goes together, never
 * what causes what, and with few colonies what cannot be concluded. A curve reckons what would be had every colony
 * stayed; most move out, so its readings say "would", and leave "were" to the plain counts (fates.ts).
 */

import { coveredDays, restrictedMean, type ThinDay } from '../../statistics/index.ts'
import { FEW, percent, percentRange } from '../../words/index.ts'
import type { ShareAlive, TypeOnDay } from './comparison.ts'
import type { GroupReview } from './review.ts'

/** Below this many, limits are wide enough to need the reminder (our choice). */
const SMALL = 100

const SMALL_NUMBERS = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine']
const counted = (n: number): string => SMALL_NUMBERS[n] ?? String(n)
/** '41 wall colonies', '1 wall colony'; `name` may be empty. */
export const coloniesOf = (n: number, name: string): string =>
  `${n} ${name === '' ? '' : `${name} `}${n === 1 ? 'colony' : 'colonies'}`

const tooFew = (n: number): string =>
  `${counted(n)} ${n === 1 ? 'colony is' : 'colonies are'} too few to say how the next will fare, or to rank them against others.`

/** Said wherever a curve is drawn or read on more than one day. */
export const CURVE_CAUTION =
  'Strong colonies are the ones that move out. So after the hold the curve tells of those that had to stay, and looks worse than the colonies were as a whole. Compare by the figure at day 30.'

/**
 * Survival on a day. Example: 'Of 41 wall colonies, an estimated 78 % were alive at day 30; with numbers this small the true
 * figure could be 62 to 88 %.'
 */
export function aliveReading(name: string, day: number, s: ShareAlive): string {
  if (s.colonies === 0) return `No ${name === '' ? '' : `${name} `}colonies yet.`
  if (s.thin !== null) return thinReading(name, day, s.colonies, s.thin)
  if (s.survival === null)
    return `None of ${coloniesOf(s.colonies, name)} has been followed to day ${day} yet, so nothing can be said of that day.`
  const lead = aliveLead(name, day, s.colonies, s.survival)
  if (s.lower === null || s.upper === null) return `${lead}.`
  const range = percentRange(s.lower, s.upper)
  const figure = s.survival === 0 || s.survival === 1 ? 'true share alive' : 'true figure'
  if (s.colonies < FEW) return `${lead}, but the ${figure} could be ${range}. ${tooFew(s.colonies)}`
  return s.colonies < SMALL
    ? `${lead}; with numbers this small the ${figure} could be ${range}.`
    : `${lead}; the ${figure} is likely ${range}.`
}

/**
 * One lost out of a handful, the others entered later. Example: 'Of 12 wall colonies only 1 was followed on day 2, when one
 * was lost; the others were entered later. Nothing can be said of day 30 from so few.'
 */
export const thinReading = (
  name: string,
  day: number,
  colonies: number,
  { day: on, atRisk }: ThinDay,
): string =>
  `Of ${coloniesOf(colonies, name)} only ${atRisk} ${atRisk === 1 ? 'was' : 'were'} followed on day ${on}, when ${atRisk === 1 ? 'it was lost' : 'one was lost'}; the others were entered later. Nothing can be said of day ${day} from so few.`

function aliveLead(name: string, day: number, n: number, survival: number): string {
  // Nobody lost, or nobody left to lose, is a plain fact, whoever moved out before.
  if (survival === 1) return `None of ${coloniesOf(n, name)} was lost by day ${day}`
  if (survival === 0)
    return `Of ${coloniesOf(n, name)}, all that did not leave before were lost by day ${day}`
  // An estimate: colonies that left the yard before are counted up to the day they left.
  return `Of ${coloniesOf(n, name)}, an estimated ${percent(survival)} were alive at day ${day}`
}

/** The median. Example: 'Had all stayed that long, about half of the wall colonies would be lost by day 47 (day 31 to 80).' */
export function medianReading(
  name: string,
  g: Pick<GroupReview, 'colonies' | 'median'>,
  thin: ThinDay | null = null,
): string {
  const whose = name === '' ? 'the colonies' : `the ${name} colonies`
  const { day, lower, upper } = g.median
  if (g.colonies === 0) return `No ${name === '' ? '' : `${name} `}colonies yet.`
  if (thin !== null && (day === null || thin.day <= day))
    return `No day can be named by which half of ${whose} would be lost: on day ${thin.day} only ${thin.atRisk} ${thin.atRisk === 1 ? 'was' : 'were'} followed.`
  if (day === null)
    return `As long as ${whose} were followed, the curve does not come down to half: no day can be named by which half would be lost.`
  const range =
    lower === null && upper === null
      ? ''
      : upper === null
        ? ` (day ${lower} or later)`
        : ` (day ${lower ?? 0} to ${upper})`
  const caution = g.colonies < FEW ? ` ${tooFew(g.colonies)}` : ''
  return `Had all stayed that long, about half of ${whose} would be lost by day ${day}${range}.${caution}`
}

/**
 * The restricted mean, over the days the curve covers and no more: beyond its end it would only be drawn on.
 * Example: 'Of its first 60 days, a wall colony that stays would live 51.3 on average, by the same estimate.'
 */
export function meanReading(name: string, days: number, g: Pick<GroupReview, 'colonies' | 'steps'>): string {
  if (g.colonies === 0) return `No ${name === '' ? '' : `${name} `}colonies yet.`
  const covered = coveredDays(g, days)
  if (covered < 1) return 'No colony has been followed for a whole day yet.'
  const { mean } = restrictedMean(g, covered)
  const short = covered < days ? ' (none was followed longer)' : ''
  return `Of its first ${covered} days${short}, a ${name === '' ? '' : `${name} `}colony that stays would live ${mean.toFixed(1)} on average, by the same estimate.`
}

/** Chance in words: 'p = 0.003', 'p below 0.001'. */
export const chance = (p: number): string =>
  p < 0.001 ? 'p below 0.001' : `p = ${p < 0.1 ? p.toFixed(3) : p.toFixed(2)}`

/** The log-rank test over removal types. `smallest`: colonies of the smallest group. */
export function logRankReading(test: { p: number } | null, smallest: number): string {
  if (test === null) return 'There are not two types of ten colonies or more to compare yet.'
  const few = smallest < FEW ? ' Types with fewer than ten colonies are left out of this.' : ''
  return test.p < 0.05
    ? `The types were lost at different rates, more so than chance alone would often make them (${chance(test.p)}); why they differ, these numbers cannot say.${few}`
    : `These numbers do not show that the types differ (${chance(test.p)}); that is not proof that they are alike.${few}`
}

/**
 * Ways of leaving by a day. Those that moved out are counted up to the day they did, so this is an estimate as well.
 * Example: 'Had none moved out, by day 60 an estimated 12 % would have died, 5 % absconded and 3 % been united.'
 */
export function waysReading(
  name: string,
  day: number,
  g: Pick<GroupReview, 'colonies' | 'waysOfLeaving'>,
): string {
  if (g.colonies === 0) return `No ${name === '' ? '' : `${name} `}colonies yet.`
  const row = g.waysOfLeaving.findLast((r) => r.day <= day)
  const last = g.waysOfLeaving.at(-1)?.day ?? 0
  const by = last < day ? `day ${last}, the last day anyone was followed,` : `day ${day}`
  const [died, absconded, united] = [row?.died ?? 0, row?.absconded ?? 0, row?.united ?? 0]
  const whose = name === '' ? '' : ` of ${name} colonies`
  const caution = g.colonies < FEW ? ` ${tooFew(g.colonies)}` : ''
  return `Had none moved out, by ${by} an estimated ${percent(died)}${whose} would have died, ${percent(absconded)} absconded and ${percent(united)} been united.${caution}`
}

const numberRange = ([least, most]: readonly [number, number]): string =>
  least === most ? String(least) : `${least} to ${most}`

/**
 * A type after pooling. Example: 'Leaning on all types, expect 81 % of trap-out colonies that stay to be alive at day 30 (58 to 94 %), 5 to
 * 10 of the next ten; by itself the type shows 100 % on 2 colonies, too few to rank it.'
 */
export function pooledReading(day: number, t: TypeOnDay): string {
  if (t.pooled === null) return 'There is no second type to lean on yet.'
  const { share, lower, upper, ofNextTen } = t.pooled
  const shown = t.survival === null ? 'has not been followed that long' : `shows ${percent(t.survival)}`
  return `Leaning on all types, expect ${percent(share)} of ${t.name} colonies that stay to be alive at day ${day} (${percentRange(lower, upper)}), ${numberRange(ofNextTen)} of the next ten; by itself the type ${shown} on ${coloniesOf(t.colonies, '')}${t.colonies < FEW ? ', too few to rank it' : ''}.`
}
