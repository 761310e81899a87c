/**
 * What is looked for before anything is opened: lines behind it, wires near, asbestos and lead in an old building. “None” says how
 * it is known; nobody signs for not having looked. Common practice in the trade.
 */
import type { Sheet } from '../../records/index.ts'
import { cuts, hasReport, isCutInto } from './hazards.ts'
import { type Facts, MET, NOT_NEEDED } from './item.ts'
import { lookedHere, saysWall, tickedHere } from './place.ts'

/** With no word for the wall, a look at the north wall would stand for the south wall. */
const NO_WALL: Facts = {
  state: 'unsaid',
  why: 'Say in words where the bees are: what was looked for is of one wall, and nobody can tell of which.',
  moved: true,
}

/** Said where an answer stands that was given of another place, or long ago. */
const ELSEWHERE =
  'The words for the place were changed, or it is months ago, and nobody has looked since: go and look at this wall, then tap what is there.'

/** Of a box: current or gas; water alone only where somebody has said in words that it is a box of that. */
const hasService = ({ site }: Sheet): boolean =>
  site.nearWires === true ||
  (site.behind ?? []).some((b) => b !== 'insulation' && b !== 'flue' && b !== 'water') ||
  (site.behind?.includes('water') === true &&
    /\b(water (meter|valve)|hydrant|stopcock|curb box|(contador|medidor|llave) de agua)\b(?!.*\b(pump|controller|electr\w*)\b)/i.test(
      site.where ?? '',
    ))

/** Nothing was found: whoever looked says how, and the owner's word has never found a wire (common practice). */
const howLooked = ({ behind, behindHow }: Sheet['site']): string | null =>
  behind === undefined || behind.length > 0
    ? null
    : behindHow === undefined
      ? 'None found: how was it looked for? By a detector, or traced from outlets, taps and plan.'
      : behindHow === 'owner'
        ? 'The owner’s word finds no wire: use a detector, or trace from outlets, taps and plan.'
        : null

export function servicesLocated(s: Sheet, today: string): Facts {
  if (!cuts(s)) return NOT_NEEDED
  if (s.site.behind === undefined)
    return {
      state: 'unsaid',
      why: 'Wires, gas, water and flues: ask, trace from outlets and taps, use a detector, before anything goes into the surface.',
    }
  if (!saysWall(s)) return NO_WALL
  if (s.site.type === 'utility-box' && !hasService(s))
    return {
      state: 'unsaid',
      why: 'A meter or utility box has wires, gas or water in it: tap which; of water alone, say so in the words for the place. Nobody opens one of wires or gas before its supplier has been.',
      moved: true,
    }
  if (!lookedHere(s, 'behind', today)) return { state: 'unsaid', why: ELSEWHERE, moved: true }
  const how = howLooked(s.site)
  return how === null ? MET : { state: 'unsaid', why: how, moved: true }
}

/**
 * Wires near the work. 3 m (10 ft): what people who are no electricians keep from lines up to 50 kV (US OSHA 29 CFR 1910.333(c)(3),
 * from memory); local rules may ask for more.
 */
export function wiresNear(s: Sheet, today: string, late = false): Facts {
  const { wires } = s.check
  if (s.site.nearWires === true) return { state: 'met', why: 'Near: on this list.' }
  const isNow = !late && tickedHere(s, today)
  if (wires === 'unknown' && isNow)
    return {
      state: 'unmet',
      why: 'Not known. Look up, along the wall and behind; ask the owner or the supplier, then tap what is so.',
    }
  return wires === 'none' && isNow
    ? { state: 'met', why: 'Looked: none within 3 m (10 ft).' }
    : {
        state: 'unsaid',
        why: 'Any within 3 m (10 ft)? Look up and along the wall, at this very place, today.',
      }
}

/** 1980: after it neither was common in new houses of most countries (common practice; local codes differ). */
export function oldBuilding(s: Sheet, today: string): Facts {
  if (!cuts(s)) return NOT_NEEDED
  if (s.site.hazards !== undefined && !saysWall(s)) return NO_WALL
  if (lookedHere(s, 'hazards', today)) {
    if (isKnown(s, today)) return MET
    return s.site.oldHow === 'tested'
      ? {
          state: 'unsaid',
          why: 'Old, but tested: by whom? The number of their report, or a photo of it.',
          moved: true,
          paper: 'asbestos',
        }
      : {
          state: 'unsaid',
          why: 'None found: how is it known? Built after 1980, or tested. “Not cut into” is no answer where a blade is set.',
          moved: true,
        }
  }
  if (s.site.hazards !== undefined) return { state: 'unsaid', why: ELSEWHERE, moved: true }
  return isNew(s, today)
    ? { state: 'unsaid', why: 'Look for weak boards, droppings and mould all the same.' }
    : {
        state: 'unsaid',
        why: 'Built before 1980, or not known: asbestos board, cement and vermiculite, and lead paint, are likely. Look before anything is cut.',
      }
}

/** It was found, or somebody has said how it is known that there is none. */
const isKnown = (s: Sheet, today: string): boolean =>
  s.site.hazards?.some((h) => h === 'asbestos' || h === 'lead-paint') === true ||
  (s.site.oldHow === 'tested' && hasReport(s, today)) ||
  (s.site.oldHow === 'untouched' && !isCutInto(s)) ||
  isNew(s, today)

/** Built after 1980, as somebody has said of this very place. */
const isNew = (s: Sheet, today: string): boolean => s.site.old === 'no' && lookedHere(s, 'old', today)
