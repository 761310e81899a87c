/**
 * Hazards that stand in somebody's own words and are tapped nowhere. Not a list of bad words: the words for what the sheet has
 * an answer for already, in English and Spanish (the terms are common ones; a word that is missed is read above “Go”).
 */
import type { Grave, Sheet } from '../../records/index.ts'
import { tappedAt } from './hazards.ts'
import { fierce } from './people.ts'

interface Written {
  says: string
  word: RegExp
  /** What it is tapped as; the first is what it is asked as elsewhere. */
  tapped: readonly [Grave, ...Grave[]]
}

const WRITTEN: readonly Written[] = [
  {
    says: 'gas',
    word: /\b(gas|lpg|propane|propano|butano?|garrafa|bombona|boiler|caldera|calentador|furnace|water heater|rotten eggs|mercaptan)\b/i,
    tapped: ['gas'],
  },
  {
    says: 'electric wires',
    word: /\b(wires?|wiring|cables?|electric\w*|eléctric\w*|(?<!water )meters?|contador|medidor|acometida|romex|\d{3,} ?v(olts?)?|fuse ?box|power ?(lines?|cords?)|ac line|breakers?|breaker panel|transformer|transformador|sockets?|outlets?|light switch|enchufes?|corriente|conduits?|mains|poles?|pylon|lamps?|lamp ?posts?|street ?(lamps?|lights?)|farola|poste|overhead lines?|drop line|high voltage|knob and tube|cabinet|(junction|utility|control) box|luz|panels?|heaters?|pumps?|air condition\w*|hvac|generator|substation|utility (pole|line|company|thing)|power company|service drop|volts?|controller)\b/i,
    tapped: ['electric', 'electric-in-cut', 'near-wires'],
  },
  {
    says: 'asbestos',
    word: /asbest|eternit|uralita|amianto|fibrocement|vermiculit|artex|popcorn ceiling|transite|cement board|corrugated cement/i,
    tapped: ['asbestos'],
  },
  { says: 'lead paint', word: /\blead[- ]?(paint|based|in)|\bplomo\b/i, tapped: ['lead-paint'] },
  {
    says: 'somebody allergic',
    word: /al+[eé]rg|epi-?pen|ana(ph|fil)|adrenalin|into shock|(sting|stung)\b.*\bhospital|hospital.*\b(sting|stung)/i,
    tapped: ['allergic'],
  },
  {
    says: 'children',
    word: /\b(kids?|child(ren)?|toddlers?|baby|school|niñ[oa]s?|escuela)\b/i,
    tapped: ['children'],
  },
  {
    says: 'fierce bees',
    word: /killer|attack|african|\bchas(ed|ing)\b|aggressive|agresiv|atac|brav[ao]s/i,
    tapped: ['fierce'],
  },
  {
    says: 'weak boards',
    word: /\brot(ten|ting)?\b|gives? way|caved|sag(s|ging)?\b|soft (roof|floor|boards?)|podrid/i,
    tapped: ['weak-structure'],
  },
  { says: 'a flue', word: /\bflues?\b|stovepipe/i, tapped: ['flue'] },
]

/** Everything on a sheet that is somebody's own words, why somebody refused, had it wait or goes all the same among it. */
const textsOf = ({ job, site, agreement, check, work, decision, ended, callBacks }: Sheet): string[] =>
  [
    job.told,
    job.wayIn,
    site.type,
    site.where,
    site.surface,
    site.behindNote,
    site.foundNote,
    site.bystandersNote,
    site.sprayedNote,
    site.otherEntrances,
    site.entrance,
    agreement.extra,
    work.note,
    work.left,
    decision?.reason,
    decision?.over?.reason,
    ended?.why,
    ...(check.seconds ?? []).map((x) => x.reason),
    ...(callBacks ?? []).map((b) => b.note),
  ].filter((x) => x !== undefined)

/** What is said of in words that were not on the sheet before: whoever ticked or cleared it had not read them. */
export function writtenAnew(before: Sheet, after: Sheet): Grave[] {
  const had = textsOf(before)
  const fresh = textsOf(after).filter((text) => !had.includes(text))
  return WRITTEN.flatMap(({ word, tapped }) => (fresh.some((text) => word.test(text)) ? tapped : []))
}

/** A sheet with one more thing said on it, as it is typed: the reason for a “go” is read before it is one. */
export const andSaid = (s: Sheet, more: string | undefined): Sheet =>
  more === undefined || more === ''
    ? s
    : { ...s, job: { ...s.job, told: [s.job.told, more].filter(Boolean).join('. ') } }

/** What is written and tapped nowhere. */
export function writtenIn(s: Sheet): Written[] {
  const text = textsOf(s).join('. ')
  const on: readonly string[] = [...tappedAt(s), ...(fierce(s) ? ['fierce'] : [])]
  return WRITTEN.filter(({ word, tapped }) => word.test(text) && !tapped.some((g) => on.includes(g)))
}
