/** What was typed, held against what there is. Every word has to be found; the nearest to a tag first, then the newest. */
import { folded } from '../../folded.ts'
import type { Sheet } from '../../records/index.ts'
import { type ColonySummary, type TaggedRow, writtenIn } from '../../store/index.ts'
import { knownAs, STAND_WORDS } from '../../words/index.ts'

/** Words as they are compared. A hyphen or blank in a tag does not matter, so a word keeps neither. */
export const wordsOf = (typed: string): string[] =>
  folded(typed)
    .split(/\s+/)
    .map((w) => w.trim())
    .filter((w) => w !== '')
    .slice(0, 8)

/** Letters and digits only, without leading zeros: 'W-07' and 'w7' are the same. */
const bareTag = (tag: string): string =>
  folded(tag)
    .replaceAll(/[^\p{L}\p{N}]/gu, '')
    .replaceAll(/(?<!\d)0+(?=\d)/g, '')

/** How near a box is: 0 is its tag, 1 begins it, 2 is its stand, 3 is anything else it is known by. */
type Nearness = 0 | 1 | 2 | 3

export interface FoundBox {
  summary: ColonySummary
  near: Nearness
}

/** Boxes that are known by all of the words. */
export function findBoxes(typed: string, colonies: readonly ColonySummary[]): FoundBox[] {
  const words = wordsOf(typed)
  const tag = bareTag(typed)
  if (words.length === 0) return []
  return colonies
    .flatMap((summary): FoundBox[] => {
      const near = nearness(summary, words, tag)
      return near === null ? [] : [{ summary, near }]
    })
    .sort((a, b) => a.near - b.near || newest(a.summary, b.summary))
}

function nearness(s: ColonySummary, words: readonly string[], tag: string): Nearness | null {
  const own = bareTag(s.tag)
  if (tag !== '' && own === tag) return 0
  if (tag !== '' && own.startsWith(tag)) return 1
  const stand = s.stand === null ? null : folded(s.stand)
  const standTyped = words.filter((w) => !STAND_WORDS.includes(w))
  if (stand !== null && standTyped.length === 1 && standTyped[0] === stand) return 2
  const known = knownAs(s)
  return words.every((w) => known.includes(w) || own.includes(bareTag(w) || w)) ? 3 : null
}

/** In the yard before those that left; then the one that came, or left, last. */
const newest = (a: ColonySummary, b: ColonySummary): number =>
  Number(a.closedOn !== null) - Number(b.closedOn !== null) ||
  (b.closedOn ?? b.intakeOn).localeCompare(a.closedOn ?? a.intakeOn) ||
  a.tag.localeCompare(b.tag, 'en', { numeric: true })

export interface FoundEntry {
  row: TaggedRow
  /** The text in which the words stand. */
  text: string
}

/** Entries in which all the words stand; a word may be the tag of the box. The newest day first. */
export function findEntries(words: readonly string[], rows: readonly TaggedRow[]): FoundEntry[] {
  return rows
    .flatMap((row): FoundEntry[] => {
      const texts = writtenIn(row.entry)
      const all = folded(texts.join(' '))
      const tag = bareTag(row.tag)
      if (!words.every((w) => all.includes(w) || bareTag(w) === tag)) return []
      const text = texts.find((t) => words.some((w) => folded(t).includes(w)))
      return text === undefined ? [] : [{ row, text }]
    })
    .sort((a, b) => b.row.entry.on.localeCompare(a.row.entry.on) || b.row.seq - a.row.seq)
}

/** The word to look for first: the longest, which fewest entries hold. */
export const rarest = (words: readonly string[]): string =>
  [...words].sort((a, b) => b.length - a.length)[0] ?? ''

/** Whether a removal sheet's caller, place or story holds all the words. */
export function isSheetOf(words: readonly string[], { job, site }: Sheet): boolean {
  const known = folded(
    [job.name, job.phone, job.email, job.address, job.told, site.where]
      .filter((t) => t !== undefined)
      .join(' '),
  )
  const digits = known.replaceAll(/\D/g, '')
  return words.every(
    (w) => known.includes(w) || (/^[\d+()/-]{4,}$/.test(w) && digits.includes(w.replaceAll(/\D/g, ''))),
  )
}

const BEFORE = 40
const LONGEST = 140

/** A text around the first of the words, cut at blanks, with where the words stand in it. */
export function snippet(text: string, words: readonly string[]): { text: string; hit: boolean }[] {
  const flat = text.replaceAll(/\s+/g, ' ').trim()
  const low = folded(flat)
  // Folding may lengthen a text ('ß'): then it is shown from its beginning, nothing marked.
  const at =
    low.length === flat.length ? Math.min(...words.map((w) => low.indexOf(w)).filter((i) => i >= 0)) : -1
  if (!Number.isFinite(at) || at < 0) return [{ text: cut(flat, 0), hit: false }]
  const start = at > BEFORE ? Math.max(0, flat.indexOf(' ', at - BEFORE) + 1) : 0
  const shown = cut(flat, Math.min(start, at))
  const from = at - Math.min(start, at) + (start > 0 ? 1 : 0)
  const length = words.find((w) => low.startsWith(w, at))?.length ?? 0
  return [
    { text: shown.slice(0, from), hit: false },
    { text: shown.slice(from, from + length), hit: true },
    { text: shown.slice(from + length), hit: false },
  ].filter((part) => part.text !== '')
}

const cut = (text: string, start: number): string =>
  `${start > 0 ? '…' : ''}${text.slice(start, start + LONGEST)}${text.length > start + LONGEST ? '…' : ''}`
