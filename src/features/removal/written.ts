/**
 * Hazards that stand in somebody's own words and are tapped nowhere. Not a list of bad words: the words for what the sheet has
 * an answer for already, in English and Spanish (the terms are common ones; a word that is missed is read before “go”).
 */
import {
  EMPTY_SHEET,
  type Grave,
  hasBegun,
  type Noted,
  type NotedLine,
  type Sheet,
} from '../../records/index.ts'
import { cuts, tappedAt, textsBehind } from './hazards.ts'
import { type Facts, MET, NOT_NEEDED } from './item.ts'
import { notesOf, notesUnread } from './notes-read.ts'
import { fierce } from './people.ts'
import { tickedHere } from './place.ts'
import { CHILDREN, STREETS } from './plain-place.ts'
import { type Stamp, withHouse, withLines, withUnread } from './was-said.ts'

interface Written {
  says: string
  word: RegExp
  /** What it is tapped as; the first is what it is asked as elsewhere. */
  tapped: readonly [Grave, ...Grave[]]
  /** Whose words; all of them where it is not said. */
  of?: (s: Sheet) => Texts
}
type Texts = (string | undefined)[]

/** What is built, in words: a year in an address or a telephone number is none. */
const ofBuilding = ({ job, site: s }: Sheet): Texts => [
  job.told,
  s.where,
  s.surface,
  s.behindNote,
  s.foundNote,
  s.otherEntrances,
  s.entrance,
]

const WRITTEN: readonly Written[] = [
  {
    says: 'gas',
    word: /\b(gas|lpg|propane|propano|butano?|garrafa|bombona|boiler|caldera|calentador|furnace|water heater|rotten eggs|mercaptan)\b/i,
    tapped: ['gas'],
  },
  // Of these no socket says anything that an electrician has made dead: they have a paper of their own.
  {
    says: 'a power line, meter or pole',
    word: /\b((?<!water )meters?|contador|medidor|acometida|\d{3,} ?v(olts?)?|power ?lines?|transformer|transformador|poles?|pylon|lamp ?posts?|street ?(lamps?|lights?)|farola|poste|overhead lines?|drop line|high voltage|substation|utility (pole|line|company|thing)|power company|service drop)\b/i,
    tapped: ['near-wires'],
  },
  {
    says: 'electric wires',
    word: /\b(wires?|wiring|cables?|electric\w*(?! (meter|pole|line|drop|company))|eléctric\w*|romex|fuse ?box|power ?cords?|ac line|breakers?|breaker panel|sockets?|outlets?|light switch|enchufes?|corriente|conduits?|mains|lamps?|knob and tube|cabinet|(junction|utility|control) box|(?<!de )luz|panels?|heaters?|pumps?|air condition\w*|hvac|generator|volts?|controller|equipment)\b/i,
    tapped: ['electric', 'electric-in-cut', 'near-wires'],
  },
  {
    says: 'asbestos',
    word: /asbest|eternit|uralit|amianto|vermiculit|artex|popcorn|transite|\bfibro|\bcement(?! (render|mortar|floor|block))|\bcemento\b/i,
    tapped: ['asbestos'],
  },
  {
    says: 'a building of before 1980',
    word: /\b1([5-8]\d\d|9[0-7]\d)\b|\b(twen|thir|for|fif|six|seven)ties\b|\blath\b|\blisted\b|\bfarmhouse\b/i,
    tapped: ['old'],
    of: ofBuilding,
  },
  { says: 'lead paint', word: /\blead[- ]?(paint|based|in)|\bplomo\b/i, tapped: ['lead-paint'] },
  {
    says: 'somebody allergic',
    word: /al+[eé]rg|epi-?pen|ana(ph|fil)|adrenalin|into shock|(sting|stung)\b.*\bhospital|hospital.*\b(sting|stung)/i,
    tapped: ['allergic'],
  },
  {
    says: 'children',
    word: CHILDREN,
    tapped: ['children'],
  },
  {
    says: 'fierce bees',
    word: /\bkiller bees?\b|attack|african|\bchas(ed|ing)\b|aggressive|agresiv|atac|brav[ao]s/i,
    tapped: ['fierce'],
  },
  {
    says: 'weak boards',
    word: /\brot(ten|ting)?\b|gives? way|caved|sag(s|ging)?\b|soft (roof|floor|boards?)|podrid/i,
    tapped: ['weak-structure'],
  },
  { says: 'a flue', word: /\b(flues?|chimneys?|fireplace|chimenea)\b|stovepipe/i, tapped: ['flue'] },
]

/** Everything on a sheet that is somebody's own words, why somebody refused, had it wait or goes all the same among it. */
const textsOf = (s: Sheet): string[] => {
  const { job, site, decision, ended } = s
  const named = [job.name, job.address, job.phone, job.email, site.type, site.where, site.surface]
  // What was taken out of its field has lines of its own.
  const inFields = notesOf({ ...s, site: { ...site, noted: [] } })
  const texts = [...named, ...inFields, decision?.reason, decision?.over?.reason, ended?.why]
  return [...new Set(texts.filter((x) => x !== undefined))]
}

/** “No gas, no kids” says that there is none, where nothing more is said of it. */
const NO_WORDS = [
  STREETS,
  /\b(no|not|nobody|without|sin|ni) [\p{L}-]+(?=\s*([,.;!]|$|\b(and|or|y|ni|nor)\b))/giu,
]
const hears = ({ word, of }: Written, texts: readonly string[], s: Sheet): string[] => {
  const own = of?.(s)
  return texts.filter(
    (text) =>
      (own === undefined || own.includes(text)) &&
      word.test(NO_WORDS.reduce((left, none) => left.replaceAll(none, ' '), text)),
  )
}

