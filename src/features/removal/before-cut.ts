/**
 * What to check before the cut: each item met, unmet, or not filled in yet, with who decides. It never calls a job harmless:
 * it names what is missing, and people at the wall decide. Licensed trades and local codes stand above all of it.
 *
 * The items are common practice in the trade; the limits (heat, cutting depth) are the yard's protocol.
 */

import { isUnderWay, type SecondName, type Sheet, TRADE_HAZARDS } from '../../records/index.ts'
import type { Protocol } from '../../recovery/index.ts'
import { isTooOld } from '../../time-of-day.ts'
import { heatOf, type Shows } from './forecast.ts'
import { cuts, takesBlade, tradeFacts } from './hazards.ts'
import { type Facts, ITEMS, type Item, type ItemId, MET, NOT_NEEDED, TICKED, type TickedId } from './item.ts'
import { oldBuilding, servicesLocated, wiresNear } from './looked-for.ts'
import { type OtherSheet, otherSheets } from './other-sheets.ts'
import { bystandersAsked, temperAsked, tickedFacts } from './people.ts'
import { placeOf, samePlace } from './place.ts'
import { isSigned } from './second.ts'
import { isShort } from './stage.ts'
import { tickedTooEarly } from './ticked-when.ts'
import { begun } from './without-go.ts'
import { written } from './written.ts'

export interface Reckoning {
  items: Item[]
  /** Unmet or not filled in yet: what stops it first, then what a second person may answer for, then the rest. */
  unmet: Item[]
  says: 'refuse' | 'wait' | 'nothing-unmet'
}

/** Holds the sheet of a day against the protocol. `shows` puts temperatures and depths in the yard's units. */
export function beforeCut(
  s: Sheet,
  protocol: Protocol,
  shows: Shows,
  today: string,
  /** Other sheets of the same house. */
  others: readonly OtherSheet[] = [],
  /** The hour ('15:00'): what was tapped too long before is asked again, unless it is under way. */
  now?: string,
): Reckoning {
  const begins = isUnderWay(s, today) ? undefined : now
  const late = begins !== undefined && tickedTooEarly(s, begins)
  const about: About = { protocol, shows, today, others, late, begins }
  const items = ITEMS.map((id) => withSecond(itemOf(id, s, about), s, today, begins))
  const open = items.filter((i) => i.state === 'unmet' || i.state === 'unsaid')
  const unmet = [
    ...open.filter(stops),
    ...(['trade', 'second', 'reason'] as const).flatMap((w) =>
      open.filter((i) => i.weight === w && !stops(i)),
    ),
  ]
  return {
    items,
    unmet,
    says: unmet.some(stops) ? 'refuse' : unmet.length > 0 ? 'wait' : 'nothing-unmet',
  }
}

/** Whether it speaks for refusing. Not saying is no ground to turn a job down for good; what was said is. */
export const stops = (i: Item): boolean => i.weight === 'trade' && i.state === 'unmet'

/** Whether no decision gets past it: it waits for a trade, for a look, or for a second person's name. */
export const holds = (i: Item): boolean =>
  (i.state === 'unmet' || i.state === 'unsaid') && i.weight !== 'reason'

/** The name that stands for an item today: drawn here, for exactly what is unmet now. Of what is ticked, lately: who said at six that they stay may be gone. */
const secondFor = (i: Item, s: Sheet, today: string, now?: string): SecondName | undefined =>
  s.check.seconds?.findLast(
    (x) =>
      x.item === i.id &&
      isSigned(x) &&
      x.of === i.why &&
      x.on === today &&
      samePlace(x, placeOf(s)) &&
      (now === undefined || !isTicked(i.id) || (x.at !== undefined && !isTooOld(x.at, now))),
  )

function withSecond(i: Item, s: Sheet, today: string, now?: string): Item {
  if (i.weight !== 'second' || (i.state !== 'unmet' && i.state !== 'unsaid')) return i
  const second = secondFor(i, s, today, now)
  return second === undefined ? i : { ...i, state: 'signed' }
}

