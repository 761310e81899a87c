/** The removal sheet in words: answers to tap, stages, what the reckoning says. */

import {
  ACCESS,
  BEHIND,
  BYSTANDERS,
  CALL_BACKS,
  CALLERS,
  CLEANED,
  CLOSED_UP,
  DECISIONS,
  type Decision,
  FOUND_BY,
  type Grave,
  HAZARDS,
  hasBegun,
  lastDayOf,
  ON_THE_WAY,
  PAPER_SAYS,
  SEALED,
  SECOND_WHYS,
  type Sheet,
  SINCE,
  type Trade,
  type TradeHazard,
  VACUUMS,
  WHY_GONE,
  WIRES,
  WITHOUT_GO,
} from '../../records/index.ts'
import { type Choice, dayAndDistance, depth, labelIn, temperature, type Units } from '../../words/index.ts'
import { notYet, type Reckoning, stops } from './before-cut.ts'
import type { ClosingId } from './closing.ts'
import type { Shows } from './forecast.ts'
import { whyFits } from './grave.ts'
import type { Item, TickedId } from './item.ts'
import { NO_HAZARD, NONE_BEHIND } from './none-found.ts'
import type { Told } from './other-sheets.ts'
import type { Part, Stage } from './stage.ts'
import { WITHOUT_GO_WORDS } from './without-go.ts'

const choices = <T extends string>(
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

/** 'Perpetua tapped “Refuse”, 2026-06-12 10:02: smell of gas' */
export const decidedWords = (d: Pick<Decision, 'is' | 'by' | 'on' | 'at' | 'reason'>): string =>
  `${d.by} tapped “${labelIn(DECIDE, d.is)}”, ${[d.on, d.at].filter(Boolean).join(' ')}${d.reason === undefined ? '' : `: ${d.reason.replace(/\.$/, '')}`}`

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

export const SECOND_WHY: Choice[] = choices(SECOND_WHYS, {
  stays: 'I stay here and watch',
  seen: 'I have seen it is in order',
})

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

export const CLOSING_WORDS: Record<ClosingId, string> = {
  comb: 'comb and honey out',
  void: 'void filled or screened',
  smell: 'smell covered',
  entrance: 'entrance shut',
  stragglers: 'box for stragglers',
  photo: 'photo of it closed',
}

export const SIGN_HOW: Choice[] = [
  { value: 'drawn', label: 'Drawn here' },
  { value: 'paper', label: 'On paper' },
]

const STAGE_WORDS: Record<Stage, string> = {
  called: 'Called',
  'looked-at': 'Looked at',
  agreed: 'Agreement signed',
  wait: 'Waiting',
  go: 'Go',
  worked: 'Bees are out',
  boxed: 'Boxed, to be closed up',
  finished: 'Finished',
  refused: 'Refused',
  ended: 'Ended without a removal',
}

/** “Waiting” stands over no refusal: what is begun is not over, and not put off. */
export const stageWords = (stage: Stage, { decision }: Sheet): string =>
  stage === 'wait' && decision?.is === 'refuse' ? 'Begun, and refused' : STAGE_WORDS[stage]

export const PART_WORDS: Record<Part, string> = {
  job: 'The call',
  site: 'Finding and opening',
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

/** '2 more to be met first', '15 not filled in yet': what there is of them beside what stops it. */
function counted(r: Reckoning): string[] {
  const stopping = r.unmet.filter(stops).length
  const unsaid = r.unmet.filter((i) => i.state === 'unsaid').length
  const unmet = r.unmet.length - stopping - unsaid
  return [
    unmet === 0 ? '' : `${unmet}${stopping === 0 ? '' : ' more'} to be met first`,
    unsaid === 0 ? '' : `${unsaid} not filled in yet`,
  ].filter(Boolean)
}

/** What stands where “Go” stood. `late`: its hour has gone. */
export const noGo = (s: Sheet, late: string | null, today: string): string =>
  late ??
  (!hasBegun(s) || s.decision?.fell !== undefined || lastDayOf(s) === today
    ? 'No go any more: it no longer stands'
    : 'Open since another day, and no go of today: look again before you go on')

/** 'Fri 12 Jun, today'; of a day that has gone by that it was only planned: a “Go” beside it is not of that day. */
export const plannedWords = (on: string, today: string, over: boolean): string =>
  `${!over && on < today ? 'planned for ' : ''}${dayAndDistance(on, today)}`

/** The heading over the list of what is unmet; `goes`: a “go” stands over it, for a reason that somebody gave. */
export function reckoningTitle(r: Reckoning, goes = false): string {
  switch (r.says) {
    case 'refuse':
      return ['Stop', r.unmet.filter(stops).map(notYet).join('. '), ...counted(r)].filter(Boolean).join('. ')
    case 'wait':
      return `${goes ? 'Gone over with a reason' : 'Wait'}: ${counted(r).join('; ')}`
    case 'nothing-unmet':
      return 'Nothing on this list is unmet'
  }
}

/** Nothing is begun at this hour all the same, and the head says why. */
export const NOTHING_ELSE = 'Nothing else on this list is unmet'

/** Said under it, always. */
export const RECKONING_NOTE =
  'This list knows only what was typed in. Whoever is at the wall looks again, decides, and stops when something changes. Local codes and licensed practice stand above it: removal, transport, registration and building rules differ from place to place.'

export const ITEM_STATE: Record<Item['state'], string> = {
  met: 'met',
  unmet: 'unmet',
  unsaid: 'not filled in yet',
  'not-needed': 'not needed',
  signed: 'signed for by a second person',
}
