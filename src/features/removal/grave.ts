/** What can kill comes onto a sheet and goes off it with a word: who, when and why stay on the sheet. */
import {
  EMPTY_SHEET,
  GRAVE,
  type Grave,
  type Noted,
  type Sheet,
  TRADE_HAZARDS,
  type TradeHazard,
  type WHY_GONE,
} from '../../records/index.ts'
import { cuts, isCleared, ONLY_THE_TRADE, sameOne, tappedAt } from './hazards.ts'
import { climbs, saidFierce } from './people.ts'
import { type Stamp, withLines } from './was-said.ts'
import { notHere, withWords, writtenAnew } from './written.ts'

const isHazard = (what: Grave): what is TradeHazard => (TRADE_HAZARDS as readonly string[]).includes(what)

/** What on the sheet can kill. */
function graveOn(s: Sheet): Grave[] {
  const found: readonly string[] = [
    ...tappedAt(s),
    ...(saidFierce(s) ? ['fierce'] : []),
    ...(climbs(s) ? ['climb'] : []),
    ...(s.site.type !== undefined && cuts(s) ? ['nest'] : []),
  ]
  return GRAVE.filter((g) => found.includes(g))
}

const isOn = (s: Sheet, what: Grave): boolean => graveOn(s).includes(what)

/** What a change takes off. */
export const goneFrom = (before: Sheet, after: Sheet): Grave[] => {
  // How they behave at work neither comes nor goes with the box.
  const boxed = [before, after].some(({ work }) => work.boxedAt !== undefined)
  const on = (s: Sheet): Grave[] => graveOn(boxed ? { ...s, work: {} } : s)
  const still = on(after)
  return on(before).filter((g) => !still.includes(g))
}

/**
 * Hazards that cannot be taken off with a word: no trade has cleared them, or too long ago. Not by another wall or address either, for a word
 * in those is changed as quickly: another place has a sheet of its own.
 */
export const stays = (before: Sheet, after: Sheet, today: string): TradeHazard[] =>
  goneFrom(before, after).filter((g): g is TradeHazard => isHazard(g) && !isCleared(before, g, today))

/** What was ticked or signed for before it was known to be there, or when it was there, is asked anew when it comes. */
export const TICK_OF: Partial<Record<Grave, string>> = {
  allergic: 'allergy',
  children: 'children',
  fierce: 'fierce',
  climb: 'ladder-person',
  droppings: 'droppings',
  insulation: 'insulation',
  water: 'stopcock',
}

/** What was tapped of it by somebody who had not read what is said of it since. */
export const answersTo = (what: Grave): string[] =>
  [notHere(what), sameOne(what), TICK_OF[what]].filter((id) => id !== undefined)

/** Nobody takes people out, a pipe does not leave, and what its trade has cleared was not tapped by mistake. */
export const whyFits = (what: Grave, why: string): boolean =>
  isHazard(what) ? why !== 'left' && (why !== 'mistake' || !ONLY_THE_TRADE.includes(what)) : why !== 'removed'

/** The field in which it is said why a thing is off the sheet. */
export const goneField = (what: Grave): string => `gone.${what}`

export type Whys = Partial<Record<Grave, (typeof WHY_GONE)[number]>>

/** Another way up, or further up, than was said before. */
const isHigher = ({ site: b }: Sheet, { site: a }: Sheet): boolean =>
  climbs({ ...EMPTY_SHEET, site: b }) &&
  (a.access !== b.access || (a.heightM ?? 0) > (b.heightM ?? Number.POSITIVE_INFINITY))

/** The sheet with a line for each thing that came or went since `before`, in words too. */
export const withNoted = (before: Sheet, after: Sheet, whys: Whys, stamp: Stamp, stood?: Sheet): Sheet =>
  withWords(before, withTapped(before, after, whys, stamp), stamp, stood)

function withTapped(before: Sheet, after: Sheet, whys: Whys, stamp: Stamp): Sheet {
  const came = goneFrom(after, before)
  const lines: Noted[] = [
    ...came.map((what): Noted => ({ what, is: 'found', ...stamp })),
    ...goneFrom(before, after).map((what): Noted => {
      const why = whys[what]
      return { what, is: 'gone', ...(why === undefined ? {} : { why }), ...stamp }
    }),
  ]
  // Read in words that nobody had read who ticked or cleared it: a second pipe, his wife too.
  const words = writtenAnew(before, after)
  const again = words.filter((what) => isOn(before, what) && isOn(after, what))
  lines.push(...again.map((what): Noted => ({ what, is: 'found', ...stamp })))
  const anew = [
    ...came.flatMap((what) => {
      const tick = TICK_OF[what] ?? ''
      const left = before.site.noted?.some((n) => n.what === what && n.is === 'gone')
      return left === true || before.check.done?.includes(tick) === true ? [tick] : []
    }),
    ...words.flatMap(answersTo),
    // Who holds a ladder at 4 m holds none at a roof.
    ...(isHigher(before, after) ? ['ladder-person'] : []),
  ]
  if (lines.length === 0 && anew.length === 0) return after
  const { done, seconds, ...check } = after.check
  return {
    ...after,
    ...(lines.length === 0 ? {} : { site: withLines(after.site, lines) }),
    check: {
      ...check,
      ...(done === undefined ? {} : { done: done.filter((d) => !anew.includes(d)) }),
      ...(seconds === undefined ? {} : { seconds: seconds.filter((x) => !anew.includes(x.item)) }),
    },
  }
}