/** As it is said of what is open: what would meet it, and that it is not so. 'Not yet: gas pipe cleared' */
export const notYet = ({ id, what }: Pick<Item, 'id' | 'what'>): string =>
  id === 'without-go' ? what : `Not yet: ${what.charAt(0).toLowerCase()}${what.slice(1)}`

const CREW = 'Whoever leads the crew, on the day'
const YOU = 'The beekeeper'
const TRADE = 'A licensed trade, and local codes'
const OWNER = 'The owner'

type Name = Pick<Item, 'what' | 'decides' | 'weight'>
const name = (what: string, decides: string, weight: Item['weight']): Name => ({ what, decides, weight })
const trade = (what: string, weight: Item['weight']): Name => name(what, TRADE, weight)

const NAMES: Record<ItemId, Name> = {
  'trade-electric': trade('Wires behind it switched off or cleared', 'trade'),
  'trade-electric-in-cut': trade('Wires in the cut made dead', 'trade'),
  'trade-gas': trade('Gas pipe cleared', 'trade'),
  'trade-asbestos': trade('Asbestos tested, and none', 'trade'),
  'trade-flue': trade('Flue or duct cleared', 'second'),
  'trade-lead-paint': trade('Lead paint tested, and none', 'second'),
  'trade-weak-structure': trade('Weak boards or beams looked at', 'second'),
  'trade-near-wires': trade('Wires, meter or pole near made dead or covered', 'trade'),
  services: trade('Wires, pipes and flues located', 'trade'),
  'old-building': trade('Looked for asbestos, lead paint, weak boards', 'trade'),
  heat: name('Outdoor heat under the limit', YOU, 'second'),
  vacuum: name('A gentle way to take the bees off', YOU, 'trade'),
  'cut-depth': name('Cutting depth set', YOU, 'second'),
  // Not knowing is an answer, so nobody signs for not asking.
  bystanders: name('Asked who is about and who is allergic', CREW, 'trade'),
  temper: name('Asked how they behave, and of Africanized bees', CREW, 'trade'),
  wires: name('Wires near bees or ladder looked for', CREW, 'trade'),
  'other-sheet': name('What another sheet says, looked for again', CREW, 'trade'),
  free: name('Seen to hang free, with nothing to open', CREW, 'trade'),
  'not-alone': name('Somebody within call', CREW, 'second'),
  'ladder-person': name('Second person at the ladder', CREW, 'second'),
  'sting-plan': name('Plan for stings', CREW, 'second'),
  allergy: name('The allergic person cared for', CREW, 'second'),
  children: name('Children away', CREW, 'second'),
  exclusion: name('Area kept clear', CREW, 'second'),
  fierce: name('Distance and hour for fierce bees', CREW, 'second'),
  water: name('Water and shade', CREW, 'second'),
  droppings: name('Respirator against droppings', CREW, 'second'),
  insulation: name('Respirator against insulation', CREW, 'second'),
  stopcock: name('Stopcock found', CREW, 'second'),
  kit: name('Clothing, smoker and tools', CREW, 'second'),
  sprayed: name('Asked whether the bees were sprayed', OWNER, 'reason'),
  notes: name('What was written, read and tapped', CREW, 'trade'),
  caller: name('The owner’s leave', OWNER, 'reason'),
  agreement: name('Agreement signed', OWNER, 'reason'),
  'without-go': name('Begun without a “go”', 'The operator, afterwards', 'reason'),
}

/** What a sheet is held against. */
interface About {
  protocol: Protocol
  shows: Shows
  today: string
  others: readonly OtherSheet[]
  /** What was tapped today was tapped too long ago. */
  late: boolean
  /** The hour, where something is still to be begun. */
  begins: string | undefined
}

function itemOf(id: ItemId, s: Sheet, about: About): Item {
  return { id, ...NAMES[id], ...factsOf(id, s, about) }
}

const isTicked = (id: ItemId): id is TickedId => (TICKED as readonly string[]).includes(id)

