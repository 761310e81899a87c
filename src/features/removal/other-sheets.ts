/**
 * Other sheets of the same house: a wife calls, then her husband, and two of the yard write two sheets. What can kill and stands
 * on the one is looked for again, or asked again, on the other, before anything is opened. What another person wrote on this phone
 * and has not sent is such a sheet, be it of this very job.
 */
import { daysBetween } from '../../days.ts'
import {
  type Decision,
  EMPTY_SHEET,
  type Grave,
  isUnderWay,
  type Shared,
  type Sheet,
  sharedWith,
  sheetName,
  TRADE_HAZARDS,
} from '../../records/index.ts'
import { fingerprint } from '../../store/index.ts'
import { goneFrom } from './grave.ts'
import { GRAVE_WORDS } from './hazard-words.ts'
import { tappedAt } from './hazards.ts'
import { type Facts, MET, NOT_NEEDED } from './item.ts'
import { notesOf, placeTexts, shortTexts } from './notes-read.ts'
import { fierce, saidFierce } from './people.ts'
import { tickedHere } from './place.ts'
import { bare } from './was-said.ts'
import { namesHazard, writtenIn } from './written.ts'

/** What can kill, or was done to the bees: what one sheet of a house says and another has to ask. */
export type Told = Grave | 'sprayed'

/** Of a job that is done, what stays in the house, and who lives there. */
const STAYS: readonly Told[] = [...TRADE_HAZARDS, 'old', 'allergic', 'children']

/** What a house keeps whichever wall it is, or whoever called, and bees that are fierce on one side of it: not a ladder. */
const OF_THE_HOUSE: readonly Told[] = [...STAYS, 'fierce', 'sprayed']

/** A sheet of the same house, and what of it is not on this one. */
export interface OtherSheet {
  /** Its own; or whose it is too, where it is not sent. */
  id: string
  /** Where more of it is said. */
  path: string
  name: string
  /** Why it is asked about here. */
  shares: Shared | 'job'
  what: Told[]
  /** Its notes that are not on this one; where it is perhaps of this house, the first of its words. */
  notes: string[]
  /** It was refused, or waits; or why it ended. */
  stopped?: Decision | string
  /** Why, in words that name nothing which could be asked by itself. */
  asks?: string
}

/** 'of this house': a telephone alone may be of somebody with two houses. */
export const sharing = ({ shares }: Pick<OtherSheet, 'shares'>): string =>
  shares === 'perhaps'
    ? 'perhaps of this house'
    : shares === 'house' || shares === 'job'
      ? `of this ${shares}`
      : `with the same ${shares}`

/** As somebody taps it before the cut, of one other sheet: what the next one says, or this one later, is asked by itself. */
export const notThere = (what: Told, { id }: Pick<OtherSheet, 'id'>): string => `not-there:${what}:${id}`

/** The same of why it was stopped, or of what it says that is perhaps of this house; said again later, it is asked again. */
export const stoppedThere = ({ id, stopped, shares, what, notes }: OtherSheet): string =>
  `not-there:stopped:${id}${shares === 'perhaps' ? `:${what.join() || fingerprint(notes).toString(36)}` : ''}${typeof stopped === 'object' && stopped.at !== undefined ? `:${stopped.at}` : ''}`

/** Its notes, read here: by one tap that is of exactly these words. */
export const readThere = ({ id, notes }: Pick<OtherSheet, 'id' | 'notes'>): string =>
  `read-there:${id}:${fingerprint(notes).toString(36)}`

/** A sheet as it is known here; `by`: who wrote it on this phone and has not sent it. */
interface Known {
  id: string
  by?: string
  sheet: Sheet
  colonies: readonly string[]
  /** What is said of it beside its notes; asked of those of this house alone. */
  facts?: () => string[]
}

/** Days after a job for which what it found in the house still counts there: pipes and asbestos do not leave with the bees (judgement). */
const STAYS_DAYS = 90

const tappedOn = (s: Sheet): Told[] => {
  const { old, oldHow, sprayed } = s.site
  const tapped: readonly string[] = [
    ...tappedAt(s),
    ...(saidFierce(s) ? ['fierce'] : []),
    // “Tested” and “not cut into” are said of an old one.
    ...(old === 'yes' || (old !== 'no' && oldHow !== undefined) ? ['old'] : []),
    ...(sprayed === 'yes' ? ['sprayed'] : []),
  ]
  return OF_THE_HOUSE.filter((g) => tapped.includes(g))
}

