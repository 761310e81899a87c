/**
 * What is behind or on the surface and can kill: each found thing is an item of its own, which only the trade that is
 * licensed for it clears. Common practice in the trade; licensed practice and local codes decide.
 */
import { daysBetween } from '../../days.ts'
import type { Clearance, Grave, NotedLine, Sheet, Trade, TradeHazard } from '../../records/index.ts'
import { TRADE_HAZARDS } from '../../records/index.ts'
import { fractionOf } from '../../store/index.ts'
import { type Facts, NOT_NEEDED } from './item.ts'
import { placeOf, samePlace, tickedHere } from './place.ts'
import { hangsInWords } from './swarm.ts'

/** A swarm moves on within days; what has hung there for weeks has built comb, mostly inside something (common practice). */
const LONG = ['weeks', 'months', 'years']

/** Seen only where something is between us and the bees. */
const HAS_DEPTH = [
  'surface',
  'sheathingMm',
  'nestHighMm',
  'nestWideMm',
  'nestDeepMm',
  'entrance',
  'entranceM',
  'otherEntrances',
] as const
const LOOKED_INSIDE = ['heat-camera', 'scope', 'opened']

/**
 * Somebody goes into a surface. Only a swarm that hangs free is not cut; and one word on the list does not make a wall an
 * open branch: what has been there for weeks, or has a surface, an entrance, a depth or something behind it, is cut.
 */
export const cuts = ({ job, site, check }: Sheet): boolean =>
  site.type !== 'swarm' ||
  (job.bees !== undefined && job.bees !== 'swarm') ||
  LONG.includes(job.since ?? '') ||
  HAS_DEPTH.some((field) => site[field] !== undefined) ||
  check.cutMm !== undefined ||
  (site.behind ?? []).length > 0 ||
  (site.foundBy ?? []).some((by) => LOOKED_INSIDE.includes(by)) ||
  !hangsInWords({ job, site })

/** Bees that come out by themselves, or under a lid: a blade is for what somebody set one for, or measured. */
const NO_BLADE: readonly string[] = ['trap-out', 'abandoned-hive', 'container']

export const takesBlade = ({ site, check }: Sheet): boolean =>
  !NO_BLADE.includes(site.type ?? '') || isCutInto({ site, check })

/** Somebody has set a blade or measured what it goes through: a wall of board that is cut is not left as it is. */
export const isCutInto = ({ site, check }: Pick<Sheet, 'site' | 'check'>): boolean =>
  check.cutMm !== undefined || site.sheathingMm !== undefined

const STOP: Record<TradeHazard, string> = {
  electric:
    'electric wires behind the surface: an electrician locates them and makes them dead, or says in writing where may be cut',
  'electric-in-cut': 'live wires in the way: an electrician makes them dead first',
  gas: 'a gas pipe: the gas fitter or the supplier',
  flue: 'a flue or duct: a heating engineer',
  asbestos: 'asbestos suspected: not to be cut, broken or swept; a licensed contractor tests it',
  'lead-paint': 'lead paint suspected: a licensed contractor tests it and says how it may be cut',
  'weak-structure': 'weak boards or beams: a builder says what carries',
  'near-wires':
    'electric wires, a meter or a pole within 3 m (10 ft): nobody goes near them with ladder, pole or comb; the supplier makes them dead or covers them',
}

/** For these a second person's name is not enough: they wait for the trade, and for a photo of its paper, tag or test. */
export const ONLY_THE_TRADE: readonly TradeHazard[] = [
  'electric',
  'electric-in-cut',
  'gas',
  'asbestos',
  'near-wires',
]

/** What was found that a licensed trade has to clear, in a fixed order. */
export const hazardsFound = (s: Sheet): TradeHazard[] => {
  const found = tappedAt(s)
  return TRADE_HAZARDS.filter((h) => found.includes(h))
}

