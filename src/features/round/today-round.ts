/** The round of today out of the book: its boxes, the pace of the yard, and what was chosen in the address. */

import {
  type AppContext,
  type ForecastCache,
  type Ground,
  groundIn,
  type PageDeps,
  type Where,
} from '../../app/index.ts'
import { addDays, type Day } from '../../days.ts'
import type { Happening, History } from '../../journal/index.ts'
import type { ColonySummary, Repository } from '../../store/index.ts'
import { isTime, minutesTo, plusMinutes, timeIn } from '../../time-of-day.ts'
import { toDoOf } from '../../words/index.ts'
import { asks, type Box } from './box.ts'
import { type Missed, missedSince } from './missed.ts'
import { notedOf } from './noted.ts'
import { type Pace, paceOf } from './pace.ts'
import type { RoundView } from './page.tsx'
import { type Round, roundOf } from './round.ts'
import { inMinutes, type Worth } from './short-of-time.ts'

/** So far back are times of visits read for the yard's pace, and whether a helper has been at a box. */
const PACE_DAYS = 60
/** So far back may a box have been missed and still be waiting: longer than any day one can put it off to. */
const MISSED_DAYS = 45

/** The colony as the round knows it; null when it is in the book no more. */
export function boxOf(book: Repository, id: string): Box | null {
  const found = book.colony(id)
  if (found === null) return null
  const { summary: s, history } = found
  return { id: s.id, tag: s.tag, yard: s.yard, stand: s.stand, plan: s.plan, history }
}

/** The same of a colony nobody has touched: its history is read only where somebody asks for it. */
function untouchedBox(book: Repository, s: ColonySummary): Box {
  let history: History | undefined
  return {
    id: s.id,
    tag: s.tag,
    yard: s.yard,
    stand: s.stand,
    plan: s.plan,
    touched: false,
    get history() {
      history ??= book.colony(s.id)?.history
      if (history === undefined) throw new Error(`colony ${s.id} has gone from the book`)
      return history
    },
  }
}

/** Today's round in every yard: boxes that ask something, and those at which something happened today. */
function wholeRound(book: Repository, today: Day, pace: Pace): Round {
  const touched = new Set(
    [
      ...book.happenings(today, today),
      ...book.happenings(addDays(today, -MISSED_DAYS), today, 'missed-visit'),
    ].map((h) => h.colony),
  )
  const quiet = book.today(today).filter((s) => !touched.has(s.id) && asks(s.plan))
  const boxes = [
    ...quiet.map((s) => untouchedBox(book, s)),
    ...[...touched].flatMap((id) => boxOf(book, id) ?? []),
  ]
  return roundOf(boxes, today, book.plan, pace)
}

/** Every box that stands in the yard (in any, for null). */
export const boxesIn = (book: Repository, yard: string | null): Box[] =>
  book.colonies({ open: true, ...(yard === null ? {} : { yard }) }).flatMap((s) => boxOf(book, s.id) ?? [])

/** Boxes that nobody got to and nobody has been to since, by the colony's id. */
export function missedNow(book: Repository, today: Day): Map<string, Missed> {
  const ids = new Set(
    book.happenings(addDays(today, -MISSED_DAYS), today, 'missed-visit').map((h) => h.colony),
  )
  return new Map(
    [...ids].flatMap((id) => {
      const found = book.colony(id)
      const missed = found === null ? null : missedSince(found.history)
      return missed === null ? [] : [[id, missed] as const]
    }),
  )
}

/** Minutes a box takes, from the times noted in that yard. */
const paceIn = (past: readonly Happening[], yard: string | null): Pace =>
  paceOf(notedOf(yard === null ? past : past.filter((h) => h.yard === yard)))

const MOST_MINUTES = 600

/** Which round the address asks for: `minutes` from now, or `until` a time. An unknown yard means all of them. */
function whereIn(c: AppContext, book: Repository, now: string): Where {
  const asked = c.req.query('yard') ?? ''
  const minutes = Number(c.req.query('minutes') ?? '')
  const until = c.req.query('until') ?? ''
  const chosen = Number.isInteger(minutes) && minutes > 0 && minutes <= MOST_MINUTES
  return {
    yard: book.yards().some((y) => y.yard === asked) ? asked : null,
    until: chosen ? plusMinutes(now, minutes) : isTime(until) ? until : null,
  }
}

/**
 * What a look into a box today is expected to tell, less what it may cost: the order among boxes equally pressing. Where
 * the lid stays on, or something is to be done whatever is seen, a look decides nothing.
 */
const worthOfLooking =
  (forecasts: ForecastCache, ground: Ground): Worth =>
  ({ box, asked, urgency }) => {
    if (urgency.rank === 'action' || box.history.outcome !== null || toDoOf(asked)?.lidOn !== false) return 0
    const known = { id: box.id, history: box.history, plan: box.plan }
    return forecasts.telling(known, ground, ground.today)[0]?.net ?? 0
  }

/** What the pages of the round share. */
export function roundView(
  c: AppContext,
  { store: book, clock, forecasts }: Pick<PageDeps, 'store' | 'clock'> & { forecasts: ForecastCache },
): RoundView {
  const { frame } = c.var
  const now = timeIn(frame.zone, clock())
  const where = whereIn(c, book, now)
  const past = book.happenings(addDays(frame.today, -PACE_DAYS), frame.today)
  const pace = paceIn(past, where.yard)
  const { viewer } = frame
  const whole = wholeRound(book, frame.today, pace)
  const round = where.yard === null ? whole : inYard(whole, where.yard, book, pace)
  const due = (yard: string): number => whole.stops.filter((s) => s.box.yard === yard).length
  return {
    frame,
    where,
    round,
    pace,
    newHere: viewer?.role === 'helper' && !past.some((h) => h.by === viewer.name),
    yards: book
      .yards()
      .filter((y) => y.open > 0 || due(y.yard) > 0)
      .map(({ yard }) => ({ yard, due: due(yard) })),
    choice:
      where.until === null
        ? null
        : inMinutes(
            round.stops,
            Math.max(0, minutesTo(where.until, now)),
            worthOfLooking(forecasts, groundIn(book, frame.today, frame.zone)),
          ),
  }
}

const inYard = (whole: Round, yard: string, book: Repository, pace: Pace): Round =>
  roundOf(
    [...whole.stops, ...whole.putOff].map((s) => s.box).filter((b) => b.yard === yard),
    whole.day,
    book.plan,
    pace,
  )
