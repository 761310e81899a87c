/**
 * Pages that take a while take turns: between two of them whatever is short, a form, an entry, a tapped box, is answered
 * first, however many pages wait.
 */
import { othersFirst } from '../../app/node.ts'

export function turns(): () => Promise<void> {
  let last: Promise<void> = Promise.resolve()
  return () => {
    last = last.then(othersFirst)
    return last
  }
}
