/**
 * Other sheets of the same house: a wife calls, then her husband, and two of the yard write two sheets. What can kill and stands
 * on the one is looked for again, or asked again, on the other, before anything is opened.
 */
import { daysBetween } from '../../days.ts'
import { type Grave, type Sheet, sheetName, TRADE_HAZARDS, wordsOf } from '../../records/index.ts'
import type { Facts } from './item.ts'
import { placeOf, samePlace } from './place.ts'
import { digitsOf, isTelephone } from './same-name.ts'

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

/** Words beside a number that say no house: 'No. 4', 'Flat 2'. */
const BESIDE = ['no', 'nr', 'flat', 'unit', 'apt', 'house']

/** All words of the one are in the other, number and all: '1 Old St' is 'Old St 1' and 'Flat 2, 1 Old St, Springfield'. */
function sameAddress(a = '', b = ''): boolean {
  const [short = [], long = []] = [a, b]
    .map((x) => wordsOf(x).filter((w) => !BESIDE.includes(w)))
    .sort((x, y) => x.length - y.length)
  const numbered = short.some((w) => /\d/.test(w)) || short.length === long.length
  return short.length > 0 && numbered && short.every((w) => long.includes(w))
}

/** By the address, or by who called: a street is written in many ways, a telephone in one. To ask once too often costs a tap. */
const sameHouse = (a: Sheet['job'], b: Sheet['job']): boolean =>
  sameAddress(a.address, b.address) ||
  isTelephone(digitsOf(a.phone), b.phone) ||
  (a.email !== undefined && a.email.toLowerCase() === b.email?.toLowerCase())

/** Days after a job for which what it found in the house still counts there: pipes and asbestos do not leave with the bees (judgement). */
const STAYS_DAYS = 90

const graveOf = ({ site }: Sheet): Grave[] => {
  const found: readonly string[] = [
    ...(site.behind ?? []),
    ...(site.hazards ?? []),
    ...(site.bystanders ?? []),
    ...(site.nearWires === true ? ['near-wires'] : []),
  ]
  return OF_THE_HOUSE.filter((g) => found.includes(g))
}

/** Other sheets of the same house with something grave that is not on this one: of a job that is done, what stays in the house. */
export function otherSheetsOf(
  id: string,
  s: Sheet,
  all: readonly { id: string; sheet: Sheet; colonies: readonly string[] }[],
  today: string,
): OtherSheet[] {
  const own = graveOf(s)
  return all.flatMap((v) => {
    if (v.id === id || !sameHouse(v.sheet.job, s.job)) return []
    const { work, decision } = v.sheet
    const on = work.on ?? decision?.on
    const isDone = v.colonies.length > 0
    if (isDone && (on === undefined || daysBetween(on, today) > STAYS_DAYS)) return []
    const what = graveOf(v.sheet).filter(
      (g) => !own.includes(g) && (!isDone || (TRADE_HAZARDS as readonly string[]).includes(g)),
    )
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
