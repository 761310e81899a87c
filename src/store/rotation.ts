/** Which backups to keep. Pure: names and instants in, names out. */
import { dayNumber } from '../days.ts'

export interface Keep {
  daily: number
  weekly: number
  monthly: number
}

/** 7 daily, 5 weekly, 12 monthly: a week of every day, a month of every week, a year of every month. */
export const KEEP: Keep = { daily: 7, weekly: 5, monthly: 12 }

/** Monday's week. 1970-01-01 was a Thursday. */
const weekOf = (day: string): number => Math.floor((dayNumber(day) + 3) / 7)

/**
 * Backups that no rule keeps. All of the last day are kept: the one before may hold what the last one has lost. Of days
 * before, the last one of each of the last `daily` days that have one is kept, and so for weeks and
 * months: days that have one, not days of the calendar, so that a machine that was off, or a clock that ran ahead, throws
 * nothing away. Example: one backup a day for two years leaves at most 7 + 5 + 12.
 */
export function surplus<B extends { name: string; at: string }>(
  backups: readonly B[],
  keep: Keep = KEEP,
): B[] {
  const newestFirst = [...backups].sort((a, b) => (a.at < b.at ? 1 : -1))
  const lastDay = newestFirst[0]?.at.slice(0, 10)
  const kept = new Set(newestFirst.filter((b) => b.at.startsWith(lastDay ?? '')).map((b) => b.name))
  const keepLastOf = (period: (day: string) => string | number, count: number): void => {
    const seen = new Set<string | number>()
    for (const b of newestFirst) {
      const key = period(b.at.slice(0, 10))
      if (seen.has(key) || seen.size >= count) continue
      seen.add(key)
      kept.add(b.name)
    }
  }
  keepLastOf((day) => day, keep.daily)
  keepLastOf(weekOf, keep.weekly)
  keepLastOf((day) => day.slice(0, 7), keep.monthly)
  return newestFirst.filter((b) => !kept.has(b.name))
}
