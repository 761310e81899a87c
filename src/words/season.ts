/** Months and climates in words. */
import { type Climate, MONTHS, type Month } from '../recovery/index.ts'
import type { Choice } from './choices.ts'

export const MONTH_NAMES: Record<Month, string> = {
  '1': 'January',
  '2': 'February',
  '3': 'March',
  '4': 'April',
  '5': 'May',
  '6': 'June',
  '7': 'July',
  '8': 'August',
  '9': 'September',
  '10': 'October',
  '11': 'November',
  '12': 'December',
}

const short = (m: Month): string => MONTH_NAMES[m].slice(0, 3)

export const MONTH_CHOICES: Choice[] = MONTHS.map((value) => ({ value, label: short(value) }))

export const CLIMATE_WORDS: Record<Climate, string> = {
  cold: 'Cold, short summers',
  temperate: 'Temperate',
  warm: 'Warm, mild winters',
  tropical: 'Tropical',
}

/** 'Nov to Feb', over the turn of the year; 'all year' for every month. */
export function stretchWords(months: readonly Month[]): string {
  if (months.length === 0) return 'none'
  if (months.length === MONTHS.length) return 'all year'
  const before = (m: Month): Month => MONTHS[(MONTHS.indexOf(m) + 11) % 12] ?? m
  const after = (m: Month): Month => MONTHS[(MONTHS.indexOf(m) + 1) % 12] ?? m
  const first = months.filter((m) => !months.includes(before(m)))
  const last = months.filter((m) => !months.includes(after(m)))
  const [from, to] = [first[0], last[0]]
  return first.length === 1 && from !== undefined && to !== undefined
    ? from === to
      ? short(from)
      : `${short(from)} to ${short(to)}`
    : months.map(short).join(', ')
}
