/** A visit as one form: what was seen, and what else was done with the hive open. Read on the server and in the phone. */

import { anyTyped, type Draft, draftOf, labelOf, one, type Typed } from '../../forms/index.ts'
import { type Units, type Words, wordsIn } from '../../words/index.ts'
import { notAsked } from './given.ts'

/** Things given that fit on one form. */
export const GIFT_SLOTS = ['given1.', 'given2.', 'given3.'] as const
export const CAGE = 'cage.'
export const TIES = 'ties.'
export const WASH = 'wash.'

/** Names of the hidden ids, one for each entry a visit can become. */
export const idField = (prefix: string): string => `id.${prefix}`
export const VISIT_PREFIXES = ['', CAGE, TIES, WASH, ...GIFT_SLOTS]

/** The entries that a filled visit form stands for: always an inspection, and whatever else was filled. */
export function visitDrafts(typed: Typed, units: Units): Draft[] {
  const drafts = [draftOf('inspection', typed, units)]
  if (anyTyped(typed, CAGE)) drafts.push(draftOf('queen-cage', typed, units, CAGE))
  if (one(typed, `${TIES}done`) !== '') drafts.push(draftOf('ties-removed', typed, units, TIES))
  if (anyTyped(typed, WASH)) drafts.push(draftOf('mite-wash', typed, units, WASH))
  for (const slot of GIFT_SLOTS) if (anyTyped(typed, slot)) drafts.push(givenIn(typed, units, slot))
  return drafts
}

/** Without what is asked of other things than the one given: the form shows it no more. */
function givenIn(typed: Typed, units: Units, slot: string): Draft {
  const what = one(typed, `${slot}what`)
  const gone = new Set(what === '' ? [] : notAsked(what).map((field) => slot + field))
  const kept = Object.fromEntries(Object.entries(typed).filter(([name]) => !gone.has(name)))
  return draftOf('given', kept, units, slot)
}

/** The tick that says: yes, a visit at which nothing was looked at. */
export const NOTHING = 'nothing'

/** A look that notes nothing, with nothing done and no photo beside it, and nobody has said that this is meant. */
export function isEmptyVisit(typed: Typed, drafts: readonly Draft[]): boolean {
  const [look, ...done] = drafts
  if (look === undefined || done.length > 0 || one(typed, NOTHING) === 'yes') return false
  const { kind, on, at, opened, ...noted } = look.raw
  return look.problems.length === 0 && Object.keys(noted).length === 0
}

const KIND_OF = { [CAGE]: 'queen-cage', [TIES]: 'ties-removed', [WASH]: 'mite-wash' } as const

/** The label of any field of a visit form. */
export function visitLabel(name: string, words: Words = wordsIn('en')): string {
  if (name === 'by') return words.record.yourName
  if (name === NOTHING) return ''
  const prefix = VISIT_PREFIXES.find((p) => p !== '' && name.startsWith(p)) ?? ''
  const kind =
    prefix === '' ? 'inspection' : prefix in KIND_OF ? KIND_OF[prefix as keyof typeof KIND_OF] : 'given'
  const path = name.slice(prefix.length)
  return labelOf(kind, path, words)
}
