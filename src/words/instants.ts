/** Instants as people of the yard say them. */
import { clockIn, type Day } from '../days.ts'
import { dayWords } from './dates.ts'

/** 'Sun 10 May, 04:05', in the yard's time zone. */
export function instantWords(iso: string, zone: string, today: Day): string {
  const instant = new Date(iso)
  if (Number.isNaN(instant.getTime())) return iso
  const { day, time } = clockIn(zone, instant)
  return `${dayWords(day, today)}, ${time}`
}

/** '3.4 MB' */
export const sizeWords = (bytes: number): string =>
  bytes < 1_000_000 ? `${Math.max(1, Math.round(bytes / 1000))} kB` : `${(bytes / 1_000_000).toFixed(1)} MB`
