/**
 * The rows of a Cox model in the order in which its risk sets are walked: from the last day back, found by counting
 * days instead of sorting.
 */

export interface SurvivalRows {
  /** Whole days from intake to the loss or to the last day known. */
  day: ArrayLike<number>
  /** 1: lost on that day. 0: left, or still there. */
  lost: ArrayLike<number>
  /** Followed from this day on; 0 or absent: from intake. See Durations. */
  entry?: ArrayLike<number>
}

/** Rows in counted order, and where each day's begin. */
export interface Order {
  /** Row numbers, the latest day first; rows never at risk are left out. */
  rows: Int32Array
  /** How many rows have that day or a later one: the rows of day d are `rows[begin[d + 1] .. begin[d])`. */
  begin: Int32Array
}

export interface RiskSets {
  lastDay: number
  /** By the day of loss or leaving. */
  leaving: Order
  /** By the day from which a row was followed, where that is later than intake; null when no row is. */
  entering: Order | null
  events: number
}

/** Example: riskSets({ day: [3, 1], lost: [1, 0] }).leaving.rows = [0, 1]. */
export function riskSets(rows: SurvivalRows): RiskSets {
  const { day, lost, entry } = rows
  const observed = (i: number): boolean => (entry?.[i] ?? 0) === 0 || (entry?.[i] ?? 0) < (day[i] ?? 0)
  let lastDay = -1
  let events = 0
  let late = false
  for (let i = 0; i < day.length; i++) {
    if (!observed(i)) continue
    if ((day[i] ?? 0) > lastDay) lastDay = day[i] ?? 0
    if (lost[i] === 1) events++
    if ((entry?.[i] ?? 0) > 0) late = true
  }
  return {
    lastDay,
    events,
    leaving: byDay(day, lastDay, observed),
    entering:
      late && entry !== undefined ? byDay(entry, lastDay, (i) => observed(i) && (entry[i] ?? 0) > 0) : null,
  }
}

/** Counting sort, latest day first. */
function byDay(day: ArrayLike<number>, lastDay: number, take: (i: number) => boolean): Order {
  const begin = new Int32Array(lastDay + 2)
  for (let i = 0; i < day.length; i++) if (take(i)) begin[day[i] ?? 0] = (begin[day[i] ?? 0] ?? 0) + 1
  let sum = 0
  for (let d = lastDay; d >= 0; d--) {
    sum += begin[d] ?? 0
    begin[d] = sum
  }
  const rows = new Int32Array(sum)
  const next = Int32Array.from(begin)
  for (let i = day.length - 1; i >= 0; i--) {
    if (!take(i)) continue
    const d = day[i] ?? 0
    const place = (next[d] ?? 0) - 1
    next[d] = place
    rows[place] = i
  }
  return { rows, begin }
}
