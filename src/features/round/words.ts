/** The round in words: how far one is, how long it takes, what presses, what waiting costs, what to load. */

import { addDays, type Day, fromToday } from '../../days.ts'
import { dayWords, type EntryWords, labelIn, MISSED } from '../../words/index.ts'
import type { Item, Load } from './bring.ts'
import type { Missed } from './missed.ts'
import type { Pace } from './pace.ts'
import type { Progress, Stop, StopState } from './round.ts'
import { costOfWaiting } from './short-of-time.ts'
import type { Urgency } from './urgency.ts'

const lower = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)
export const boxes = (n: number): string => `${n} ${n === 1 ? 'box' : 'boxes'}`

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
export const progressWords = ({ of, seen, late }: Progress): string =>
  `${seen} of ${of}${late === 0 ? '' : `, ${late} late`}`

/** '1 not reached, 2 seen with more to do'; '' when there is nothing to add. */
export const progressMore = ({ notReached, stillAsk }: Progress): string =>
  [
    notReached === 0 ? '' : `${notReached} not reached`,
    stillAsk === 0 ? '' : `${stillAsk} seen with more to do`,
  ]
    .filter(Boolean)
    .join(', ')

/** 'about 5 minutes', 'about 40 minutes', 'about 1 h 50'. */
export function minutesWords(minutes: number): string {
  const to = minutes < 10 ? 1 : 5
  const n = Math.max(1, Math.round(minutes / to) * to)
  if (n < 60) return `about ${n} ${n === 1 ? 'minute' : 'minutes'}`
  const rest = n % 60
  return `about ${Math.floor(n / 60)} h${rest === 0 ? '' : ` ${rest}`}`
}

/** What the minutes rest on. */
export function paceWords(pace: Pace): string {
  const visits = Object.values(pace).reduce((n, e) => n + e.visits, 0)
  const usual = Object.values(pace).some((e) => e.visits === 0)
  const own = `the times noted at ${visits} visits here`
  if (visits === 0) return 'Reckoned from what is usual, until enough visits here carry a time.'
  return usual
    ? `Reckoned from ${own}, and from what is usual where those say nothing.`
    : `Reckoned from ${own}.`
}

export const STATE_WORDS: Record<StopState, string> = {
  'to-do': 'to do',
  seen: 'seen',
  'not-reached': 'not reached',
  'put-off': 'put off',
}

/** 'Not reached Tue 9 Jun: rain; again tomorrow.' */
export function missedWords({ entry: e, again }: Missed, today: Day): string {
  const when = e.on === today ? 'today' : dayWords(e.on, today)
  const next =
    again > addDays(today, 1)
      ? `again ${dayWords(again, today)}`
      : again >= today
        ? `again ${fromToday(again, today)}`
        : `was to be tried again ${dayWords(again, today)}`
  return `Not reached ${when}: ${lower(labelIn(MISSED, e.reason))}; ${next}.`
}

/** Why a box comes where it does when time is short. */
export function urgencyWords({ rank, window, until, check }: Urgency, today: Day): string {
  if (window?.of === 'cells')
    return window.day === today
      ? 'Last day on which young brood here can still become a queen'
      : `Young brood here can become a queen only until ${dayWords(window.day, today)}`
  if (window?.of === 'has-laying-workers')
    return 'It has laying workers: every day it has fewer bees to unite'
  if (window?.of === 'laying-workers')
    return window.day > today
      ? `Laying workers threaten from ${dayWords(window.day, today)}`
      : 'Laying workers threaten now'
  if (rank === 'action')
    return `To be done, not only looked at${until === null ? '' : `; by ${dayWords(until, today)}`}`
  if (rank === 'overdue') return `Late since ${dayWords(check?.closes ?? today, today)}`
  if (rank === 'open') return `May be done; last day ${dayWords(until ?? today, today)}`
  return until === null
    ? 'Asked for today'
    : until === today
      ? 'Due; today is the last day'
      : `Due by ${dayWords(until, today)}`
}

/** What it costs not to go there today. */
export function costWords(stop: Stop, today: Day, next: Day = addDays(today, 1)): string {
  const cost = costOfWaiting(stop, today, next)
  switch (cost.of) {
    case 'call':
      return 'The call does not wait: make it today, from wherever you are. The box stays shut and where it is.'
    case 'window':
      if (cost.window.of === 'has-laying-workers')
        return 'It has laying workers: it raises drones instead of workers, so every day it has fewer bees to unite.'
      if (cost.window.of === 'laying-workers')
        return cost.window.day > today
          ? `One day nearer to laying workers, which threaten from ${dayWords(cost.window.day, today)}.`
          : 'Every day makes laying workers likelier, and a colony that has them is hardly to be saved.'
      return cost.lost
        ? 'Its chance to raise a queen from its own young brood passes unseen: after today only a frame of eggs or a bought queen is left.'
        : `Its young brood can still become a queen until ${dayWords(cost.window.day, today)}; go by then.`
    case 'delay':
      return cost.late
        ? 'What is to be done there gets late.'
        : cost.until === null
          ? 'What is to be done there waits a day.'
          : `What is to be done there waits; last day ${dayWords(cost.until, today)}.`
    case 'later-still':
      return `Late since ${dayWords(cost.since, today)}, and later still.`
    case 'becomes-late':
      return `Today is the last day: late from ${dayWords(addDays(cost.closes, 1), today)}.`
    case 'nothing':
      return cost.until === null ? 'It can wait.' : `It can wait until ${dayWords(cost.until, today)}.`
  }
}

const ITEM_WORDS: Record<Item, (n: number) => string> = {
  'egg-frame': (n) => `${n} ${n === 1 ? 'frame' : 'frames'} of eggs, from a healthy donor`,
  'mated-queen': (n) => `${n} mated ${n === 1 ? 'queen' : 'queens'}`,
  'unite-or-boost': () => 'newspaper to unite, or a frame of capped brood',
  syrup: () => 'syrup',
  'cage-tools': () => 'queen clip and something to open a cage with',
  'mite-wash': () => 'mite wash: jar, half-cup measure, washing liquid, water',
  'band-cutter': () => 'scissors for the comb ties',
  moving: () => 'straps and an entrance screen for moving out',
}

/** '2 frames of eggs, from a healthy donor' */
export const loadWords = ({ item, tags }: Load): string => ITEM_WORDS[item](tags.length)