/** Words that name what is asked by its own name. */
export const namesHazard = (s: Sheet, text: string): boolean =>
  WRITTEN.some((w) => hears(w, [text], s).length > 0)

const ofPeople = ({ job, site }: Sheet): Texts => [job.told, site.bystandersNote]

/**
 * What is said of in words that were not on the sheet before: whoever ticked or cleared it had not read them. Of what a trade has
 * cleared, or of who is cared for, any words may be until it is begun: “one more, right of it”.
 */
export function writtenAnew(before: Sheet, after: Sheet): Grave[] {
  const fresh = (texts: (s: Sheet) => Texts): string[] => {
    const had = texts(before)
    return texts(after).filter((text) => text !== undefined && !had.includes(text)) as string[]
  }
  const texts = fresh(textsOf)
  const begun = hasBegun(after)
  const anyOf = (texts: (s: Sheet) => Texts): boolean => !begun && fresh(texts).length > 0
  // Once it is open, what runs behind it is seen: one more of what was cleared is asked until it is boxed.
  const moreBehind = begun
    ? after.work.boxedAt === undefined && fresh(({ site }) => [site.behindNote]).length > 0
    : anyOf(textsBehind)
  const said: Grave[] = [
    ...WRITTEN.flatMap((w) => (hears(w, texts, after).length > 0 ? w.tapped : [])),
    ...(moreBehind ? (before.check.clearances ?? []).map((c) => c.hazard) : []),
    ...(anyOf(ofPeople) ? (['allergic', 'children'] as const) : []),
  ]
  return [...new Set(said)]
}

/** A sheet with one more thing said on it, as it is typed: the reason for a “go” is heard before it is one, and its writer has read it. */
export const andSaid = (s: Sheet, more: string | undefined): Sheet =>
  more === undefined || more === ''
    ? s
    : { ...s, ended: { on: '', why: [s.ended?.why, more].filter(Boolean).join('. ') } }

const isTapped = (s: Sheet, { tapped }: Written): boolean => {
  const on: readonly string[] = [
    ...tappedAt(s),
    ...(fierce(s) ? ['fierce'] : []),
    ...(s.site.old === 'no' && cuts(s) ? [] : ['old']),
  ]
  return tapped.some((g) => on.includes(g))
}

/** What was written of it once, and went with no answer; a reason for which it went off since is one. */
const leftOf = ({ site: { noted = [] } }: Sheet, { tapped }: Written): NotedLine | undefined =>
  noted.findLast(
    (n, i) =>
      n.is === 'written' &&
      tapped.includes(n.what) &&
      !noted.slice(i).some((later) => later.is === 'gone' && later.what === n.what),
  )

/** What is written, or was, and tapped nowhere. */
export function writtenIn(s: Sheet): Written[] {
  const texts = textsOf(s)
  return WRITTEN.filter(
    (w) => (hears(w, texts, s).length > 0 || leftOf(s, w) !== undefined) && !isTapped(s, w),
  )
}

/** Words that are in no field any more, as they are said beside what they were of. */
const wrote = (s: Sheet, w: Written): string => {
  const words = leftOf(s, w)?.words
  return words === undefined ? '' : ` (was written: “${words}”)`
}

/** What is in the words of a sheet and tapped nowhere, each thing once, with the words where they are in no field any more. */
export const writtenOn = (s: Sheet): { what: Grave; was: string }[] =>
  writtenIn(s).map((w) => ({ what: w.tapped[0], was: wrote(s, w) }))

/**
 * The sheet with a line for words that a change takes out of it, and nobody has answered: an emptied field is no look. `stood`: the
 * sheet as others may have seen it.
 */
export const withWords = (before: Sheet, after: Sheet, stamp: Stamp, stood: Sheet = EMPTY_SHEET): Sheet =>
  withHouse(before, withUnread(before, withNamed(before, after, stamp), stood, stamp), stamp)

/** The same of words that name what is tapped by its own name. */
export function withNamed(before: Sheet, after: Sheet, { by, on, at, writtenAt }: Stamp): Sheet {
  const still = writtenIn(after)
  const went = writtenIn(before).filter(
    (w) => !still.includes(w) && !isTapped(after, w) && !notHereToday(before, w.tapped[0], on),
  )
  if (went.length === 0) return after
  const lines = went.map((w): Noted => {
    const words = hears(w, textsOf(before), before)
    return {
      what: w.tapped[0],
      is: 'written',
      words: (words.join('. ') || w.says).slice(0, 300),
      by,
      on,
      at,
      writtenAt,
    }
  })
  return { ...after, site: withLines(after.site, lines) }
}

/** As somebody taps it before the cut, of what is written on this sheet. 'not-here:gas' */
export const notHere = (what: Grave): string => `not-here:${what}`

const notHereToday = (s: Sheet, what: Grave, today: string): boolean =>
  tickedHere(s, today) && s.check.done?.includes(notHere(what)) === true

export function written(s: Sheet, today: string): Facts {
  const asked = writtenIn(s)
  const unread = notesUnread(s, today)
  if (asked.length === 0 && !unread) return NOT_NEEDED
  if (!unread && asked.every((w) => notHereToday(s, w.tapped[0], today))) return MET
  if (asked.length === 0)
    return {
      state: 'unsaid',
      why: 'Read what was noted, and tap what it says of danger.',
    }
  const words = asked.map((w) => `${w.says}${wrote(s, w)}`)
  return {
    state: 'unsaid',
    why: `Written, and not tapped: ${words.join(', ')}. Look again, and tap what is so.`,
    moved: true,
  }
}
