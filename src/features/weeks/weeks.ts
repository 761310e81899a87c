/** Boxes and days: what stands in each cell, and the work of each day summed. Pure. */

import { addDays, type Day } from '../../days.ts'
import type { Happening } from '../../journal/index.ts'
import type { Plan, Rule } from '../../recovery/index.ts'
import { type WorkDay, workDays } from '../../words/index.ts'

/** What one day is to one box. */
export interface Cell {
  day: Day
  /** Somebody was there; `open`: the lid came off. */
  visit: 'open' | 'shut' | null
  /** The work that falls on it. */
  work: WorkDay | null
  /** Within the window of something asked. */
  window: boolean
  /** Leave the lid on. */
  quiet: boolean
  /** Likely to leave on this day. */
  leaves: boolean
}

export interface Planned {
  plan: Plan
  /** Of this box, in the days shown. */
  visits: readonly Happening[]
}

/** A box over the days. */
export function cellsOf({ plan, visits }: Planned, days: readonly Day[]): Cell[] {
  const work = new Map(workDays(plan).map((w) => [w.day, w]))
  const asked = plan.checks.filter(
    (c) => c.rule !== 'move-out' && c.status !== 'answered' && c.status !== 'void',
  )
  const leaves = leavesOn(plan)
  return days.map((day) => {
    const there = visits.filter((v) => v.on === day)
    return {
      day,
      visit: there.length === 0 ? null : there.some(lidOff) ? 'open' : 'shut',
      work: work.get(day) ?? null,
      window: day >= plan.asOf && asked.some((c) => c.opens <= day && day <= c.closes),
      quiet: plan.quiet !== null && plan.quiet.from <= day && day <= plan.quiet.to,
      leaves: leaves === day,
    }
  })
}

/** What is given goes in at an open box; of a look, the look says. */
const lidOff = (h: Happening): boolean => (h.kind === 'inspection' ? h.opened === true : h.kind !== 'move')

/** The likeliest day on which it may leave, not before today; null where nothing says so. */
export function leavesOn({ readiness, asOf }: Plan): Day | null {
  if (readiness.ready) return asOf
  const likely = readiness.expected?.likely
  return likely === undefined ? null : likely < asOf ? asOf : likely
}

/** The work of a day, or of several. */
export interface Work {
  /** Boxes somebody goes to; of days gone by, boxes somebody went to. */
  visits: number
  /** Of these, boxes that are opened. */
  opened: number
  late: number
  eggFrames: number
  queens: number
  leave: number
}

const NO_WORK: Work = { visits: 0, opened: 0, late: 0, eggFrames: 0, queens: 0, leave: 0 }

/** What a day's work takes along: as the plan advises today, as the ladder asks on days to come. */
function takes({ action, checks }: WorkDay): 'egg-frame' | 'queen' | null {
  if (action === 'give-egg-frame') return 'egg-frame'
  if (action === 'buy-queen' || action === 'order-queen') return 'queen'
  const asks = (rule: Rule): boolean => checks.some((c) => c.rule === rule)
  return asks('egg-frame') ? 'egg-frame' : asks('buy-queen') ? 'queen' : null
}

/** What the plans ask for on one day, over its cells. */
export function workOf(cells: readonly Cell[], today: Day): Work {
  const taken = (what: ReturnType<typeof takes>): number =>
    cells.filter((c) => c.work !== null && takes(c.work) === what).length
  const gone = cells.filter((c) => c.visit !== null)
  const [first] = cells
  const past = first !== undefined && first.day < today
  // Where only the waiting ends, nobody needs to go.
  const work = cells.filter((c) => c.work !== null && c.work.words.length > 0)
  return {
    visits: past ? gone.length : work.length,
    opened: past ? gone.filter((c) => c.visit === 'open').length : work.filter((c) => !c.work?.lidOn).length,
    late: work.filter((c) => c.work?.late).length,
    eggFrames: past ? 0 : taken('egg-frame'),
    queens: past ? 0 : taken('queen'),
    leave: cells.filter((c) => c.leaves).length,
  }
}

export const together = (some: readonly Work[]): Work =>
  some.reduce<Work>(
    (sum, w) => ({
      visits: sum.visits + w.visits,
      opened: sum.opened + w.opened,
      late: sum.late + w.late,
      eggFrames: sum.eggFrames + w.eggFrames,
      queens: sum.queens + w.queens,
      leave: sum.leave + w.leave,
    }),
    NO_WORK,
  )

/** Days gone by that are shown: what was done lately is why a box can wait. */
const BEFORE = 7
/** Days shown in all: four weeks fit a laptop and a sheet of paper. */
const SHOWN = 28

/** The days shown, around today or later. */
export const daysShown = (today: Day, skip: number): Day[] =>
  Array.from({ length: SHOWN }, (_, i) => addDays(today, skip - BEFORE + i))
