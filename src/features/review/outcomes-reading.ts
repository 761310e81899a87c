/** Sentences for what became of colonies: the answer of the review, before any curve of survival in the yard. */

import { holm, smallestDifference } from '../../statistics/index.ts'
import { FEW, percent, percentRange } from '../../words/index.ts'
import type { OutcomesOnDay, Share, TypesTest } from './outcomes.ts'
import { chance, coloniesOf, thinReading } from './readings.ts'

/** Types told one by one; the others stand in the table. More sentences than this nobody reads. */
export const MOST_TOLD = 5

const withLimits = ({ share, lower, upper }: Share): string =>
  lower === null || upper === null ? percent(share) : `${percent(share)} (${percentRange(lower, upper)})`

/**
 * Example: 'By day 60 an estimated 41 % of 45 wall colonies had moved out (28 to 55 %), 33 % were lost (21 to 49 %), 4 % were
 * united, and 20 % were still here.'
 */
export function outcomesReading(name: string, o: OutcomesOnDay): string {
  if (o.colonies === 0) return `No ${name === '' ? '' : `${name} `}colonies yet.`
  if (o.thin !== null) return thinReading(name, o.day, o.colonies, o.thin)
  if (o.shares === null)
    return `None of ${coloniesOf(o.colonies, name)} has been followed to day ${o.day} yet, so nothing can be said of that day.`
  const { movedOut, lost, united, other, unknown, stillHere } = o.shares
  const rest = [
    united.share > 0 ? `${percent(united.share)} were united` : '',
    other.share > 0 ? `${percent(other.share)} left otherwise` : '',
    unknown !== undefined && unknown.share > 0 ? `${percent(unknown.share)} left, nobody knows how` : '',
  ].filter(Boolean)
  const few = o.colonies < FEW ? ' Too few to rank them against others.' : ''
  const parts = [
    `an estimated ${withLimits(movedOut)} of ${coloniesOf(o.colonies, name)} had moved out`,
    `${withLimits(lost)} were lost`,
    ...rest,
  ]
  return `By day ${o.day} ${parts.join(', ')}, and ${percent(stillHere.share)} were still here.${few}`
}

/** Which group ended best on a day and which worst, by how many moved out; the groups best first. Example: see bestReading's test. */
export function bestReading([best, ...others]: readonly { name: string; on: OutcomesOnDay }[]): string {
  const worst = others.at(-1)
  const [good, bad] = [best?.on.shares, worst?.on.shares]
  if (best === undefined || worst === undefined || good == null || bad == null) return ''
  return `Best: ${best.name}, ${withLimits(good.movedOut)} of ${best.on.colonies} moved out by day ${best.on.day}, ${percent(good.lost.share)} lost. Worst: ${worst.name}, ${withLimits(bad.movedOut)} of ${worst.on.colonies}, ${percent(bad.lost.share)} lost.`
}

/** In a table: '41 % (28 to 55)'; a dash where nothing can be said. */
export const outcomeCell = (s: Share | undefined): string => (s === undefined ? '-' : withLimits(s))

const ABOUT: Partial<Record<TypesTest['outcome'], string>> = {
  'moved-out': 'how many moved out',
  lost: 'how many were lost',
}

/**
 * The two tests that are read, with Holm's adjustment for being two. `what`: the groups compared. Example: 'Chance alone would
 * seldom make the types differ so much in how many moved out (p = 0.003), but often enough in how many were lost (p = 0.21).'
 */
export function typesTestsReading(tests: readonly TypesTest[], what = 'types'): string {
  const read = tests.flatMap(({ outcome, p }) => {
    const about = ABOUT[outcome]
    return about === undefined || p === null ? [] : [{ about, p }]
  })
  if (read.length === 0) return `There are not two ${what} of ten colonies or more to compare yet.`
  const adjusted = holm(read.map((t) => t.p))
  const said = (differ: boolean): string[] =>
    read.flatMap(({ about }, i) => {
      const p = adjusted[i] ?? 1
      return p < 0.05 === differ ? [`${about} (${chance(p)})`] : []
    })
  const [shown, unshown] = [said(true), said(false)]
  const chanceAlone = (how: string) => `Chance alone would ${how} make the ${what} differ so much in`
  if (shown.length === 0)
    return `${chanceAlone('often enough')} ${unshown.join(' and in ')}; that does not prove them alike.`
  const rest = unshown.length === 0 ? '' : `, but often enough in ${unshown.join(' and in ')}`
  return `${chanceAlone('seldom')} ${shown.join(' and in ')}${rest}.`
}

/** A group whose share is known, for {@link smallestDifferenceReading}. */
export interface Sized {
  name: string
  known: number
  share: number
}

/**
 * What could have been found at all, between the two largest groups. Example: 'With 45 wall and 30 swarm colonies, only a
 * difference as large as 41 % against 12 % or 74 % would be found four times in five.'
 */
export function smallestDifferenceReading([first, second]: readonly Sized[]): string {
  if (first === undefined || second === undefined) return ''
  const { below, above } = smallestDifference(first.share, first.known, second.known)
  const lead = `With ${first.known} ${first.name} and ${second.known} ${second.name} colonies`
  const others = [below, above].flatMap((s) => (s === null ? [] : [percent(s)]))
  return others.length === 0
    ? `${lead}, no difference however large would be found four times in five.`
    : `${lead}, only a difference as large as ${percent(first.share)} against ${others.join(' or ')} would be found four times in five.`
}

/** Those that left on a day nobody wrote down. */
export const withoutDayReading = (n: number): string =>
  n === 0
    ? ''
    : `${n} of them left on a day nobody wrote down: ${n === 1 ? 'it is' : 'they are'} counted here, and in no share by day and no curve.`
