/**
 * What to check before the cut: each item met, unmet, or not filled in yet, with who decides. It never calls a job harmless:
 * it names what is missing, and people at the wall decide. Licensed trades and local codes stand above all of it.
 *
 * The items are common practice in the trade; the limits (heat, cutting depth) are the yard's protocol.
 */

import type { Sheet } from '../../records/index.ts'
import type { Protocol } from '../../recovery/index.ts'
import { heatOf, type Shows } from './forecast.ts'

export type Weight = 'refuse' | 'wait'

export const ITEMS = [
  'trade',
  'vacuum',
  'heat',
  'services',
  'wires',
  'cut-depth',
  'hazards-looked',
  'sprayed',
  'ladder-person',
  'not-alone',
  'clothing',
  'sting-plan',
  'water',
  'exclusion',
  'fire',
  'tools',
  'queen-clip',
  'brood-chest',
  'agreement',
  'codes',
] as const
export type ItemId = (typeof ITEMS)[number]

/** Items somebody ticks; the others follow from the rest of the sheet. */
export const TICKED = [
  'services',
  'ladder-person',
  'not-alone',
  'clothing',
  'sting-plan',
  'water',
  'exclusion',
  'fire',
  'tools',
  'queen-clip',
  'brood-chest',
  'codes',
] as const satisfies readonly ItemId[]

export interface Item {
  id: ItemId
  what: string
  state: 'met' | 'unmet' | 'unsaid' | 'not-needed'
  /** What is missing, or why it is asked. */
  why: string
  /** Who decides about it. */
  decides: string
  /** What it means while it is unmet. */
  weight: Weight
}

export interface Reckoning {
  items: Item[]
  /** Unmet or not filled in yet: what stops it first, then what was said, then what is not filled in. */
  unmet: Item[]
  says: Weight | 'nothing-unmet'
}

/** Bees that are taken without opening anything. */
const UNCUT = ['swarm', 'abandoned-hive', 'trap-out']
export const cuts = (s: Sheet): boolean => !UNCUT.includes(s.site.type ?? '')

/** Somebody goes up. */
export const climbs = (s: Sheet): boolean => s.site.access !== undefined && s.site.access !== 'ground'

const CREW = 'Whoever leads the crew, on the day'
const YOU = 'The beekeeper'
const TRADE = 'A licensed trade, and local codes'
const OWNER = 'The owner'

type State = Item['state']
type Told = Pick<Item, 'state' | 'why'>

const met = (why = ''): Told => ({ state: 'met', why })
const notNeeded = (why: string): Told => ({ state: 'not-needed', why })
const told = (state: State, why: string): Told => ({ state, why })

/** Holds the sheet against the protocol. `shows` puts temperatures and depths in the yard's units. */
export function beforeCut(s: Sheet, protocol: Protocol, shows: Shows): Reckoning {
  const items = ITEMS.map((id) => itemOf(id, s, protocol, shows))
  const unmet = [
    ...items.filter(stops),
    ...items.filter((i) => i.state === 'unmet' && !stops(i)),
    ...items.filter((i) => i.state === 'unsaid'),
  ]
  return {
    items,
    unmet,
    says: unmet.some(stops) ? 'refuse' : unmet.length > 0 ? 'wait' : 'nothing-unmet',
  }
}

/** Whether it speaks for refusing. Not saying is no ground to turn a job down for good; what was said is. */
export const stops = (i: Item): boolean => i.weight === 'refuse' && i.state === 'unmet'

function itemOf(id: ItemId, s: Sheet, protocol: Protocol, shows: Shows): Item {
  const { what, decides, weight } = NAMES[id]
  return { id, what, decides, weight, ...stateOf(id, s, protocol, shows) }
}