/** What another sheet says and this one does not: tapped there, or in somebody's words, those of a refusal among them. */
export function moreOn(other: Sheet, s: Sheet): Told[] {
  // Where nobody has said that it is new, a house is asked as an old one.
  const own = [...tappedOn(s), ...(fierce(s) ? ['fierce'] : []), ...(s.site.old === 'no' ? [] : ['old'])]
  const written = writtenIn(other).filter(({ tapped }) => !tapped.some((g) => own.includes(g)))
  const there: readonly string[] = [...tappedOn(other), ...written.map((w) => w.tapped[0])]
  return OF_THE_HOUSE.filter((g) => there.includes(g) && !own.includes(g))
}

/** What is forgotten of a house with a sheet. */
export const saidOn = (s: Sheet): Told[] => moreOn(s, EMPTY_SHEET)

/** Why nothing was opened there: a decision, or why it ended. */
export const stopOf = ({ decision, ended }: Sheet): OtherSheet['stopped'] =>
  ended?.why ?? (decision?.is === 'go' ? undefined : decision)

/** “Whole wall hisses”: nothing that is on a list, and somebody stopped for it. A bare “Wait” is none. */
function asksOf(other: Sheet, stopped: OtherSheet['stopped']): string | undefined {
  const why = typeof stopped === 'string' ? stopped : stopped?.reason
  return why === undefined || !/\p{L}{3}/u.test(why) || namesHazard(other, why) ? undefined : why
}

/** Its notes, the reason of its “go” among them; and where it is and what is cut, plain or not: it is another place. */
const saysOf = (s: Sheet, day: string): string[] => [...new Set([...notesOf(s, day), ...placeTexts(s)])]

/** As it stands in the note of a sheet that its house is that of another one too. */
const isToo = (house = ''): string => `This house is “${house}” too`

/** Without what is decided on it: a “go” must not change what its own ticks are of. */
const undecided = ({ decision: _, ...s }: Sheet): Sheet => s

/** Of one that is perhaps of this house, whether it is, and the first of what it says: all the rest once it is. */
function asPerhaps(o: OtherSheet, house: string | undefined): OtherSheet[] {
  const { stopped: _, ...other } = o
  const notes = [...(o.asks === undefined ? [] : [o.asks]), ...o.notes].slice(0, o.what.length > 0 ? 0 : 1)
  return o.what.length + notes.length === 0 ? [] : [{ ...other, notes, asks: isToo(house) }]
}

/** Of another sheet, and how its house is called there. */
interface Said {
  other: OtherSheet
  house: string | undefined
}

/** What one other sheet says more than this one, or why it was stopped: of a job that is done, what stays in the house. */
function saidThere(id: string, s: Sheet, all: readonly Known[], today: string, v: Known): Said[] {
  const { by } = v
  const same = v.id === id
  const shared: { shares: OtherSheet['shares']; was?: string } | undefined = !same
    ? sharedWith(v.sheet, s.job)
    : by === undefined
      ? undefined
      : { shares: 'job' }
  if (shared === undefined) return []
  const { was } = shared
  const house = was ?? v.sheet.job.address
  const isOne = s.site.foundNote?.includes(isToo(house)) === true
  const shares = isOne ? 'house' : shared.shares
  const maybe = shares === 'perhaps'
  // Of what is not sent, only what is new: as the yard has it, it is asked about by itself.
  const there = by === undefined ? undefined : all.find((o) => o.by === undefined && o.id === v.id)
  const told = there?.sheet ?? s
  const { work, decision, job } = v.sheet
  const on = work.on ?? decision?.on ?? (maybe ? (job.calledOn ?? job.plannedOn ?? today) : undefined)
  const isDone = v.colonies.length > 0
  if ((isDone || maybe) && (on === undefined || daysBetween(on, today) > STAYS_DAYS)) return []
  const more = [...moreOn(v.sheet, s), ...(same ? goneFrom(v.sheet, s) : [])]
  const what = [...new Set(more)].filter(
    (g) => (!isDone || STAYS.includes(g)) && (same || moreOn(v.sheet, told).includes(g)),
  )
  const stopped = isDone ? undefined : stopOf(v.sheet)
  const own = [undecided(s), same || there === undefined ? undecided(told) : told].flatMap((x) =>
    saysOf(x, today),
  )
  const heard = [...own, ...shortTexts(s)].map(bare)
  const why = asksOf(v.sheet, stopped)
  // It was taken over as a note of this one, and is read as such.
  const asks = why !== undefined && own.some((text) => text.includes(why)) ? undefined : why
  const noted = saysOf(v.sheet, '')
  const facts = (v.facts?.() ?? []).filter((fact) => !noted.some((text) => fact.includes(text)))
  const notes = [...noted.filter((text) => text !== why && !heard.includes(bare(text))), ...facts]
  if (what.length === 0 && stopped === undefined && notes.length === 0) return []
  const other: OtherSheet = {
    id: by === undefined ? v.id : fingerprint([v.id, by]).toString(36),
    path: by === undefined ? `/removals/${v.id}` : '/outbox',
    name: `${sheetName(v.sheet)}${was === undefined ? (maybe ? `, ${job.address}` : '') : ` (“${was}” was on it before)`}${by === undefined ? '' : ` (${by}, not sent)`}`,
    shares,
    what,
    notes,
    ...(stopped === undefined ? {} : { stopped }),
    ...(asks === undefined ? {} : { asks }),
  }
  return [{ other, house }]
}

