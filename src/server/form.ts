/** Reading a posted form: what was typed, its hidden ids, and who signs. */
import { setCookie } from 'hono/cookie'
import { v7, validate } from 'uuid'
import { one, type Typed, typedFrom } from '../../web/forms/typed.ts'
import type { Here } from './deps.ts'
import { NAME_COOKIE, NAME_LIMIT, signerOf } from './frame.tsx'

/** What was typed; nothing when the body is not a form. */
export async function typedIn(c: Here): Promise<Typed> {
  try {
    return typedFrom(await c.req.formData())
  } catch {
    return {}
  }
}

/** The id the form was shown with, or a new one where it has none. */
export function idIn(typed: Typed, name = 'id'): string {
  const id = one(typed, name)
  return validate(id) ? id : v7()
}

const YEAR = 365 * 86_400

/** Who signs: the name this browser is known by, or the one typed into the form, which is kept. '' when neither. */
export function signedIn(c: Here, typed: Typed): string {
  const known = signerOf(c)
  if (known !== null) return known
  const name = one(typed, 'by')
  if (name !== '' && name.length <= NAME_LIMIT) rememberName(c, name)
  return name
}

export function rememberName(c: Here, name: string): void {
  setCookie(c, NAME_COOKIE, name, { path: '/', httpOnly: true, sameSite: 'Lax', maxAge: YEAR })
}

/** What was typed with an id in each hidden field, so that the same form saved twice is one entry. */
export function withIds(typed: Typed, names: readonly string[]): Typed {
  const kept: Typed = { ...typed }
  for (const name of names) kept[name] = [idIn(typed, name)]
  return kept
}
