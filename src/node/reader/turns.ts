/**
 * Pages that take a while take turns: between two of them whatever is short, a form, an entry, a tapped box, is answered
 * first, however many pages wait.
 */
import { setImmediate as nextTurn } from 'node:timers/promises'

export function turns(): () => Promise<void> {
  let last: Promise<void> = Promise.resolve()
  return () => {
    last = last.then(() => nextTurn())
    return last
  }
}
