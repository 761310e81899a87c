/** One wall of one house: what was looked at, cleared or decided there says nothing of another. */
import { daysBetween } from '../../days.ts'
import { type Place, type Sheet, wordsOf } from '../../records/index.ts'

/** Where the sheet is now. */
export const placeOf = ({ job, site }: Sheet): Place => ({
  ...(job.address === undefined ? {} : { address: job.address }),
  ...(site.where === undefined ? {} : { where: site.where }),
  ...(site.surface === undefined ? {} : { surface: site.surface }),
  ...(site.type === undefined ? {} : { type: site.type }),
})

/** Said: a word, and not “?”; of an address two, or a number, for nobody drives to “tbd”. */
export const saysWall = ({ site }: Sheet): boolean => /\p{L}{3}/u.test(site.where ?? '')
export const saysAddress = ({ job: { address = '' } }: Sheet): boolean =>
  /\d/.test(address) || wordsOf(address).length > 1

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

/**
 * Days an answer is good for (judgement): who is at home changes from one day to the next; a wall is drilled, wired and
 * painted over the months. How old a house is stays.
 */
const GOOD_FOR: Record<Looked, number> = { behind: 90, hazards: 90, old: 36_500, bystanders: 2 }

/** Whether it was looked, or asked, here and lately: an answer that came along from another place is none. */
export const lookedHere = (s: Sheet, what: Looked, today: string): boolean => {
  const at = s.site.lookedAt?.[what]
  return (
    s.site[what] !== undefined &&
    at?.on !== undefined &&
    daysBetween(at.on, today) <= GOOD_FOR[what] &&
    samePlace(at, placeOf(s), OF[what])
  )
}

/** Whether what is ticked was ticked today, and here. */
export const tickedHere = (s: Sheet, today: string): boolean => {
  const { doneOn, doneAt } = s.check
  return doneOn === today && doneAt !== undefined && samePlace(doneAt, placeOf(s))
}

/**
 * The sheet with the place beside each answer that was tapped for it. `shown`: the sheet as the form showed it; an answer that
 * stood there already when the place was changed in the same form is of the old place.
 */
export function stamped(after: Sheet, shown: Sheet, asked: readonly Looked[], today: string): Sheet {
  const here = placeOf(after)
  const lookedAt = { ...after.site.lookedAt }
  for (const what of asked)
    if (after.site[what] === undefined) delete lookedAt[what]
    else if (shown.site[what] === undefined || samePlace(placeOf(shown), here, OF[what])) {
      // What came back as it stood was not asked again.
      const stood = lookedHere(shown, what, today) && same(shown.site[what], after.site[what])
      lookedAt[what] = { ...here, on: (stood ? shown.site.lookedAt?.[what]?.on : undefined) ?? today }
    }
  return { ...after, site: { ...after.site, lookedAt } }
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

/** Which part asks it. */
export const ASKED: Readonly<Partial<Record<string, readonly Looked[]>>> = {
  job: ['bystanders'],
  site: ['behind', 'hazards', 'old'],
}

/** The answers a form does not show as tapped: they are of another place, or too old. */
export const ofElsewhere = (s: Sheet, asked: readonly Looked[], today: string): Looked[] =>
  asked.filter((what) => s.site[what] !== undefined && !lookedHere(s, what, today))
