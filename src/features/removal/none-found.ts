/** “None” is tapped with how it is known: one tap, and nobody looks for wires or asbestos by not asking. */
import { many, type Typed } from '../../forms/index.ts'
import type { Site } from '../../records/index.ts'

type How = Pick<Site, 'old' | 'oldHow' | 'behindHow'>

/** What each of them says of the site. */
const NONE = {
  hazards: {
    'none-new': { old: 'no' },
    'none-tested': { oldHow: 'tested' },
    'none-untouched': { oldHow: 'untouched' },
  },
  behind: {
    'none-detector': { behindHow: 'detector' },
    'none-traced': { behindHow: 'traced' },
    'none-owner': { behindHow: 'owner' },
  },
} as const satisfies Record<'hazards' | 'behind', Record<string, How>>
const FIELDS = ['hazards', 'behind'] as const

export const NO_HAZARD = Object.keys(NONE.hazards) as (keyof typeof NONE.hazards)[]
export const NONE_BEHIND = Object.keys(NONE.behind) as (keyof typeof NONE.behind)[]

/** The form as plain lists, and what was tapped with “none”. */
export function withoutHow(typed: Typed): { typed: Typed; how: How } {
  let plain = typed
  let how: How = {}
  for (const field of FIELDS) {
    const kinds: Record<string, How> = NONE[field]
    const tapped = many(typed, field)
    const kind = tapped.find((v) => kinds[v] !== undefined)
    if (kind === undefined) continue
    plain = { ...plain, [field]: tapped.map((v) => (kinds[v] === undefined ? v : 'none')) }
    how = { ...how, ...kinds[kind] }
  }
  return { typed: plain, how }
}

/** The lists with how it is known, as it is shown. */
export function withHow(typed: Typed, { old, oldHow, behindHow, hazards, behind }: Site): Typed {
  const kind = old === 'no' ? 'new' : oldHow
  return {
    ...typed,
    ...(hazards === undefined || kind === undefined ? {} : { hazards: [...hazards, `none-${kind}`] }),
    ...(behind === undefined || behindHow === undefined ? {} : { behind: [...behind, `none-${behindHow}`] }),
  }
}
