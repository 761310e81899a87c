/** “None” on a building is tapped with how it is known: one tap, and nobody looks for asbestos by not asking. */
import { many, type Typed } from '../../forms/index.ts'
import type { Site } from '../../records/index.ts'

/** What each of them says of the site. */
const NONE = {
  'none-new': { old: 'no' },
  'none-tested': { oldHow: 'tested' },
  'none-untouched': { oldHow: 'untouched' },
} as const satisfies Record<string, Pick<Site, 'old' | 'oldHow'>>
export const NONE_FOUND = Object.keys(NONE) as (keyof typeof NONE)[]

/** The form as a plain list, and what was tapped with “none”. */
export function withoutHow(typed: Typed): { typed: Typed; how: Pick<Site, 'old' | 'oldHow'> } {
  const tapped = many(typed, 'hazards')
  const kind = NONE_FOUND.find((k) => tapped.includes(k))
  if (kind === undefined) return { typed, how: {} }
  const plain = tapped.map((v) => (NONE_FOUND.some((k) => k === v) ? 'none' : v))
  return { typed: { ...typed, hazards: plain }, how: NONE[kind] }
}

/** The list with how it is known, as it is shown. */
export function withHow(typed: Typed, { old, oldHow, hazards }: Site): Typed {
  if (hazards === undefined) return typed
  const kind = old === 'no' ? 'none-new' : oldHow === undefined ? null : (`none-${oldHow}` as const)
  return kind === null ? typed : { ...typed, hazards: [...hazards, kind] }
}
