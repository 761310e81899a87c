/**
 * What is behind or on the surface and can kill: each found thing is an item of its own, which only the trade that is
 * licensed for it clears. Common practice in the trade; licensed practice and local codes decide.
 */
import { daysBetween } from '../../days.ts'
import type { Clearance, Sheet, TradeHazard } from '../../records/index.ts'
import { TRADE_HAZARDS } from '../../records/index.ts'
import type { Facts } from './item.ts'
import { samePlace } from './same-name.ts'

/** Bees that are taken without opening anything. */
const UNCUT = ['swarm', 'abandoned-hive', 'trap-out']

/** A swarm moves on within days; what has hung there for weeks has built comb, mostly inside something (common practice). */
const LONG = ['weeks', 'months', 'years']

/**
 * Somebody goes into a surface. A nest is cut whatever kind was tapped first; and one word on the list does not make a wall
 * an open branch: what has been there for weeks, or has a surface, a depth or something behind it, is cut.
 */
export const cuts = ({ job, site, check }: Sheet): boolean =>
  job.bees === 'nest' ||
  !UNCUT.includes(site.type ?? '') ||
  LONG.includes(job.since ?? '') ||
  site.surface !== undefined ||
  site.sheathingMm !== undefined ||
  (site.nestDeepMm ?? 0) > 0 ||
  check.cutMm !== undefined ||
  (site.behind ?? []).length > 0

const STOP: Record<TradeHazard, string> = {
  electric:
    'electric wires behind the surface: an electrician locates them and makes them dead, or says in writing where may be cut',
  'electric-in-cut': 'live wires in the way: an electrician makes them dead first',
  gas: 'a gas pipe: the gas fitter or the supplier',
  flue: 'a flue or duct: a heating engineer',
  asbestos: 'asbestos suspected: not to be cut, broken or swept; a licensed contractor tests it',
  'lead-paint': 'lead paint suspected: a licensed contractor tests it and says how it may be cut',
  'weak-structure': 'weak boards or beams: a builder says what carries',
}

/** For these a second person's name is not enough: they wait for the trade. */
export const ONLY_THE_TRADE: readonly TradeHazard[] = ['electric', 'electric-in-cut', 'gas', 'asbestos']

/** What was found that a licensed trade has to clear, in a fixed order. */
export function hazardsFound({ site }: Sheet): TradeHazard[] {
  const found: readonly string[] = [...(site.behind ?? []), ...(site.hazards ?? [])]
  return TRADE_HAZARDS.filter((h) => found.includes(h))
}

/** Where a clearance is given for. */
export const placeOf = ({ job, site }: Sheet): Pick<Clearance, 'address' | 'where'> => ({
  ...(job.address === undefined ? {} : { address: job.address }),
  ...(site.where === undefined ? {} : { where: site.where }),
})

/** A clearance is of one wall of one house; where either was not said then or is not now, nobody can tell. */
function isHere(c: Clearance, s: Sheet): boolean {
  const now = placeOf(s)
  return (['address', 'where'] as const).every((at) => {
    const [then, here] = [c[at], now[at]]
    return then === undefined || here === undefined || samePlace(then, here)
  })
}

/** The clearance that stands for a hazard: given here, when everything found now was known. Of several, the last. */
function clearanceOf(s: Sheet, hazard: TradeHazard): Clearance | undefined {
  const found = hazardsFound(s)
  return s.check.clearances?.findLast(
    (c) => c.hazard === hazard && isHere(c, s) && found.every((other) => c.knew.includes(other)),
  )
}

/** Given, and no good any more: why its trade has to be asked again. */
function reopened(s: Sheet, hazard: TradeHazard): string {
  const last = s.check.clearances?.findLast((c) => c.hazard === hazard)
  if (last === undefined) return ''
  return isHere(last, s)
    ? ' It was cleared before something else was found: ask the trade again, knowing of that.'
    : ` It was cleared for another place (${[last.address, last.where].filter(Boolean).join(': ')}): ask the trade about this one.`
}

/** What still has to be cleared before anything is opened, in words. */
export const tradesNeeded = (s: Sheet): string[] =>
  hazardsFound(s)
    .filter((h) => clearanceOf(s, h) === undefined)
    .map((h) => STOP[h])

/** Days a clearance of wires or gas is good for: what was made dead is live again when somebody needs it (judgement). */
const GOOD_DAYS = 30
const COMES_BACK: readonly TradeHazard[] = ['electric', 'electric-in-cut', 'gas']

export function tradeFacts(s: Sheet, hazard: TradeHazard, today: string): Facts {
  if (!hazardsFound(s).includes(hazard)) return { state: 'not-needed', why: 'Not found.' }
  const cleared = clearanceOf(s, hazard)
  if (cleared !== undefined && COMES_BACK.includes(hazard) && daysBetween(cleared.on, today) > GOOD_DAYS)
    return {
      state: 'unmet',
      why: `Stop: ${STOP[hazard]}. What ${cleared.who} cleared on ${cleared.on} is more than ${GOOD_DAYS} days ago: ask again.`,
    }
  if (cleared !== undefined)
    return { state: 'met', why: `Cleared by ${cleared.who}, ${cleared.licence}, ${cleared.on}.` }
  return { state: 'unmet', why: `Stop: ${STOP[hazard]}.${reopened(s, hazard)}` }
}

export function servicesLocated(s: Sheet): Facts {
  if (!cuts(s)) return { state: 'not-needed', why: 'Nothing is cut.' }
  if (s.site.behind === undefined)
    return {
      state: 'unsaid',
      why: 'Wires, gas, water and flues: ask, trace from outlets and taps, use a detector, before anything goes into the surface.',
    }
  return { state: 'met', why: 'Looked for and written down.' }
}

/** 1980: after it neither was common in new houses of most countries (common practice; local codes differ). */
export function oldBuilding(s: Sheet): Facts {
  if (!cuts(s)) return { state: 'not-needed', why: 'Nothing is cut.' }
  if (s.site.hazards !== undefined) return { state: 'met', why: 'Looked for and written down.' }
  return s.site.old === 'no'
    ? { state: 'unsaid', why: 'Look for weak boards, droppings and mould all the same.' }
    : {
        state: 'unsaid',
        why: 'Built before 1980, or not known: asbestos board, cement and vermiculite, and lead paint, are likely. Look before anything is cut.',
      }
}

/**
 * Hazards that a change would take off the sheet although nobody cleared them: one tap must not make a gas pipe vanish.
 */
export const vanished = (before: Sheet, after: Sheet): TradeHazard[] => {
  const still = hazardsFound(after)
  return hazardsFound(before).filter((h) => !still.includes(h) && clearanceOf(before, h) === undefined)
}
