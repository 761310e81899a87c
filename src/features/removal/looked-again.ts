/**
 * “Is it here?”, of what was only written, or stands on another sheet of the house: two answers, so that a thumb that ticks a whole list
 * does not say of a gas pipe that it is not there.
 */
import { many, one, type Typed } from '../../forms/index.ts'

const AGAIN = 'again.'

/** The field of one such question; `id` is what is ticked where the answer is “not”. */
export const againField = (id: string): string => `${AGAIN}${id}`

/** A form with what was answered so among its ticks. */
export function withAgain(typed: Typed): Typed {
  const asked = Object.keys(typed).filter((name) => name.startsWith(AGAIN))
  if (asked.length === 0) return typed
  const rest = Object.fromEntries(Object.entries(typed).filter(([name]) => !asked.includes(name)))
  const not = asked.filter((name) => one(typed, name) === 'not').map((name) => name.slice(AGAIN.length))
  return { ...rest, done: [...new Set([...many(typed, 'done'), ...not])] }
}
