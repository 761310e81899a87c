/** Answers to tap on a removal sheet, in words. */

import {
  ACCESS,
  BEHIND,
  BYSTANDERS,
  CALL_BACKS,
  CALLERS,
  CLEANED,
  CLOSED_UP,
  DECISIONS,
  FOUND_BY,
  HAZARDS,
  ON_THE_WAY,
  SEALED,
  SECOND_WHYS,
  SINCE,
  VACUUMS,
  WIRES,
  WITHOUT_GO,
} from '../../records/index.ts'
import type { Choice } from '../../words/index.ts'
import { NO_HAZARD, NONE_BEHIND } from './none-found.ts'
import { WITHOUT_GO_WORDS } from './without-go.ts'

export const choices = <T extends string>(
  values: readonly T[],
  labels: Record<T, string | [string, string]>,
): Choice[] =>
  values.map((value) => {
    const label = labels[value]
    return typeof label === 'string' ? { value, label } : { value, label: label[0], hint: label[1] }
  })

const unsaid = (label = 'Not said'): Choice => ({ value: '', label })

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
  ...choices(NONE_BEHIND, {
    'none-detector': ['None', 'by a detector'],
    'none-traced': ['None', 'outlets, taps, plan'],
    'none-owner': ['None', 'the owner says'],
  }),
  ...choices(BEHIND, {
    electric: 'Electric wires',
    'electric-in-cut': 'Live wires in the cut',
    gas: 'Gas pipe',
    water: 'Water pipe',
    flue: 'Flue or duct',
    insulation: 'Insulation',
  }),
]

export const HAZARD: Choice[] = [
  ...choices(NO_HAZARD, {
    'none-new': ['None', 'built after 1980'],
    'none-tested': ['None', 'old, but tested'],
    'none-untouched': ['None', 'old, no cut, no screw'],
  }),
  ...choices(HAZARDS, {
    asbestos: 'Asbestos suspected',
    'lead-paint': 'Lead paint suspected',
    'weak-structure': 'Weak boards or beams',
    droppings: 'Droppings or mould',
  }),
]

export const BYSTANDER: Choice[] = [
  // At the telephone nobody looks.
  { value: 'none', label: 'Asked: nobody' },
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

export const VACUUM: Choice[] = choices(VACUUMS, {
  none: ['No vacuum', 'brush, smoke'],
  'bee-vacuum': ['Bee vacuum', 'gentle, soft box'],
  'shop-vacuum': ['Shop vac', 'kills bees'],
})

export const WIRES_NEAR: Choice[] = choices(WIRES, {
  none: 'No',
  near: 'Yes',
  unknown: 'Not known',
})

export const DECIDE: Choice[] = choices(DECISIONS, {
  go: 'Go',
  wait: 'Wait',
  refuse: 'Refuse',
})

/** What the list said when it was read aloud. */
export const NEWS: Choice[] = [
  { value: 'none', label: 'Nothing new' },
  { value: 'tapped', label: 'New, and I tapped it here' },
]

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

export const SECOND_WHY: Choice[] = choices(SECOND_WHYS, {
  stays: 'I stay here and watch',
  seen: 'I have seen it is in order',
})

export const BEGUN: Choice[] = choices(
  WITHOUT_GO.filter((why) => why !== 'sent-later' && why !== 'unsaid'),
  WITHOUT_GO_WORDS,
)

/** What is seen is no removal type yet, or none at all. */
export const NOT_A_TYPE: Choice[] = [
  { value: 'unsure', label: 'Not sure' },
  { value: 'wasps', label: 'Wasps or bumble bees' },
]

export const WATER: Choice[] = [
  { value: '', label: 'Not said' },
  { value: 'yes', label: 'Here' },
  { value: 'no', label: 'Not here' },
]

export const HOW_LONG: Choice[] = choices(SINCE, {
  today: 'Today',
  days: 'Days',
  weeks: 'Weeks',
  months: 'Months',
  years: 'Years',
})

export const CALLER: Choice[] = choices(CALLERS, {
  owner: 'Owner',
  tenant: 'Tenant',
  neither: 'Neither',
})

export const CLOSED: Choice[] = choices(CLOSED_UP, {
  void: 'Void filled or screened',
  smell: 'Smell covered',
  stragglers: 'Box for stragglers',
})

export const WAY: Choice[] = choices(ON_THE_WAY, {
  gentle: ['Vacuum gentle', 'airflow turned down'],
  vent: 'Vent open',
  strapped: 'Strapped',
  shut: 'Entrance shut',
})

export const CALLED_BACK: Choice[] = choices(CALL_BACKS, {
  'bees-back': 'Bees are back',
  stragglers: 'Stragglers',
  honey: 'Honey runs',
  smell: 'Smell',
  'new-swarm': 'New swarm',
  damage: 'Damage',
  other: 'Something else',
})

export const SIGN_HOW: Choice[] = [
  { value: 'drawn', label: 'Drawn here' },
  { value: 'paper', label: 'On paper' },
]
