/**
 * Other sheets of the same house: a wife calls, then her husband, and two of the yard write two sheets. What can kill and stands
 * on the one is looked for again, or asked again, on the other, before anything is opened.
 */
import { type Grave, type Sheet, sheetName, TRADE_HAZARDS, wordsOf } from '../../records/index.ts'
import type { Facts } from './item.ts'
import { placeOf, samePlace } from './place.ts'

/** What a house keeps whichever wall it is, or whoever called: not how fierce these bees are, nor a ladder. */
const OF_THE_HOUSE: readonly Grave[] = [...TRADE_HAZARDS, 'allergic', 'children']

/** A sheet of the same house, and what of it is not on this one. */
export interface OtherSheet {
  id: string
  name: string
  what: Grave[]
}

/** As somebody taps it before the cut. 'not-here:gas' */
export const notHere = (what: Grave): string => `not-here:${what}`

/** The same words; or the one is the beginning of the other, number and all: '1 Old St' is '1 Old St, Springfield'. */
function sameHouse(a = '', b = ''): boolean {
  const [short = [], long = []] = [wordsOf(a), wordsOf(b)].sort((x, y) => x.length - y.length)
  const numbered = short.some((w) => /\d/.test(w)) || short.length === long.length
  return short.length > 0 && numbered && short.every((w, i) => w === long[i])
}

const graveOf = ({ site }: Sheet): Grave[] => {
  const found: readonly string[] = [
    ...(site.behind ?? []),
    ...(site.hazards ?? []),
    ...(site.bystanders ?? []),
    ...(site.nearWires === true ? ['near-wires'] : []),
  ]
  return OF_THE_HOUSE.filter((g) => found.includes(g))
}

/** Open and stopped sheets of the same house with something grave that is not on this one; a job that is done nags nobody. */
export function otherSheetsOf(
  id: string,
  s: Sheet,
  all: readonly { id: string; sheet: Sheet; colonies: readonly string[] }[],
): OtherSheet[] {
  const own = graveOf(s)
  return all.flatMap((v) => {
    if (v.id === id || v.colonies.length > 0 || !sameHouse(v.sheet.job.address, s.job.address)) return []
    const what = graveOf(v.sheet).filter((g) => !own.includes(g))
    return what.length === 0 ? [] : [{ id: v.id, name: sheetName(v.sheet), what }]
  })
}

/** What is asked, each thing once. */
export const askedOf = (others: readonly OtherSheet[]): Grave[] =>
  OF_THE_HOUSE.filter((g) => others.some((o) => o.what.includes(g)))

export function otherSheets(s: Sheet, others: readonly OtherSheet[], today: string): Facts {
  const asked = askedOf(others)
  if (asked.length === 0) return { state: 'not-needed', why: 'No other sheet of this house says more.' }
  const { done, doneOn, doneAt } = s.check
  const isNow = doneOn === today && doneAt !== undefined && samePlace(doneAt, placeOf(s))
  return isNow && asked.every((g) => done?.includes(notHere(g)))
    ? { state: 'met', why: 'Looked and asked again here.' }
    : {
        state: 'unsaid',
        why: 'Another sheet of this house says more than this one: look and ask again, and tap what is so.',
        moved: true,
      }
}
