/** The round in words: how far one is, how long it takes, what presses, what waiting costs, what to load. */

import { addDays, type Day } from '../../days.ts'
import { type EntryWords, labelIn, type Words, wordsIn } from '../../words/index.ts'
import type { Load } from './bring.ts'
import type { Missed } from './missed.ts'
import type { Pace } from './pace.ts'
import type { Progress, Stop } from './round.ts'
import { costOfWaiting } from './short-of-time.ts'
import type { Urgency } from './urgency.ts'

const ENGLISH = wordsIn('en')

const lower = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)

/**
 * What was done at a box in one line. Nothing is said twice: two looks that saw the same, or one that noted nothing beside
 * one that did. Example: 'Opened: eggs none, queen cells none. Frame of eggs given: 1 frame, from W-2.'
 */
export function doneWords(done: readonly Pick<EntryWords, 'title' | 'facts'>[]): string {
  const told = new Set(done.flatMap((e) => (e.facts.length === 0 ? [] : [e.title])))
  const lines = done.flatMap(({ title, facts }) =>
    facts.length > 0 ? [`${title}: ${facts.join(', ')}`] : told.has(title) ? [] : [title],
  )
  return [...new Set(lines)].map((line) => `${line}.`).join(' ')
}

/** '7 of 18, 2 late' */
export const progressWords = ({ of, seen, late }: Progress, { round }: Words = ENGLISH): string =>
  round.progress(seen, of, late)

/** '1 not reached, 2 seen with more to do'; '' when there is nothing to add. */
export const progressMore = ({ notReached, stillAsk }: Progress, { round }: Words = ENGLISH): string =>
  [notReached === 0 ? '' : round.notReached(notReached), stillAsk === 0 ? '' : round.seenMore(stillAsk)]
    .filter(Boolean)
    .join(', ')

/** 'about 5 minutes', 'about 40 minutes', 'about 1 h 50'. */
export function minutesWords(minutes: number, { round }: Words = ENGLISH): string {
  const to = minutes < 10 ? 1 : 5
  const n = Math.max(1, Math.round(minutes / to) * to)
  return n < 60 ? round.minutes(n) : round.hours(Math.floor(n / 60), n % 60)
}

/** What the minutes rest on. */
export function paceWords(pace: Pace, { round }: Words = ENGLISH): string {
  const visits = Object.values(pace).reduce((n, e) => n + e.visits, 0)
  if (visits === 0) return round.paceUsual
  return Object.values(pace).some((e) => e.visits === 0) ? round.paceBoth(visits) : round.paceOwn(visits)
}

/** 'Not reached Tue 9 Jun: rain; again tomorrow.' */
export function missedWords({ entry: e, again }: Missed, today: Day, w: Words = ENGLISH): string {
  const { choices, dates, round } = w
  const when = e.on === today ? dates.fromToday(today, today) : dates.day(e.on, today)
  const next =
    again > addDays(today, 1)
      ? round.again(dates.day(again, today))
      : again >= today
        ? round.again(dates.fromToday(again, today))
        : round.wasToBe(dates.day(again, today))
  return round.missed(when, lower(labelIn(choices.MISSED, e.reason)), next)
}

/** Why a box comes where it does when time is short. */
export function urgencyWords(
  { rank, window, until, check }: Urgency,
  today: Day,
  { dates, round: { urgency } }: Words = ENGLISH,
): string {
  const on = (day: Day): string => dates.day(day, today)
  if (window?.of === 'cells')
    return window.day === today ? urgency.cellsToday : urgency.cellsUntil(on(window.day))
  if (window?.of === 'has-laying-workers') return urgency.hasLayingWorkers
  if (window?.of === 'laying-workers')
    return window.day > today ? urgency.threatenFrom(on(window.day)) : urgency.threatenNow
  if (rank === 'action') return urgency.toBeDone(until === null ? null : on(until))
  if (rank === 'overdue') return urgency.lateSince(on(check?.closes ?? today))
  if (rank === 'open') return urgency.mayBeDone(on(until ?? today))
  if (until === null) return urgency.askedToday
  return until === today ? urgency.dueLastDay : urgency.dueBy(on(until))
}

/** What it costs not to go there today. */
export function costWords(
  stop: Stop,
  today: Day,
  next: Day = addDays(today, 1),
  { dates, round: { cost: says } }: Words = ENGLISH,
): string {
  const cost = costOfWaiting(stop, today, next)
  const on = (day: Day): string => dates.day(day, today)
  switch (cost.of) {
    case 'call':
      return says.call
    case 'window':
      if (cost.window.of === 'has-laying-workers') return says.hasLayingWorkers
      if (cost.window.of === 'laying-workers')
        return cost.window.day > today ? says.nearer(on(cost.window.day)) : says.likelier
      return cost.lost ? says.chancePasses : says.goBy(on(cost.window.day))
    case 'delay':
      if (cost.late) return says.getsLate
      return cost.until === null ? says.waitsADay : says.waitsUntil(on(cost.until))
    case 'later-still':
      return says.laterStill(on(cost.since))
    case 'becomes-late':
      return says.becomesLate(on(addDays(cost.closes, 1)))
    case 'nothing':
      return cost.until === null ? says.canWait : says.canWaitUntil(on(cost.until))
  }
}

/** '2 frames of eggs, from a healthy donor' */
export const loadWords = ({ item, tags }: Load, { round }: Words = ENGLISH): string =>
  round.load[item](tags.length)
