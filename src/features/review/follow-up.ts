/** After they left: how moved-out colonies fared in their new home, as far as anybody has told. */

import { type Day, daysBetween } from '../../days.ts'
import type { MovedOut } from '../../records/index.ts'
import { jeffreys, turnbull } from '../../statistics/index.ts'
import { percent, percentRange } from '../../words/index.ts'

/** Days after moving out that are told first: one season, one year. */
export const AFTER_DAYS = [90, 365] as const

export interface AliveAfter {
  days: number
  /** Colonies moved out at least so long ago. */
  colonies: number
  /** Of these, somebody has told something. */
  told: number
  /** Of these, it is known whether they lived on the day. */
  known: number
  /** Estimate (Turnbull); a range of its own where a colony was alive at one look and dead at the next. Null when nothing is known. */
  share: { least: number; most: number } | null
  /** 95 % limits: Jeffreys' interval for the colonies known. */
  lower: number | null
  upper: number | null
}

/**
 * Share alive so many days after moving out. Whoever was alive at one look and dead at the next died between the two, on a
 * day nobody knows; whoever nobody told of counts for nothing.
 */
export function aliveAfter(all: readonly MovedOut[], today: Day, days: number): AliveAfter {
  const colonies = all.filter((c) => daysBetween(c.movedOutOn, today) >= days)
  const intervals = colonies.flatMap((c) => {
    const known = intervalOf(c, today)
    return known === null ? [] : [known]
  })
  const known = intervals.filter((i) => i.after >= days || (i.until !== null && i.until <= days)).length
  const base = { days, colonies: colonies.length, told: intervals.length, known }
  if (known === 0) return { ...base, share: null, lower: null, upper: null }
  const masses = turnbull(intervals)
  const dead = (certain: boolean): number =>
    masses.reduce((sum, m) => {
      const [from, to] = [m.from, m.to ?? Number.POSITIVE_INFINITY]
      return sum + ((certain ? to <= days : from < days) ? m.share : 0)
    }, 0)
  const least = Math.max(0, 1 - dead(false))
  const most = Math.min(1, 1 - dead(true))
  const lower = jeffreys(least * known, known)[0]
  const upper = jeffreys(most * known, known)[1]
  return { ...base, share: { least, most }, lower, upper }
}

/** Days from moving out: last told alive, first told dead. Null when nobody told anything. */
function intervalOf(c: MovedOut, today: Day): { after: number; until: number | null } | null {
  const told = c.followUps.filter((f) => f.on >= c.movedOutOn && f.on <= today)
  if (told.length === 0) return null
  const at = (day: Day): number => Math.max(0, daysBetween(c.movedOutOn, day))
  const dead = told.filter((f) => f.found === 'dead').map((f) => Math.max(1, at(f.deadSince ?? f.on)))
  const until = dead.length === 0 ? null : Math.min(...dead)
  const alive = told.filter((f) => f.found === 'alive').map((f) => at(f.on))
  const exact = told.some((f) => f.found === 'dead' && f.deadSince !== undefined && at(f.deadSince) === until)
  // Dead since a known day: alive until the day before.
  const after = Math.max(
    0,
    exact && until !== null ? until - 1 : 0,
    ...alive.filter((d) => until === null || d < until),
  )
  return { after, until }
}

/** Example: 'Of 18 colonies that moved out 90 days ago or more, 11 were heard of; an estimated 82 % of them were alive after 90 days (54 to 96 %).' */
export function aliveAfterReading(a: AliveAfter): string {
  if (a.colonies === 0) return `None has moved out as long as ${a.days} days ago.`
  const who = `Of ${a.colonies} ${a.colonies === 1 ? 'colony' : 'colonies'} that moved out ${a.days} days ago or more, ${a.told} ${a.told === 1 ? 'was' : 'were'} heard of`
  if (a.share === null || a.lower === null || a.upper === null)
    return `${who}: of none is it known whether it lived ${a.days} days.`
  const { least, most } = a.share
  const share = most - least < 0.005 ? percent(most) : percentRange(least, most)
  return `${who}; an estimated ${share} of them were alive after ${a.days} days (${percentRange(a.lower, a.upper)}).`
}
