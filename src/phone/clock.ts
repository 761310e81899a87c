/**
 * The phone's clock against the yard's, as far as the phone can tell: by what the server said its own was when the round
 * last came. A phone three days behind would put a visit on the wrong day, and the plan with it.
 */
import { type Day, dayIn } from '../days.ts'
import type { ClockOff } from '../parts/index.ts'
import type { RoundHead } from './database.ts'

type Heard = Pick<RoundHead, 'zone' | 'at' | 'fetchedAt'>

/** Milliseconds of difference that are no fault of the clock: the answer took its time (judgement). */
const SLACK_MS = 10 * 60_000

/** The moment in the yard: the phone's own, mended by what it was off by then, and never before what it has heard. */
export function yardMoment({ at, fetchedAt }: Pick<Heard, 'at' | 'fetchedAt'>, now: Date): Date {
  if (at === undefined) return now
  const off = Date.parse(fetchedAt) - Date.parse(at)
  const mended = Math.abs(off) < SLACK_MS ? now.getTime() : now.getTime() - off
  return new Date(Math.max(mended, Date.parse(at) - SLACK_MS))
}

/** The day in the yard. */
export const yardDay = (heard: Heard, now: Date): Day => dayIn(heard.zone, yardMoment(heard, now))

/** Null where the phone's day is the yard's, or nothing was heard. */
export function clockOff(heard: Heard | null, now: Date): ClockOff | null {
  if (heard === null) return null
  const [phone, yard] = [dayIn(heard.zone, now), yardDay(heard, now)]
  return phone === yard ? null : { phone, yard }
}
