/**
 * Colonies counted by day. Days are whole numbers, so one pass over the colonies fills counting arrays, nothing is
 * sorted, and every survival statistic reads the counts: its cost depends on the days, not on the colonies.
 */

/** One fact a column, all columns of one length. */
export interface Durations {
  /** Whole days from intake to the loss, to leaving, or to the last day known. */
  day: ArrayLike<number>
  /** 0: not lost (left, or still there; censored). 1, 2, …: the way it was lost. */
  way: ArrayLike<number>
  /**
   * Day from which the colony was followed (left truncation); 0 or absent: from intake. A colony counts as at risk on
   * the days after this one, as in R's Surv(start, stop]. One whose `entry` is not before its `day` was never at risk
   * and is left out.
   */
  entry?: ArrayLike<number>
}

export interface DayCounts {
  /** Colonies counted. */
  colonies: number
  /** The last day on which a colony was lost or left; -1 when there is none. */
  lastDay: number
  /** By day: colonies at risk just before it. */
  atRisk: Int32Array
  /** By way (way 1 first), by day: colonies lost. */
  lost: Int32Array[]
  /** By day: colonies that left or were last known, not lost. */
  left: Int32Array
}

/** Which group each colony is in: 0 to `count` - 1. */
export interface Grouping {
  of: ArrayLike<number>
  count: number
}

/** Ten thousand years; a longer stay is a wrong date, and would ask for an absurd array. */
const LONGEST = 3_652_500

function check(name: string, value: number, row: number): void {
  if (!(value >= 0 && value <= LONGEST && Number.isInteger(value)))
    throw new RangeError(`countByDay: row ${row}: ${name} must be a whole number from 0, not ${value}`)
}

/**
 * Counts colonies by day, a DayCounts a group.
 *
 * Example: countByDay({ day: [0, 3, 3], way: [1, 0, 1] })[0] has atRisk [3, 2, 2, 2], lost [[1, 0, 0, 1]], left [0, 0, 0, 1].
 * Throws RangeError for a day or an entry that is not a whole number from 0, or a way not in 0..ways.
 */
export function countByDay(rows: Durations, ways = 1, groups?: Grouping): DayCounts[] {
  const groupCount = groups?.count ?? 1
  const lastDay = new Int32Array(groupCount).fill(-1)
  const { day, way, entry } = rows
  for (let i = 0; i < day.length; i++) {
    const d = day[i] ?? -1
    check('day', d, i)
    const w = way[i] ?? -1
    if (!(w >= 0 && w <= ways))
      throw new RangeError(`countByDay: row ${i}: way must be 0 to ${ways}, not ${w}`)
    const e = entry?.[i] ?? 0
    check('entry', e, i)
    if (e > 0 && e >= d) continue
    const g = groups?.of[i] ?? 0
    if (d > (lastDay[g] ?? -1)) lastDay[g] = d
  }
  const counts = Array.from(lastDay, (last) => empty(last, ways))
  const entered = entry === undefined ? undefined : Array.from(lastDay, (last) => new Int32Array(last + 1))
  for (let i = 0; i < day.length; i++) {
    const d = day[i] ?? 0
    const e = entry?.[i] ?? 0
    if (e > 0 && e >= d) continue
    const g = groups?.of[i] ?? 0
    const c = counts[g]
    if (c === undefined)
      throw new RangeError(`countByDay: row ${i}: group must be 0 to ${groupCount - 1}, not ${g}`)
    c.colonies++
    const w = way[i] ?? 0
    const target = w === 0 ? c.left : c.lost[w - 1]
    if (target !== undefined) target[d] = (target[d] ?? 0) + 1
    const late = entered?.[g]
    if (e > 0 && late !== undefined) late[e] = (late[e] ?? 0) + 1
  }
  for (const [g, c] of counts.entries()) fillAtRisk(c, entered?.[g])
  return counts
}

function empty(last: number, ways: number): DayCounts {
  return {
    colonies: 0,
    lastDay: last,
    atRisk: new Int32Array(last + 1),
    lost: Array.from({ length: ways }, () => new Int32Array(last + 1)),
    left: new Int32Array(last + 1),
  }
}

/** At risk on a day: gone on it or later, less those not yet followed before it. */
function fillAtRisk(c: DayCounts, entered: Int32Array | undefined): void {
  let gone = 0
  let notYet = 0
  for (let d = c.lastDay; d >= 0; d--) {
    gone += c.left[d] ?? 0
    for (const lost of c.lost) gone += lost[d] ?? 0
    if (d > 0) notYet += entered?.[d] ?? 0
    c.atRisk[d] = gone - notYet
  }
}

/** Colonies lost on a day in any way. */
export function lostOn(c: DayCounts, day: number): number {
  let sum = 0
  for (const lost of c.lost) sum += lost[day] ?? 0
  return sum
}

/**
 * The counts with only the ways named counted as lost; the other ways become leaving.
 * Example: asLost(c, [1, 2]) counts united, the third way, as left.
 */
export function asLost(c: DayCounts, ways: readonly number[]): DayCounts {
  const lost = new Int32Array(c.lastDay + 1)
  const left = Int32Array.from(c.left)
  for (const [i, by] of c.lost.entries()) {
    const target = ways.includes(i + 1) ? lost : left
    for (let d = 0; d <= c.lastDay; d++) target[d] = (target[d] ?? 0) + (by[d] ?? 0)
  }
  return { ...c, lost: [lost], left }
}

/** The counts with the first ways only: those of the others become leaving. Example: firstWays(c, 3) of six. */
export function firstWays(c: DayCounts, ways: number): DayCounts {
  const left = Int32Array.from(c.left)
  for (const by of c.lost.slice(ways))
    for (let d = 0; d <= c.lastDay; d++) left[d] = (left[d] ?? 0) + (by[d] ?? 0)
  return { ...c, lost: c.lost.slice(0, ways), left }
}

/** The counts with two ways only: those named as the first, all others as the second. */
export function thisWayOrOther(c: DayCounts, ways: readonly number[]): DayCounts {
  const [named, other] = [new Int32Array(c.lastDay + 1), new Int32Array(c.lastDay + 1)]
  for (const [i, by] of c.lost.entries()) {
    const target = ways.includes(i + 1) ? named : other
    for (let d = 0; d <= c.lastDay; d++) target[d] = (target[d] ?? 0) + (by[d] ?? 0)
  }
  return { ...c, lost: [named, other] }
}

/** Several groups taken together. */
export function together(groups: readonly DayCounts[]): DayCounts {
  const last = groups.reduce((m, c) => (c.lastDay > m ? c.lastDay : m), -1)
  const sum = empty(last, groups[0]?.lost.length ?? 0)
  for (const c of groups) {
    sum.colonies += c.colonies
    for (let d = 0; d <= c.lastDay; d++) {
      sum.atRisk[d] = (sum.atRisk[d] ?? 0) + (c.atRisk[d] ?? 0)
      sum.left[d] = (sum.left[d] ?? 0) + (c.left[d] ?? 0)
      for (const [w, lost] of sum.lost.entries()) lost[d] = (lost[d] ?? 0) + (c.lost[w]?.[d] ?? 0)
    }
  }
  return sum
}