function factsOf(id: ItemId, s: Sheet, { protocol, shows, today, others, late, begins }: About): Facts {
  const hazard = TRADE_HAZARDS.find((h) => id === `trade-${h}`)
  if (hazard !== undefined) return tradeFacts(s, hazard, today)
  if (isTicked(id)) return tickedFacts(id, s, today, late)
  switch (id) {
    case 'services':
      return servicesLocated(s, today)
    case 'old-building':
      return oldBuilding(s, today)
    case 'heat':
      return heatOf(s, protocol.heatLimitC, shows, today, begins)
    case 'vacuum':
      return vacuum(s)
    case 'cut-depth':
      return cuts(s) && takesBlade(s) ? depth(s, protocol.cutMarginMm, shows) : NOT_NEEDED
    case 'bystanders':
      return bystandersAsked(s, today)
    case 'temper':
      return temperAsked(s)
    case 'wires':
      return wiresNear(s, today, late)
    case 'other-sheet':
      return otherSheets(s, others, today)
    case 'notes':
      return written(s, today)
    case 'without-go':
      return begun(s)
    case 'sprayed':
      return sprayed(s)
    case 'caller':
      return caller(s)
    default:
      if (isShort(s)) return NOT_NEEDED
      return s.agreement.signature === undefined
        ? told(
            'unsaid',
            'What is and is not included is not agreed yet: have it signed, on paper or on the screen.',
          )
        : MET
  }
}

const met = (why: string): Facts => told('met', why)
const told = (state: Facts['state'], why: string): Facts => ({ state, why })

function vacuum(s: Sheet): Facts {
  if (s.check.vacuum === undefined)
    return cuts(s) ? told('unsaid', 'Not said yet how the bees come off.') : NOT_NEEDED
  return s.check.vacuum === 'shop-vacuum'
    ? told(
        'unmet',
        'A shop vacuum kills them: only a vacuum made for bees, with airflow that can be turned down, a soft box, no liquid honey; or a brush.',
      )
    : MET
}

/** Boards, plaster and brick of one layer are thinner (judgement): thicker is a slip of the unit, or no work for a blade. */
const THICK_MM = 100

function depth(s: Sheet, marginMm: number, shows: Shows): Facts {
  const { sheathingMm } = s.site
  const { cutMm } = s.check
  if (sheathingMm === undefined)
    return {
      state: 'unsaid',
      why: 'Not said yet how thick the sheathing is: drill or measure at an edge.',
      moved: true,
      at: { part: 'site', field: 'sheathingMm' },
    }
  if (sheathingMm > THICK_MM)
    return told(
      'unmet',
      `${shows.depth(sheathingMm)} of sheathing: or was it typed in the other unit? Measure it at a drilled hole.`,
    )
  const most = sheathingMm + marginMm
  const rule = `no deeper than the sheathing (${shows.depth(sheathingMm)}) and ${shows.depth(marginMm)}: ${shows.depth(most)}`
  if (cutMm === undefined) return told('unsaid', `Not set yet; ${rule}.`)
  // A hundredth of a millimetre, so that inches typed as decimals don't fail by rounding.
  return cutMm > most + 0.01
    ? told('unmet', `Set to ${shows.depth(cutMm)}; ${rule}.`)
    : met(`Set to ${shows.depth(cutMm)}.`)
}

function sprayed(s: Sheet): Facts {
  if (s.site.sprayed === undefined) return told('unsaid', 'Not asked yet.')
  if (s.site.sprayed === 'unknown')
    return met('Not known: look for dead bees below, and treat the comb as sprayed where there are many.')
  return s.site.sprayed === 'yes'
    ? met('Sprayed: keep no comb and no honey, feed none of it, and keep robbers off what is thrown away.')
    : MET
}

function caller(s: Sheet): Facts {
  if (s.job.caller === undefined || s.job.caller === 'owner') return NOT_NEEDED
  return s.agreement.signature === undefined
    ? told('unsaid', 'Whoever called does not own the place: ask the owner before anything is opened.')
    : MET
}
