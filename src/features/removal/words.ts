/** The removal sheet in words: answers to tap, stages, what the reckoning says. */

import {
  ACCESS,
  BEHIND,
  BYSTANDERS,
  CLEANED,
  DECISIONS,
  FOUND_BY,
  HAZARDS,
  SEALED,
  VACUUMS,
} from '../../records/index.ts'
import { type Choice, depth, temperature, type Units } from '../../words/index.ts'
import { type Item, type Reckoning, stops, TICKED } from './before-cut.ts'
import type { Shows } from './forecast.ts'
import type { Part, Stage } from './stage.ts'

const choices = <T extends string>(
  values: readonly T[],
  labels: Record<T, string | [string, string]>,
): Choice[] =>
  values.map((value) => {
    const label = labels[value]
    return typeof label === 'string' ? { value, label } : { value, label: label[0], hint: label[1] }
  })

const unsaid = (label = 'Not said'): Choice => ({ value: '', label })
const LOOKED_NONE: Choice = { value: 'none', label: 'Looked: none' }

export const FOUND: Choice[] = choices(FOUND_BY, {
  flight: 'Watched them fly',
  'heat-camera': 'Heat camera',
  scope: 'Scope through a hole',
  listening: 'Listening',
  opened: 'It is open already',
})

export const WAY_UP: Choice[] = [
  unsaid(),
  ...choices(ACCESS, {
    ground: 'From the ground',
    'step-ladder': 'Step ladder',
    ladder: 'Ladder',
    roof: 'On a roof',
    lift: 'Lift or scaffold',
  }),
]

export const BEHIND_IT: Choice[] = [
  LOOKED_NONE,
  ...choices(BEHIND, {
    electric: 'Electric wires',
    'electric-in-cut': ['Wires in the cut', 'in its way, live'],
    gas: 'Gas pipe',
    water: 'Water pipe',
    flue: 'Flue or duct',
    insulation: 'Insulation',
  }),
]

export const HAZARD: Choice[] = [
  LOOKED_NONE,
  ...choices(HAZARDS, {
    asbestos: 'Asbestos suspected',
    'lead-paint': 'Lead paint suspected',
    'weak-structure': 'Weak boards or beams',
    droppings: 'Droppings or mould',
  }),
]

export const BYSTANDER: Choice[] = [
  LOOKED_NONE,
  ...choices(BYSTANDERS, {
    children: 'Children',
    animals: 'Animals',
    neighbours: 'Neighbours',
    'passers-by': 'Passers-by',
    allergic: 'Somebody allergic',
  }),
]

export const YES_NO: Choice[] = [
  { value: '', label: 'Not asked' },
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
  { value: 'unknown', label: 'Not known' },
]

export const VACUUM: Choice[] = [
  unsaid(),
  ...choices(VACUUMS, {
    none: ['No vacuum', 'brush, smoke, frames'],
    'bee-vacuum': ['Bee vacuum', 'low suction, soft box'],
    'shop-vacuum': ['Shop vacuum', 'straight onto bees'],
  }),
]

export const DECIDE: Choice[] = choices(DECISIONS, {
  go: 'Go',
  wait: 'Wait',
  refuse: 'Refuse',
})

export const PRICING: Choice[] = [
  unsaid(),
  { value: 'hourly', label: 'By the hour' },
  { value: 'fixed', label: 'Fixed price' },
]

export const SEAL: Choice[] = [
  unsaid(),
  ...choices(SEALED, { yes: 'Sealed', no: 'Not sealed', owner: 'Left to the owner' }),
]

export const CLEAN: Choice[] = [
  unsaid(),
  ...choices(CLEANED, { all: 'All of it', part: 'Part of it', none: 'None' }),
]

export const TICKS: Choice[] = choices(TICKED, {
  services: 'Wires, pipes, flues located',
  'ladder-person': 'Second person for the ladder',
  'not-alone': 'Somebody within call',
  clothing: 'Protective clothing for all',
  'sting-plan': 'Plan for stings',
  water: 'Water and shade',
  exclusion: 'Area kept clear',
  fire: 'Smoker off dry grass and dust',
  tools: 'Tools and boxes loaded',
  'queen-clip': 'Queen clip ready',
  'brood-chest': 'Lidded insulated chest for brood',
  codes: 'Local codes looked up',
})

export const SIGN_HOW: Choice[] = [
  { value: 'drawn', label: 'Drawn here' },
  { value: 'paper', label: 'On paper' },
]

export const STAGE_WORDS: Record<Stage, string> = {
  called: 'Called',
  'looked-at': 'Looked at',
  agreed: 'Agreement signed',
  wait: 'Waiting',
  go: 'Go',
  worked: 'Bees are out',
  boxed: 'Boxed',
  refused: 'Refused',
  ended: 'Ended without a removal',
}

export const PART_WORDS: Record<Part, string> = {
  job: 'Who and where',
  site: 'The site',
  agreement: 'The agreement',
  check: 'Before the cut',
  work: 'The removal',
}

/** What one does next, on the button. */
export const NEXT_WORDS: Record<Part | 'intake', string> = {
  job: 'Who and where',
  site: 'Assess the site',
  agreement: 'Agree and sign',
  check: 'Check before the cut',
  work: 'Record the removal',
  intake: 'Log the intake',
}

export const showsIn = (units: Units): Shows => ({
  temperature: (c) => temperature(c, units),
  depth: (mm) => depth(mm, units),
})

/** '1 thing stops it', '2 to be met first', '15 not filled in yet': what there is of them. */
function counted(r: Reckoning): string[] {
  const stopping = r.unmet.filter(stops).length
  const unsaid = r.unmet.filter((i) => i.state === 'unsaid').length
  const unmet = r.unmet.length - stopping - unsaid
  return [
    stopping === 0 ? '' : stopping === 1 ? '1 thing stops it' : `${stopping} things stop it`,
    unmet === 0 ? '' : `${unmet} to be met first`,
    unsaid === 0 ? '' : `${unsaid} not filled in yet`,
  ].filter(Boolean)
}

/** The heading over the list of what is unmet. */
export function reckoningTitle(r: Reckoning): string {
  switch (r.says) {
    case 'refuse':
      return `Refuse, as it stands: ${counted(r).join('; ')}`
    case 'wait':
      return `Wait: ${counted(r).join('; ')}`
    case 'nothing-unmet':
      return 'Nothing on this list is unmet'
  }
}

/** Said under it, always. */
export const RECKONING_NOTE =
  'This list knows only what was typed in. Whoever is at the wall looks again, decides, and stops when something changes. Local codes and the licensed trades stand above it.'

export const ITEM_STATE: Record<Item['state'], string> = {
  met: 'met',
  unmet: 'unmet',
  unsaid: 'not filled in yet',
  'not-needed': 'not needed',
}