/** Other sheets of the same house that say more than this one, or were stopped; and those that perhaps are. */
export const otherSheetsOf = (id: string, s: Sheet, all: readonly Known[], today: string): OtherSheet[] =>
  all.flatMap((v) =>
    saidThere(id, s, all, today, v).flatMap(({ other, house }) =>
      other.shares === 'perhaps' ? asPerhaps(other, house) : [other],
    ),
  )

/**
 * What is left on a sheet of another one that is erased: what can kill, and of words only that there were some, for they may name
 * somebody. '' where it says no more than this one.
 */
export const leftOf = (id: string, s: Sheet, erased: Known, today: string): string =>
  saidThere(id, s, [erased], today, erased)
    .map(({ other: { shares, what, stopped, notes } }) => {
      const held = [
        typeof stopped === 'string' ? 'ended' : stopped?.reason === undefined ? '' : STOPPED[stopped.is],
        notes.length === 0 ? '' : 'held notes',
      ].filter(Boolean)
      const said =
        what.length === 0 ? '' : `said: ${what.map((g) => GRAVE_WORDS[g].toLowerCase()).join(', ')}`
      const rest = held.length === 0 ? '' : `${held.join(' and ')}: look again`
      const all = [said, rest].filter(Boolean).join('; it ')
      return all === ''
        ? ''
        : `Another sheet ${shares === 'perhaps' ? 'perhaps of' : 'of'} this house, erased since, ${all}.`
    })
    .join(' ')

const STOPPED: Record<Decision['is'], string> = { refuse: 'was refused', wait: 'was to wait', go: '' }

/** Those whose notes are read here. Begun is what was written down as begun: what opens it is begun on notes that are read. */
export const readOf = (s: Sheet, others: readonly OtherSheet[], today: string): OtherSheet[] =>
  isUnderWay(s, today) && (s.work.underGo ?? s.work.withoutGo) !== undefined
    ? []
    : others.filter((o) => o.shares !== 'perhaps' && o.notes.length > 0)

/** Each thing of each sheet by itself: one tap for a gas pipe and asbestos would be tapped for the one that was looked for. */
export function otherSheets(s: Sheet, others: readonly OtherSheet[], today: string): Facts {
  const looked = others.flatMap((o) => [
    ...(o.shares === 'perhaps' ? [] : o.what).map((g) => notThere(g, o)),
    ...(o.asks === undefined ? [] : [stoppedThere(o)]),
  ])
  const asked = [...looked, ...readOf(s, others, today).map(readThere)]
  if (asked.length === 0) return NOT_NEEDED
  return tickedHere(s, today) && asked.every((id) => s.check.done?.includes(id))
    ? MET
    : {
        state: 'unsaid',
        why: 'Another sheet says more, or was stopped: look, ask and read, and tap what is so.',
        moved: true,
      }
}