/** What somebody has tapped of the place and of who is about. */
export const tappedAt = ({ site }: Sheet): readonly string[] => [
  ...(site.behind ?? []),
  ...(site.hazards ?? []),
  ...(site.bystanders ?? []),
  ...(site.nearWires === true ? ['near-wires'] : []),
]

/** What is said in words of the wall. */
export const textsBehind = ({ job, site: s }: Sheet): (string | undefined)[] => [
  job.told,
  s.behindNote,
  s.foundNote,
  s.entrance,
  s.otherEntrances,
]

/** The wall and what was found and written of it, as a form shows them: what is said of that is not said of what it became meanwhile. */
export const seenOn = (s: Sheet): string =>
  [...Object.values(placeOf(s)), ...hazardsFound(s), fractionOf(textsBehind(s))].join(' · ')

/** Who clears what. One trade is not asked; of several one is tapped (common practice; local rules say who is licensed). */
export const CLEARED_BY: Record<TradeHazard, readonly Trade[]> = {
  electric: ['electrician', 'supplier', 'locator'],
  'electric-in-cut': ['electrician', 'supplier'],
  // A pipe that is marked is not shut.
  gas: ['gas-fitter', 'supplier'],
  flue: ['heating'],
  asbestos: ['surveyor'],
  'lead-paint': ['surveyor'],
  'weak-structure': ['builder'],
  'near-wires': ['supplier', 'electrician'],
}

/** A clearance is of one wall of one house: where address or wall were not said, nobody can tell of which. */
const isHere = (c: Clearance, s: Sheet): boolean =>
  c.address !== undefined && c.where !== undefined && samePlace(c, placeOf(s))

/** When the hazard of a clearance came and went. */
const linesOf = (c: Clearance, s: Sheet): NotedLine[] =>
  s.site.noted?.filter((n) => n.what === c.hazard && n.is !== 'written') ?? []

/** What was taken off and comes back is cleared anew. */
const isOfThis = (c: Clearance, s: Sheet): boolean => {
  const gone = linesOf(c, s).findLast((n) => n.is === 'gone')?.writtenAt
  return gone === undefined || (c.writtenAt ?? '') > gone
}

/** As somebody taps it of what was written since: it is what the trade has cleared. 'same:gas' */
export const sameOne = (what: Grave): string => `same:${what}`

/** It was there already when that was found, so more was written of it. */
const moreWritten = (c: Clearance, s: Sheet): boolean =>
  linesOf(c, s).some(
    (n, i, all) =>
      n.is === 'found' &&
      (c.writtenAt === undefined ? all[i - 1]?.is === 'found' : n.writtenAt > c.writtenAt),
  )

/** Cleared, and more was written since: a second pipe, or a word about the first. */
export const askedSame = (s: Sheet): Clearance[] =>
  hazardsFound(s).flatMap((h) => {
    const cleared = clearanceOf(s, h)
    return cleared !== undefined && moreWritten(cleared, s) ? [cleared] : []
  })

/** A name and a number are typed in a minute: what only the trade clears has its paper, tag or test photographed. */
export const isShown = (c: Pick<Clearance, 'hazard' | 'photo'>): boolean =>
  c.photo !== undefined || !ONLY_THE_TRADE.includes(c.hazard)

/** One from before it was asked was written down as a clearance. */
const saysClear = ({ says = 'clear' }: Clearance): boolean => says === 'clear'

/** The clearance that stands for a hazard: by its trade, shown, given here, when everything found now was known. Of several, the last. */
function clearanceOf(s: Sheet, hazard: TradeHazard): Clearance | undefined {
  const found = hazardsFound(s)
  return s.check.clearances?.findLast(
    (c) =>
      c.hazard === hazard &&
      c.as !== undefined &&
      CLEARED_BY[hazard].includes(c.as) &&
      isShown(c) &&
      saysClear(c) &&
      isHere(c, s) &&
      isOfThis(c, s) &&
      found.every((other) => c.knew.includes(other)),
  )
}

