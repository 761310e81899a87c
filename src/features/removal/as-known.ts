/**
 * What a phone without signal knows of a job is as old as what it last heard. Hours later, or on another day, that is no ground for a
 * “go”: somebody reads the list aloud who has a signal, or whoever decides looks at all of it again.
 */

import { type AppContext, type PageDeps, signedIn } from '../../app/index.ts'
import { dayIn } from '../../days.ts'
import { one, type Typed } from '../../forms/index.ts'
import type { Problem } from '../../journal/index.ts'
import type { Decision, Sheet } from '../../records/index.ts'
import { isTime, isTooOld, minutesFrom, timeIn } from '../../time-of-day.ts'
import { instantWords } from '../../words/index.ts'

/** When this phone last heard of the yard. */
export interface Heard {
  /** UTC, ISO. */
  of: string
  /** '07:00', 'Thu 11 Jun, 08:00' */
  words: string
  /** 'HH:MM', where it was today. */
  at?: string
  /** On another day, or more than three hours ago: what others found since may be anything. */
  deaf: boolean
  /** Whether a look of one's own stands for it: it heard today, or nobody else writes in this yard. */
  mayLook: boolean
  /** The sign-in is over: nothing comes here, signal or not. */
  signIn: boolean
  /** Who could read the list aloud. */
  others: string[]
}

/** Null where the server made this page, and knows all there is. */
export function heardOf(c: AppContext, deps: PageDeps): Heard | null {
  const { phone, zone, today } = c.var.frame
  if (phone?.fetchedAt == null) return null
  const then = new Date(phone.fetchedAt)
  const ofToday = dayIn(zone, then) === today
  const others = deps.crew?.().flatMap((a) => (a.open && a.name !== signedIn(c) ? [a.name] : [])) ?? []
  return {
    of: then.toISOString(),
    ...(ofToday ? { at: timeIn(zone, then) } : {}),
    words: ofToday ? timeIn(zone, then) : instantWords(then.toISOString(), zone, today),
    deaf: !ofToday || isTooOld(timeIn(zone, then), timeIn(zone, deps.clock())),
    mayLook: ofToday || others.length === 0,
    signIn: phone.signIn,
    others,
  }
}

/** What brings here what others found since. */
const hears = ({ signIn }: Heard): string =>
  signIn ? 'sign in again' : 'open this page where there is a signal'

/** Minutes for which a look of one's own stands for what was not heard (judgement). */
const LOOKED_MINUTES = 60

/** Whether what was tapped at `at` is older than that look may be. */
export const isLookedTooEarly = (at: string, now: string): boolean => minutesFrom(at, now) > LOOKED_MINUTES

/**
 * Why nothing is begun at `at` ('15:10') on what this phone knows; null where it may: it has heard in the three hours before, or
 * somebody read the list aloud then, or whoever decided looked again.
 */
export function unheard(heard: Heard | null, { decision: d }: Sheet, at: string): string | null {
  if (heard === null) return null
  const read = d?.heard?.at ?? (d?.heard?.looked === true ? d.at : undefined)
  return [heard.at, read].some((then) => then !== undefined && !isTooOld(then, at))
    ? null
    : `This phone has heard nothing since ${heard.words}: look again before you begin, or ${hears(heard)}`
}

/** What is done without signal about what was not heard. */
export const waysOut = ({ mayLook, signIn }: Heard): string =>
  `${signIn ? 'Sign in again. Or call' : 'Call'} somebody who has a signal and have this list read to you${mayLook ? ', or look again yourself' : ''}`

/** What is written down beside a “go” of this phone, and why it is not taken. `now`: 'HH:MM' */
export function heardTyped(
  heard: Heard,
  typed: Typed,
  now: string,
): { heard: NonNullable<Decision['heard']>; problems: Problem[] } {
  const of = { of: heard.of }
  const [by, at, news, looked] = ['by', 'at', 'news', 'looked'].map((field) => one(typed, `heard.${field}`))
  if (!heard.deaf) return { heard: of, problems: [] }
  if (looked === 'yes' && heard.mayLook) return { heard: { ...of, looked: true }, problems: [] }
  const wrong = (field: string, message: string): ReturnType<typeof heardTyped> => ({
    heard: of,
    problems: [{ field: `heard.${field}`, message }],
  })
  const reader = heard.others.find((name) => name === by)
  if (reader === undefined)
    return wrong('by', `is not said: this phone has heard nothing since ${heard.words}. ${waysOut(heard)}`)
  if (at === undefined || !isTime(at) || at > now || isTooOld(at, now))
    return wrong('at', 'must be an hour of today, not more than three hours ago')
  if (news !== 'none' && news !== 'tapped') return wrong('news', 'is not said: is anything new on it?')
  return { heard: { ...of, by: reader, at, news }, problems: [] }
}
