/** One wall of one house: what was looked at, cleared or decided there says nothing of another. */
import { type Place, type Sheet, wordsOf } from '../../records/index.ts'

/** Where the sheet is now. */
export const placeOf = ({ job, site }: Sheet): Place => ({
  ...(job.address === undefined ? {} : { address: job.address }),
  ...(site.where === undefined ? {} : { where: site.where }),
  ...(site.surface === undefined ? {} : { surface: site.surface }),
  ...(site.type === undefined ? {} : { type: site.type }),
})

const PARTS = ['address', 'where', 'surface', 'type'] as const

/** The same words in the same order, whatever capitals, blanks and commas: one word more is another place. */
export const samePlace = (a: Place, b: Place, parts: readonly (keyof Place)[] = PARTS): boolean =>
  parts.every((at) => wordsOf(a[at] ?? '').join(' ') === wordsOf(b[at] ?? '').join(' '))

/** What is asked of one place. Who is about is asked of the whole house. */
const OF = {
  behind: PARTS,
  hazards: PARTS,
  old: PARTS,
  bystanders: ['address'],
} as const satisfies Record<string, readonly (keyof Place)[]>
export type Looked = keyof typeof OF

/** Whether it was looked, or asked, here: an answer that came along from another place is none. */
export const lookedHere = (s: Sheet, what: Looked): boolean => {
  const at = s.site.lookedAt?.[what]
  return s.site[what] !== undefined && at !== undefined && samePlace(at, placeOf(s), OF[what])
}

/**
 * The sheet with the place beside each answer that was tapped for it. `shown`: the sheet as the form showed it; an answer that
 * stood there already when the place was changed in the same form is of the old place.
 */
export function stamped(after: Sheet, shown: Sheet, asked: readonly Looked[]): Sheet {
  const here = placeOf(after)
  const lookedAt = { ...after.site.lookedAt }
  for (const what of asked)
    if (after.site[what] === undefined) delete lookedAt[what]
    else if (shown.site[what] === undefined || samePlace(placeOf(shown), here, OF[what]))
      lookedAt[what] = here
  return { ...after, site: { ...after.site, lookedAt } }
}

/** Which part asks it. */
export const ASKED: Readonly<Partial<Record<string, readonly Looked[]>>> = {
  job: ['bystanders'],
  site: ['behind', 'hazards', 'old'],
}

/** The answers a form does not show as tapped: they are of another place. */
export const ofElsewhere = (s: Sheet, asked: readonly Looked[]): Looked[] =>
  asked.filter((what) => s.site[what] !== undefined && !lookedHere(s, what))
