/** Secret addresses that open a page without an account. */
import { wordsIn } from '../words/index.ts'
import { addressOf } from './address.ts'
import type { AppContext, Deps } from './context.ts'
import { page } from './respond.tsx'

/**
 * Nothing is at that address: the same answer whatever is wrong with it, and trying many is slowed down. `saying` draws the
 * page; it is given a sentence when too many were tried.
 */
export async function nothingThere(
  c: AppContext,
  deps: Deps,
  saying: (wait: string | null) => Parameters<typeof page>[1],
): Promise<Response> {
  const wait = await deps.people.limits.guess('letter', addressOf(c, deps.outside))
  if (wait > 0) c.header('Retry-After', String(wait))
  return page(c, saying(wait > 0 ? wordsIn('en').signIn.tooMany(wait) : null), wait > 0 ? 429 : 404)
}
