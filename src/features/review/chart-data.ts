/** What the review's charts draw: worked out on the server, drawn as SVG there or by the browser on a canvas. */

import type { StepPoint } from '../../parts/index.ts'
import { type Curve, type DayCounts, type Incidence, incidenceLimits } from '../../statistics/index.ts'
import { END_OF_STACK, type StackStep, stackSteps } from './stack.ts'
import type { Group, ReviewView } from './view.ts'

export interface Line {
  name: string
  colonies: number
  /** From day 0; the share holds until the next point. */
  points: StepPoint[]
  /** Days on which colonies left, or were last known, and the share then. */
  left: [day: number, share: number][]
  /** Colonies at risk just before each of the axis' days. */
  atRisk: number[]
}

export interface DayAxis {
  /** The last day drawn. */
  end: number
  /** Days with a number under the axis. */
  days: number[]
}

export interface StackedWays {
  days: number[]
  died: number[]
  absconded: number[]
  united: number[]
}

/** What became of one group, by day. */
export interface Stack {
  name: string
  /** The last day of which it is known. */
  lastDay: number
  steps: StackStep[]
}

export interface ChartData {
  axis: DayAxis
  /** In the order in which they are drawn. */
  stacks: Stack[]
  /** All colonies first. */
  survival: Line[]
  ways: StackedWays
  queenright: { axis: DayAxis; line: Line }
}

/** Beyond the day on which fewer than this share of the colonies are at risk, a curve says next to nothing. */
const LEAST_AT_RISK = 0.02
const SHORTEST_AXIS = 30

/** Days between the numbers under an axis, by its length. */
const stepFor = (end: number): number => (end <= 70 ? 10 : end <= 150 ? 30 : end <= 400 ? 60 : 180)

/** The axis for these colonies. Example: the last of 100 colonies leave on days 48 and 57: up to day 60, a number every 10. */
export function axisFor(counts: Pick<DayCounts, 'atRisk' | 'colonies'>): DayAxis {
  const least = Math.max(1, LEAST_AT_RISK * counts.colonies)
  const last = Math.max(
    SHORTEST_AXIS,
    counts.atRisk.findLastIndex((n) => n >= least),
  )
  const step = stepFor(last)
  const end = Math.ceil(last / step) * step
  return { end, days: Array.from({ length: end / step + 1 }, (_, i) => i * step) }
}

/** A survival curve as a line; days after the axis' end are left to the table. */
export function survivalLine(name: string, curve: Curve, counts: DayCounts, axis: DayAxis): Line {
  const steps = curve.steps.filter((s) => s.day <= axis.end)
  const last = steps.at(-1)
  const whole = curve.steps.length > steps.length
  const until = whole ? axis.end : (last?.day ?? 0)
  return {
    name,
    colonies: curve.colonies,
    points: ended(
      [
        [0, 1, null, null],
        ...steps.filter((s) => s.lost > 0).map((s): StepPoint => [s.day, s.survival, s.lower, s.upper]),
      ],
      until,
    ),
    left: steps.filter((s) => s.left > 0).map((s) => [s.day, s.survival]),
    atRisk: axis.days.map((day) => counts.atRisk[day] ?? 0),
  }
}

/** Carried on to the last day anybody was followed. */
function ended(points: StepPoint[], until: number): StepPoint[] {
  const last = points.at(-1)
  return last === undefined || last[0] >= until ? points : [...points, [until, last[1], last[2], last[3]]]
}

const lineOf = (g: Group, name: string, axis: DayAxis): Line => survivalLine(name, g.curve, g.counts, axis)

/** Share proven queenright by day. */
function queenrightLine(incidence: Incidence, axis: DayAxis): Line {
  const [proven] = incidence.ways
  const points: StepPoint[] = [[0, 0, null, null]]
  for (const [i, day] of incidence.days.entries()) {
    if (day > axis.end || (proven?.lost[i] ?? 0) === 0) continue
    const share = proven?.share[i] ?? 0
    const limits = incidenceLimits(share, proven?.stdErr[i] ?? 0)
    points.push([day, share, limits?.[0] ?? null, limits?.[1] ?? null])
  }
  const lastDay = Math.min(axis.end, incidence.days.at(-1) ?? 0)
  const atRisk = axis.days.map((d) => incidence.atRisk[incidence.days.findIndex((x) => x >= d)] ?? 0)
  return { name: '', colonies: incidence.colonies, points: ended(points, lastDay), left: [], atRisk }
}

function waysStacked(group: Group, axis: DayAxis): StackedWays {
  const rows = group.review.waysOfLeaving.filter((r) => r.day <= axis.end)
  const last = group.review.waysOfLeaving.at(-1)?.day ?? 0
  const kept = rows.at(-1)
  const all = kept === undefined || last <= axis.end ? rows : [...rows, { ...kept, day: axis.end }]
  return {
    days: [0, ...all.map((r) => r.day)],
    died: [0, ...all.map((r) => r.died)],
    absconded: [0, ...all.map((r) => r.absconded)],
    united: [0, ...all.map((r) => r.united)],
  }
}

/** The last day of which it is known what had become of a group: once everybody has left, nothing changes any more. */
export const stackEnd = ({ review, counts }: Group): number =>
  review.outcomes.at(-1)?.stillHere.share === 0 ? END_OF_STACK : counts.lastDay

/** The data of every chart. `nameOf` names a group as it is shown; `stacked`: the groups whose ends are drawn. */
export function chartData(
  look: ReviewView,
  nameOf: (g: Group) => string,
  stacked: readonly Group[] = [],
): ChartData {
  const axis = axisFor(look.all.counts)
  const queenAxis = axisFor({
    colonies: look.queenright.colonies,
    atRisk: atRiskByDay(look.queenright),
  })
  return {
    axis,
    stacks: stacked.map((g) => ({
      name: nameOf(g),
      lastDay: stackEnd(g),
      steps: stackSteps(g.review.outcomes),
    })),
    survival: [lineOf(look.all, 'all', axis), ...look.drawn.map((g) => lineOf(g, nameOf(g), axis))],
    ways: waysStacked(look.all, axis),
    queenright: { axis: queenAxis, line: queenrightLine(look.queenright, queenAxis) },
  }
}

function atRiskByDay(i: Incidence): Int32Array {
  const last = i.days.at(-1) ?? -1
  const by = new Int32Array(last + 1)
  let next = 0
  for (let day = 0; day <= last; day++) {
    while ((i.days[next] ?? last) < day) next++
    by[day] = i.atRisk[next] ?? 0
  }
  return by
}
