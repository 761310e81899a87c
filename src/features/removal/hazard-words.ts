/** What can kill, in words: what is ticked, who clears it, what a paper says of it, and why it is off a sheet. */

import { type Grave, PAPER_SAYS, type Trade, type TradeHazard, WHY_GONE } from '../../records/index.ts'
import type { Choice } from '../../words/index.ts'
import { choices } from './choices.ts'
import { whyFits } from './grave.ts'
import type { TickedId } from './item.ts'
import type { Told } from './other-sheets.ts'

export const TICKS: Record<TickedId, string> = {
  free: 'It hangs free in the open',
  'not-alone': 'Somebody within call',
  'ladder-person': 'Second person at the ladder',
  'sting-plan': 'Plan for stings said aloud',
  allergy: 'Allergic person cared for',
  children: 'Children away',
  exclusion: 'Area kept clear',
  fierce: 'Distance and hour for fierce bees',
  water: 'Water and shade',
  droppings: 'Respirator for droppings',
  insulation: 'Respirator for insulation',
  stopcock: 'Stopcock found',
  kit: 'Clothing, smoker and tools',
}

export const HAZARD_WORDS: Record<TradeHazard, string> = {
  electric: 'Electric wires',
  'electric-in-cut': 'Wires in the cut',
  gas: 'Gas pipe',
  flue: 'Flue or duct',
  asbestos: 'Asbestos',
  'lead-paint': 'Lead paint',
  'weak-structure': 'Weak boards or beams',
  'near-wires': 'Wires near bees or ladder',
}

export const TRADE_WORDS: Record<Trade, string> = {
  electrician: 'Electrician',
  'gas-fitter': 'Gas fitter',
  supplier: 'Supplier, owner of the line',
  locator: 'Locating service',
  heating: 'Heating engineer',
  surveyor: 'Licensed surveyor or laboratory',
  builder: 'Builder',
}

/** Tested, of the very wall that is cut: their papers are often of another, and often find some. */
const isSurveyed = (hazard: TradeHazard): boolean => hazard === 'asbestos' || hazard === 'lead-paint'

/** What clears a hazard, in the words of its trade. */
const CLEAR_WORDS: Record<TradeHazard, string> = {
  electric: 'Dead, and proved; or marked where it may be cut',
  'electric-in-cut': 'Made dead, and proved, that day',
  gas: 'Shut off, and proved, that day',
  flue: 'Cold, or safe to open beside it',
  asbestos: 'None found in this wall',
  'lead-paint': 'None found in this wall',
  'weak-structure': 'It carries us where we work',
  'near-wires': 'Made dead or covered, and proved, that day',
}

/** What a paper says of a hazard: an appointment and a sample clear nothing. */
export const paperSays = (hazard: TradeHazard): Choice[] =>
  choices(
    PAPER_SAYS.filter((says) => says !== 'found' || isSurveyed(hazard)),
    {
      clear: CLEAR_WORDS[hazard],
      found: 'Found some',
      'not-yet': isSurveyed(hazard) ? 'No result yet' : 'Not yet, or only arranged',
    },
  )

export const GRAVE_WORDS: Record<Told, string> = {
  ...HAZARD_WORDS,
  allergic: 'Somebody allergic',
  children: 'Children',
  fierce: 'Fierce bees',
  climb: 'Ladder, roof or height',
  nest: 'A nest that is opened',
  droppings: 'Droppings or mould',
  insulation: 'Insulation',
  water: 'Water pipe',
  old: 'A building of before 1980',
  sprayed: 'Sprayed bees',
}

const GONE: Choice[] = choices(WHY_GONE, {
  mistake: 'Tapped by mistake',
  removed: 'The trade took it out',
  left: 'Not so any more',
  elsewhere: 'That was another place',
})

/** Why a thing is off the sheet. */
export const goneChoices = (what: Grave): Choice[] => GONE.filter((c) => whyFits(what, c.value))
