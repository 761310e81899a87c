/** Reading a posted form: what was typed, its hidden ids, and who signs. */

import { v7, validate } from 'uuid'
import { one, type Typed, typedFrom } from '../forms/index.ts'
import { KEYS, TAKEN_BACK } from '../parts/index.ts'
import type { AppContext } from './context.ts'
import { viewerOf } from './frame.tsx'
import { formIn } from './sent.ts'

/** What was typed; nothing when the body is not a form. Rejects with TooMuch. */
export async function typedIn(c: AppContext): Promise<Typed> {
  const form = await formIn(c)
  return form === null ? {} : typedFrom(form)
}

/** The id the form was shown with, or a new one where it has none. */
export function idIn(typed: Typed, name = 'id'): string {
  const id = one(typed, name)
  return validate(id) ? id : v7()
}

/** Whether tokens and calendar addresses are to be taken back too. */
export const takesKeysBack = (typed: Typed): boolean => one(typed, KEYS) === TAKEN_BACK

/** Who signs: whoever is signed in. */
export const signedIn = (c: AppContext): string => viewerOf(c).name

/** What was typed with an id in each hidden field, so that the same form saved twice is one entry. */
export function withIds(typed: Typed, names: readonly string[]): Typed {
  const kept: Typed = { ...typed }
  for (const name of names) kept[name] = [idIn(typed, name)]
  return kept
}