const NAMES: Record<ItemId, Pick<Item, 'what' | 'decides' | 'weight'>> = {
  trade: { what: 'Cleared by the licensed trade', decides: TRADE, weight: 'refuse' },
  vacuum: { what: 'No shop vacuum straight onto bees', decides: YOU, weight: 'refuse' },
  heat: { what: 'Outdoor heat under the limit', decides: YOU, weight: 'wait' },
  services: { what: 'Wires, pipes and flues located', decides: TRADE, weight: 'wait' },
  wires: { what: 'Wires switched off or cleared', decides: TRADE, weight: 'wait' },
  'cut-depth': { what: 'Cutting depth set', decides: YOU, weight: 'wait' },
  'hazards-looked': { what: 'Looked for asbestos, lead paint, weak boards', decides: TRADE, weight: 'wait' },
  sprayed: { what: 'Asked whether the bees were sprayed', decides: OWNER, weight: 'wait' },
  'ladder-person': { what: 'Second person for the ladder', decides: CREW, weight: 'wait' },
  'not-alone': { what: 'Somebody within call all the time', decides: CREW, weight: 'wait' },
  clothing: { what: 'Protective clothing for all', decides: CREW, weight: 'wait' },
  'sting-plan': { what: 'Plan for stings', decides: CREW, weight: 'wait' },
  water: { what: 'Water and shade', decides: CREW, weight: 'wait' },
  exclusion: { what: 'Area kept clear', decides: CREW, weight: 'wait' },
  fire: { what: 'Smoker away from dry grass and dust', decides: CREW, weight: 'wait' },
  tools: { what: 'Tools and boxes loaded', decides: CREW, weight: 'wait' },
  'queen-clip': { what: 'Queen clip ready', decides: CREW, weight: 'wait' },
  'brood-chest': { what: 'Lidded, insulated chest for brood comb', decides: CREW, weight: 'wait' },
  agreement: { what: 'Agreement signed', decides: OWNER, weight: 'wait' },
  codes: { what: 'Local codes looked up', decides: 'Local codes', weight: 'wait' },
}

const WHY: Record<(typeof TICKED)[number], string> = {
  services: 'Find out what runs behind the surface before anything goes into it; ask, trace, use a detector.',
  'ladder-person': 'One works, one holds the ladder and looks. On a roof: held against a fall.',
  'not-alone': 'Stings, heat and heights: somebody has to be able to call for help.',
  clothing: 'Veil, suit and gloves for everybody inside the marked area, the helper at the ladder too.',
  'sting-plan': 'Who is allergic, where the adrenaline is, the emergency number, the address to give.',
  water: 'For people in suits: drink before thirst, rest in the shade.',
  exclusion: 'People and animals out, neighbours told, windows shut, until the last bees are in.',
  fire: 'Smoker on bare ground or metal, water beside it, never into a dry cavity.',
  tools: 'Boxes with bottoms and lids, empty frames, rubber bands, knife, brush, screen, straps.',
  'queen-clip': 'In a pocket, before the first comb: she is seen once.',
  'brood-chest': 'Open larvae dry out and eggs need damp air: comb goes from the wall straight under a lid.',
  codes: 'Removal, registration, transport and building rules differ from place to place.',
}

function stateOf(id: ItemId, s: Sheet, protocol: Protocol, shows: Shows): Told {
  const cut = cuts(s)
  switch (id) {
    case 'trade':
      return trade(s)
    case 'vacuum':
      return vacuum(s)
    case 'heat':
      return heatOf(s, protocol.heatLimitC, shows)
    case 'cut-depth':
      return cut ? depth(s, protocol.cutMarginMm, shows) : notNeeded('Nothing is cut.')
    case 'hazards-looked':
      return cut ? hazardsLooked(s) : notNeeded('Nothing is cut.')
    case 'sprayed':
      return sprayed(s)
    case 'agreement':
      return s.agreement.signature === undefined
        ? told(
            'unsaid',
            'What is and is not included is not agreed yet: have it signed, on paper or on the screen.',
          )
        : met()
    case 'wires':
      return cut ? wires(s) : notNeeded('Nothing is cut.')
    case 'services':
      return cut ? ticked(s, id) : notNeeded('Nothing is cut.')
    case 'brood-chest':
      return s.site.type === 'swarm' ? notNeeded('A swarm has no comb.') : ticked(s, id)
    case 'ladder-person':
      if (s.site.access === undefined) return told('unsaid', 'Not said yet how one gets to the bees.')
      return climbs(s) ? ticked(s, id) : notNeeded('Worked from the ground.')
    default:
      return ticked(s, id)
  }
}

