/**
 * How many minutes a box takes, from the yard's own past rounds: the time from one box to the next of the same person
 * on the same day, walking included. Where too few times were noted, a usual value stands in, and it says so.
 */

import type { Day } from '../../days.ts'
import type { ColonyId } from '../../ids.ts'
import type { Plan } from '../../recovery/index.ts'

const STOP_KINDS = ['outside', 'open', 'act'] as const
/** outside: the lid stays on. open: frames are looked at. act: a frame, a queen or a cage is seen to, or it is moved. */
export type StopKind = (typeof STOP_KINDS)[number]

/** One thing noted at a box, with its time. */
export interface Noted {
  colony: ColonyId
  yard: string
  on: Day
  /** 'HH:MM' */
  at: string
  by: string
  kind: StopKind
}

interface Estimate {
  minutes: number
  /** Gaps it rests on; 0: the usual value, nobody here has noted enough times yet. */
  visits: number
}
export type Pace = Record<StopKind, Estimate>

/** Judgement of what is usual, in minutes with the walk to the next box; replaced by the yard's own times. */
const USUAL_MINUTES: Record<StopKind, number> = { outside: 3, open: 12, act: 18 }

/** As many gaps as it takes before the yard's own times are believed (judgement). */
const ENOUGH = 5

/** A longer gap was a break, not a box (judgement). */
const BREAK = 45

/** What going there means, by the plan's advice. */
export function stopKindOf(plan: Plan): StopKind {
  switch (plan.advice.action) {
    case 'outside-look':
    case 'leave-alone':
    case 'none':
      return 'outside'
    case 'open-and-look':
      return 'open'
    case 'release-queen':
    case 'give-egg-frame':
    case 'buy-queen':
    case 'unite':
    case 'move-out':
    case 'call-inspector':
    case 'boost':
    case 'order-queen':
    case 'feed':
    case 'wash':
    case 'see-to-signs':
    case 'take-out-queen':
      return 'act'
  }
}

const minuteOf = (at: string): number => Number(at.slice(0, 2)) * 60 + Number(at.slice(3, 5))

interface Stop {
  from: number
  kind: StopKind
}

const heavier = (a: StopKind, b: StopKind): StopKind =>
  STOP_KINDS.indexOf(a) >= STOP_KINDS.indexOf(b) ? a : b

/** Boxes of one walk, each once, with the first time noted there and the most that was done. */
function stopsOf(walk: readonly Noted[]): Stop[] {
  const stops = new Map<string, Stop>()
  for (const n of walk) {
    const known = stops.get(n.colony)
    const from = minuteOf(n.at)
    stops.set(n.colony, {
      from: known === undefined ? from : Math.min(known.from, from),
      kind: known === undefined ? n.kind : heavier(known.kind, n.kind),
    })
  }
  return [...stops.values()].sort((a, b) => a.from - b.from)
}

/** Minutes at each box of a walk but the last, of which nobody knows when it ended. */
const gapsOf = (stops: readonly Stop[]): { kind: StopKind; minutes: number }[] =>
  stops.flatMap((s, i) => {
    const next = stops[i + 1]
    const minutes = next === undefined ? 0 : next.from - s.from
    return minutes > 0 && minutes <= BREAK ? [{ kind: s.kind, minutes }] : []
  })

function median(sorted: readonly number[]): number {
  const half = Math.floor(sorted.length / 2)
  const [low, high] = [sorted[half - 1] ?? 0, sorted[half] ?? 0]
  return sorted.length % 2 === 1 ? high : (low + high) / 2
}

/**
 * Minutes by kind of stop. The median of the gaps where there are at least {@link ENOUGH}, else the usual value. Times
 * of boxes that nobody noted make a gap too long; the median bears a good share of those.
 */
export function paceOf(noted: readonly Noted[]): Pace {
  const walks = new Map<string, Noted[]>()
  for (const n of noted) {
    const key = `${n.on} ${n.yard} ${n.by}`
    walks.set(key, [...(walks.get(key) ?? []), n])
  }
  const gaps = [...walks.values()].flatMap((w) => gapsOf(stopsOf(w)))
  const estimate = (kind: StopKind): Estimate => {
    const own = gaps.filter((g) => g.kind === kind).map((g) => g.minutes)
    return own.length < ENOUGH
      ? { minutes: USUAL_MINUTES[kind], visits: 0 }
      : { minutes: median(own.sort((a, b) => a - b)), visits: own.length }
  }
  return { outside: estimate('outside'), open: estimate('open'), act: estimate('act') }
}
