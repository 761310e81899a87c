/** What comes first on Today: danger, then late, then due, then what may be done. */
import { addDays, type Day } from '../../days.ts'
import type { Action } from '../../recovery/index.ts'
import { howPressing, type Words, wordsIn } from '../../words/index.ts'
import type { Urgency } from '../round/index.ts'
import type { TodayLine } from './line.tsx'

/**
 * A window of the bees' own is danger from so many days before it closes (judgement: as long as one round may be put off
 * by weather). One that closes later is a date like any other.
 */
const CLOSING_DAYS = 2

export interface Danger {
  /** The inspector before any window; a window by the day on which it closes. */
  before: Day | ''
  /** Why, in one short sentence. */
  words: string
}

/** What cannot be made good after a day or two; null for all else. */
export function dangerOf(
  action: Action,
  { window }: Urgency,
  today: Day,
  w: Words = wordsIn('en'),
): Danger | null {
  const { canRaiseToday, canRaiseUntil, layingWorkersThreaten, nothingInOrOut } = w.today
  if (action === 'call-inspector') return { before: '', words: nothingInOrOut }
  // Once laying workers are there, nothing closes any more: it is work like other work.
  if (window === null || window.of === 'has-laying-workers') return null
  if (window.day > addDays(today, CLOSING_DAYS)) return null
  const words =
    window.of === 'laying-workers'
      ? layingWorkersThreaten
      : window.day === today
        ? canRaiseToday
        : canRaiseUntil(w.dates.day(window.day, today))
  return { before: window.day, words }
}

const ORDER = ['overdue', 'due', 'open'] as const

const weight = ({ danger, toDo }: TodayLine): number =>
  danger === null ? ORDER.indexOf(howPressing(toDo)) : -1

/** The same lines, the most pressing first; equals stay in the order in which one walks. */
export const urgentFirst = (lines: readonly TodayLine[]): TodayLine[] =>
  [...lines].sort(
    (a, b) => weight(a) - weight(b) || (a.danger?.before ?? '').localeCompare(b.danger?.before ?? ''),
  )