/** A box left open is not filled in: nobody has said that it is not so. */
const ticked = (s: Sheet, id: (typeof TICKED)[number]): Told =>
  s.check.done?.includes(id) === true ? met(WHY[id]) : told('unsaid', WHY[id])

const TRADES = {
  'electric-in-cut': 'live wires in the way of the cut: an electrician makes them dead first',
  gas: 'a gas pipe: the gas fitter or the supplier',
  flue: 'a flue or duct: a heating engineer',
  asbestos: 'asbestos suspected: not to be cut, broken or swept; a licensed contractor tests it',
  'lead-paint': 'lead paint suspected: a licensed contractor tests it and says how it may be cut',
  'weak-structure': 'weak boards or beams: a builder says what carries',
} as const

/** What a licensed trade has to clear before anything is opened. */
export function tradesNeeded(s: Sheet): string[] {
  const found: readonly string[] = [...(s.site.behind ?? []), ...(s.site.hazards ?? [])]
  return Object.entries(TRADES).flatMap(([what, words]) => (found.includes(what) ? [words] : []))
}

function trade(s: Sheet): Told {
  const needed = tradesNeeded(s)
  if (needed.length === 0) return notNeeded('Nothing found that a licensed trade has to clear.')
  const list = needed.join('; ')
  return s.check.clearedBy === undefined
    ? told('unmet', `Stop: ${list}. Write down who cleared it and when.`)
    : met(`Cleared: ${s.check.clearedBy} (${list}).`)
}

/** Wires behind the surface are no reason to refuse, but a licensed person has to see to them. */
export const WIRES_BEHIND =
  'Electric wires run behind the surface: locate them, and have a licensed electrician switch them off or clear the cut'

const wiresBehind = (s: Sheet): boolean => s.site.behind?.includes('electric') === true

/** Wires are behind the surface, and nobody has written down yet who saw to them. */
export const wiresToClear = (s: Sheet): boolean => wiresBehind(s) && s.check.clearedBy === undefined

function wires(s: Sheet): Told {
  if (!wiresBehind(s)) return notNeeded('None found behind the surface.')
  return s.check.clearedBy === undefined
    ? told('unsaid', `${WIRES_BEHIND}. Write down who did it and when.`)
    : met(`Cleared: ${s.check.clearedBy}.`)
}

function vacuum(s: Sheet): Told {
  if (s.check.vacuum === undefined) return told('unsaid', 'Not said yet how the bees come off.')
  return s.check.vacuum === 'shop-vacuum'
    ? told(
        'unmet',
        'A shop vacuum kills them: only a vacuum made for bees, low suction, soft box, no liquid honey; or a brush.',
      )
    : met()
}

function depth(s: Sheet, marginMm: number, shows: Shows): Told {
  const { sheathingMm } = s.site
  const { cutMm } = s.check
  if (sheathingMm === undefined)
    return told('unsaid', 'Not said yet how thick the sheathing is: drill or measure at an edge.')
  const most = sheathingMm + marginMm
  const rule = `no deeper than the sheathing (${shows.depth(sheathingMm)}) and ${shows.depth(marginMm)}: ${shows.depth(most)}`
  if (cutMm === undefined) return told('unsaid', `Not set yet; ${rule}.`)
  // A hundredth of a millimetre, so that inches typed as decimals don't fail by rounding.
  return cutMm > most + 0.01
    ? told('unmet', `Set to ${shows.depth(cutMm)}; ${rule}.`)
    : met(`Set to ${shows.depth(cutMm)}.`)
}

function hazardsLooked(s: Sheet): Told {
  if (s.site.hazards === undefined)
    return told(
      'unsaid',
      `Not said yet${s.site.old === 'no' ? '' : '; built before 1980, both asbestos and lead paint are likely'}.`,
    )
  return met()
}

function sprayed(s: Sheet): Told {
  if (s.site.sprayed === undefined) return told('unsaid', 'Not asked yet.')
  if (s.site.sprayed === 'unknown')
    return met('Not known: look for dead bees below, and treat the comb as sprayed where there are many.')
  return s.site.sprayed === 'yes'
    ? met('Sprayed: keep no comb and no honey, feed none of it, and keep robbers off what is thrown away.')
    : met()
}
