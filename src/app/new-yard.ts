/**
 * Whether a yard typed into a form is one of the book's. A slip of the finger would otherwise begin a yard of its own,
 * stand in every menu and be offered at the next intake.
 */
import type { Draft } from '../forms/index.ts'
import { nearestName } from './nearest.ts'

/** Capitals and spaces are no difference between yards. */
const plainly = (name: string): string => name.toLowerCase().replaceAll(/\s+/g, '')

/**
 * Puts the book's own spelling into the draft where only capitals or spaces differ. A yard nobody has used is asked
 * about, beside the field, unless the form says that a new one is meant, or the book is empty.
 *
 * @param known yards of the book
 * @param stood the yard that the entry corrected named: it was settled then
 */
export function settleYard(draft: Draft, known: readonly string[], stood?: string): void {
  const said = draft.raw.yard
  if (typeof said !== 'string' || known.includes(said) || said === stood) return
  const same = known.find((yard) => plainly(yard) === plainly(said))
  if (same !== undefined) draft.raw.yard = same
  else if (known.length > 0 && !draft.newYard)
    draft.problems.push({ field: `${draft.prefix}yard`, message: askWords(said, nearestName(said, known)) })
}

const askWords = (said: string, near: string | undefined): string =>
  [
    `There is no yard called ${said} yet.`,
    near === undefined ? '' : `Did you mean ${near}?`,
    'Tick “A new yard” to begin one',
  ]
    .filter(Boolean)
    .join(' ')
