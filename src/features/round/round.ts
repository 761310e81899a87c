/**
 * The round of a day: which boxes, in which order, how far one has got. Nothing of it is stored: it follows from the
 * journal, so that every phone and the operator's screen see the same round.
 *
 * What a box was asked in the morning keeps its place on the round: recording a visit ticks it off, it does not shorten
 * the list.
 */

import type { Day } from '../../days.ts'
import { type StandingEntry, standOrder } from '../../journal/index.ts'
import type { Plan } from '../../recovery/index.ts'
import type { Planner } from '../../store/index.ts'
import { toDoOf } from '../../words/index.ts'
import { asks, type Box, beforeThe, doneOn } from './box.ts'
import { isPutOff, type Missed, missedSince } from './missed.ts'
import { type Pace, type StopKind, stopKindOf } from './pace.ts'
import { type Urgency, urgencyOf } from './urgency.ts'

/**
 * to-do: nobody was there today. seen: somebody was. not-reached: tried today. put-off: not reached before, and to be
 * tried on a later day; never while a window of the bees' own is closing.
 */
type StopState = 'to-do' | 'seen' | 'not-reached' | 'put-off'

export interface Stop {
  box: Box
  /** The plan by which the box is on the round: the morning's, or today's where only today's asks. */
  asked: Plan
  state: StopState
  /** What was recorded there today. */
  done: StandingEntry[]
  /** After a visit today, the plan asks for something still: often what the visit has shown to be needed. */
  stillAsks: boolean
  /** A look today left out what decides: the question stays, as late as it was. */
  half: boolean
  missed: Missed | null
  urgency: Urgency
  late: boolean
  kind: StopKind
  minutes: number
}

export interface Progress {
  /** Boxes on the round, without those put off to a later day. */
  of: number
  seen: number
  notReached: number
  /** Late by what the book knows now: not seen yet, or seen and not answered. */
  late: number
  /** Seen, and something is still asked. */
  stillAsk: number
}

export interface Round {
  day: Day
  /** In stand order. */
  stops: Stop[]
  putOff: Stop[]
  progress: Progress
  /** Minutes for what is left to do. */
  minutesLeft: number
}

/**
 * The round of `day` over these boxes (one yard's, or all). Boxes that ask nothing are left out, so any list will do.
 *
 * @param boxes with plans as of `day`; colonies that left today may be among them
 */
export function roundOf(boxes: readonly Box[], day: Day, planner: Planner, pace: Pace): Round {
  const all = [...boxes].sort(standOrder).flatMap((box) => stopOf(box, day, planner, pace) ?? [])
  const stops = all.filter((s) => s.state !== 'put-off')
  const left = stops.filter((s) => s.state === 'to-do')
  return {
    day,
    stops,
    putOff: all.filter((s) => s.state === 'put-off'),
    progress: {
      of: stops.length,
      seen: stops.filter((s) => s.state === 'seen').length,
      notReached: stops.filter((s) => s.state === 'not-reached').length,
      late: stops.filter((s) => s.late).length,
      stillAsk: stops.filter((s) => s.stillAsks).length,
    },
    minutesLeft: left.reduce((sum, s) => sum + s.minutes, 0),
  }
}

function stopOf(box: Box, day: Day, planner: Planner, pace: Pace): Stop | null {
  const done = box.touched === false ? [] : doneOn(box.history, day)
  const morning = done.length === 0 ? box.plan : morningPlan(box, day, planner)
  const asked = morning !== null && asks(morning) ? morning : box.plan
  if (!asks(asked)) return null
  const missed = box.touched === false ? null : missedSince(box.history)
  const urgency = urgencyOf(asked)
  const kind = stopKindOf(asked)
  const half = done.length > 0 && box.plan.missing.some((m) => m.since === day)
  return {
    box,
    asked,
    state: stateOf(day, done, missed, urgency),
    done,
    stillAsks: done.length > 0 && asks(box.plan),
    half,
    missed,
    urgency,
    late: toDoOf(box.plan)?.late ?? false,
    kind,
    minutes: pace[kind].minutes,
  }
}

function morningPlan(box: Box, day: Day, planner: Planner): Plan | null {
  const history = beforeThe(day, box.history)
  return history === null ? null : planner(history, day, box.plan.exposed)
}

function stateOf(day: Day, done: StandingEntry[], missed: Missed | null, urgency: Urgency): StopState {
  if (done.length > 0) return 'seen'
  if (missed === null) return 'to-do'
  if (missed.entry.on === day) return 'not-reached'
  return isPutOff(missed, urgency, day) ? 'put-off' : 'to-do'
}