/** Somebody says that an old building was tested, and found to have none: that has a paper too. */
export const isTested = (s: Sheet, hazard: TradeHazard): boolean =>
  hazard === 'asbestos' && s.site.oldHow === 'tested' && !hazardsFound(s).includes(hazard)

export const hasReport = (s: Sheet, today: string): boolean =>
  s.check.clearances?.some(
    (c) =>
      c.hazard === 'asbestos' &&
      c.as === 'surveyor' &&
      (c.photo ?? c.licence) !== undefined &&
      saysClear(c) &&
      isHere(c, s) &&
      daysBetween(c.on, today) <= GOOD_DAYS.asbestos,
  ) === true

/** Whether its trade has cleared it, not too long ago, and nothing more is written of it. */
export const isCleared = (s: Sheet, hazard: TradeHazard, today: string): boolean =>
  tradeFacts(s, hazard, today).state === 'met'

/** Given, and no good any more: why its trade has to be asked again. */
function reopened(s: Sheet, hazard: TradeHazard): string {
  const last = s.check.clearances?.findLast((c) => c.hazard === hazard)
  if (last === undefined) return ''
  if (last.as === undefined) return ' It was cleared before it was asked by which trade: write it down again.'
  if (!isShown(last))
    return ' It was written down without a photo of the paper, tag or test: take one, and write it down again.'
  if (!isHere(last, s))
    return ` It was cleared for another place (${[last.address, last.where].filter(Boolean).join(': ') || 'none was said'}): ask the trade about this one.`
  return isOfThis(last, s)
    ? ' It was cleared before something else was found: ask the trade again, knowing of that.'
    : ' It was off the sheet since it was cleared: ask the trade anew.'
}

/** What still has to be cleared before anything is opened, in words. */
export const tradesNeeded = (s: Sheet): string[] =>
  hazardsFound(s)
    .filter((h) => {
      const cleared = clearanceOf(s, h)
      return cleared === undefined || (moreWritten(cleared, s) && !s.check.done?.includes(sameOne(h)))
    })
    .map((h) => STOP[h])

/**
 * Days a clearance is good for (judgement): what was made dead is live again when somebody needs it; of a survey, what has been
 * built since is not in it.
 */
export const GOOD_DAYS: Record<TradeHazard, number> = {
  electric: 30,
  // What was dead is live again when somebody needs light: the day before at the most.
  'electric-in-cut': 1,
  gas: 30,
  flue: 365,
  'weak-structure': 365,
  asbestos: 1826,
  'lead-paint': 1826,
  'near-wires': 1,
}

/** 'A gas pipe: the gas fitter or the supplier.' */
const told = (hazard: TradeHazard): string =>
  `${STOP[hazard].charAt(0).toUpperCase()}${STOP[hazard].slice(1)}.`

export function tradeFacts(s: Sheet, hazard: TradeHazard, today: string): Facts {
  if (!hazardsFound(s).includes(hazard)) return NOT_NEEDED
  const cleared = clearanceOf(s, hazard)
  const unmet = (why: string): Facts => ({ state: 'unmet', why: `${told(hazard)}${why}`, paper: hazard })
  if (cleared === undefined) return unmet(reopened(s, hazard))
  const good = GOOD_DAYS[hazard]
  if (daysBetween(cleared.on, today) > good)
    return unmet(
      ` What ${cleared.who} cleared on ${cleared.on} is more than ${good === 1 ? 'a day' : `${good} days`} ago: ask again.`,
    )
  if (moreWritten(cleared, s) && !(tickedHere(s, today) && s.check.done?.includes(sameOne(hazard))))
    return unmet(
      ` More was written since ${cleared.who} cleared it: ask the trade anew. Where it is of the same one, tap so before the cut.`,
    )
  const paper = cleared.photo === undefined ? 'their paper was not photographed' : 'photo kept'
  return {
    state: 'met',
    why: `Cleared by ${[cleared.who, cleared.licence, cleared.on, paper].filter(Boolean).join(', ')}.`,
  }
}
