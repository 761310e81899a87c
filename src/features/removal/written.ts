/**
 * Hazards that stand in somebody's own words and are tapped nowhere. Not a list of bad words: the words for what the sheet has
 * an answer for already, in English and Spanish (the terms are common ones; a word that is missed is read above “Go”).
 */
import type { Grave, Sheet } from '../../records/index.ts'
import { fierce } from './people.ts'

interface Written {
  says: string
  word: RegExp
  /** What it is tapped as; the first is what it is asked as elsewhere. */
  tapped: readonly [Grave, ...Grave[]]
}

const WRITTEN: readonly Written[] = [
  { says: 'gas', word: /\b(gas|lpg|propane|propano|butano?|garrafa|boiler|mercaptan)\b/i, tapped: ['gas'] },
  {
    says: 'electric wires',
    word: /\b(wires?|wiring|cables?|electric\w*|eléctric\w*|(?<!water )meter|contador|fuse ?box|power ?(lines?|cords?)|ac line|breakers?|breaker panel|transformer|transformador|sockets?|outlets?|light switch|enchufes?|corriente|conduit|mains|poles?|pylon|lamps?|lamp ?posts?|street ?(lamps?|lights?)|farola|poste|overhead lines?|drop line|high voltage|knob and tube|cabinet|(junction|utility|control) box|luz)\b/i,
    tapped: ['electric', 'electric-in-cut', 'near-wires'],
  },
  {
    says: 'asbestos',
    word: /asbest|eternit|uralita|amianto|fibrocement|vermiculit|artex|popcorn ceiling|transite|cement board|corrugated cement/i,
    tapped: ['asbestos'],
  },
  { says: 'lead paint', word: /\blead[- ]?(paint|based)|\bplomo\b/i, tapped: ['lead-paint'] },
  { says: 'somebody allergic', word: /al+[eé]rg|epi-?pen|anaph|adrenalin|into shock/i, tapped: ['allergic'] },
  {
    says: 'children',
    word: /\b(kids?|child(ren)?|toddlers?|baby|school|niñ[oa]s?|escuela)\b/i,
    tapped: ['children'],
  },
  {
    says: 'fierce bees',
    word: /killer|attack|african|\bchas(ed|ing)\b|aggressive|agresiv|atac/i,
    tapped: ['fierce'],
  },
  {
    says: 'weak boards',
    word: /\brot(ten|ting)?\b|gives? way|caved|soft (roof|floor|boards?)|podrid/i,
    tapped: ['weak-structure'],
  },
  { says: 'a flue', word: /\bflues?\b|stovepipe/i, tapped: ['flue'] },
]

/** What is written and tapped nowhere, why somebody decided as they did, and what was noted at work, among it. */
export function writtenIn(s: Sheet): Written[] {
  const { job, site, work, decision, ended } = s
  const text = [
    job.told,
    job.wayIn,
    site.type,
    site.where,
    site.surface,
    site.behindNote,
    site.foundNote,
    site.bystandersNote,
    site.otherEntrances,
    site.entrance,
    decision?.reason,
    decision?.over?.reason,
    ended?.why,
    work.note,
    work.left,
  ]
    .filter((x) => x !== undefined)
    .join('. ')
  const on: readonly string[] = [
    ...(site.behind ?? []),
    ...(site.hazards ?? []),
    ...(site.bystanders ?? []),
    ...(site.nearWires === true ? ['near-wires'] : []),
    ...(fierce(s) ? ['fierce'] : []),
  ]
  return WRITTEN.filter(({ word, tapped }) => word.test(text) && !tapped.some((g) => on.includes(g)))
}
