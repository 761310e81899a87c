/** The answers people can tap, in the words of a yard. '' is "not looked" or "not known": it is left out of the entry. */
import {
  BROOD_STATES,
  CLEARED_BY,
  GIFTS,
  SEARCHED as HOW_SEARCHED,
  LOST_BOX,
  METHODS,
  MISSED_REASONS,
  OUTCOMES,
  QUEEN_AT_INTAKE,
  REMOVAL_TYPES,
  SETTLES as SETTLED,
  SIGNS,
  SYRUPS,
} from '../journal/index.ts'

import type { Language } from '../languages.ts'

export interface Choice {
  value: string
  label: string
  /** A few words under the label. */
  hint?: string
  /** The language of the label, where it is another than the page's. */
  language?: Language
}

const choices = <T extends string>(values: readonly T[], labels: Record<T, string>): Choice[] =>
  values.map((value) => ({ value, label: labels[value] }))

const unsaid = (label: string): Choice => ({ value: '', label })

const REMOVAL_LABELS: Record<(typeof REMOVAL_TYPES)[number], string> = {
  wall: 'Wall',
  floor: 'Floor',
  roof: 'Roof or eaves',
  tree: 'Tree or log',
  ground: 'Hole in the ground',
  'utility-box': 'Meter or utility box',
  equipment: 'Machine or equipment',
  container: 'Bin, tub or container',
  swarm: 'Swarm',
  'trap-out': 'Trap-out',
  'abandoned-hive': 'Abandoned hive',
}

/** A removal type of an old book: nobody wrote it down. */
export const NOT_WRITTEN_DOWN = 'unknown'

/** The shipped removal types, then those the yard added. */
export const removalTypes = (own: readonly string[] = []): Choice[] => [
  ...choices(REMOVAL_TYPES, REMOVAL_LABELS),
  ...own
    .filter((t) => !(REMOVAL_TYPES as readonly string[]).includes(t))
    .map((t) => ({ value: t, label: t === NOT_WRITTEN_DOWN ? 'Not written down' : t })),
]

export const METHOD: Choice[] = [
  unsaid('Not said'),
  ...choices(METHODS, {
    vacuum: 'Vacuumed',
    brushed: 'Brushed or shaken',
    'walked-in': 'Walked in',
    trap: 'Trapped out',
    hived: 'Came in a hive',
  }),
]

export const SPRAYED: Choice[] = [
  { value: 'unknown', label: 'Not known' },
  { value: 'no', label: 'No' },
  { value: 'yes', label: 'Yes, sprayed' },
]

const QUEEN_LABELS: Record<(typeof QUEEN_AT_INTAKE)[number], Omit<Choice, 'value'>> = {
  caged: { label: 'Caged', hint: 'seen, in a cage in the box' },
  loose: { label: 'Loose', hint: 'seen, running in the box' },
  unseen: { label: 'Not seen', hint: 'may be in, may be lost' },
  lost: { label: 'Dead or lost', hint: 'found dead, or left behind' },
  unknown: { label: 'Not written down', hint: 'of an old book' },
}
export const QUEEN: Choice[] = QUEEN_AT_INTAKE.map((value) => ({ value, ...QUEEN_LABELS[value] }))

/** Of a queen caged or loose. */
export const VIRGIN: Choice[] = [
  unsaid('Not said'),
  { value: 'no', label: 'She laid', hint: 'brood, or a swollen body' },
  { value: 'yes', label: 'A virgin', hint: 'as with a cast swarm' },
]
export const MARKED: Choice[] = [
  unsaid('Not said'),
  { value: 'no', label: 'Not marked' },
  { value: 'yes', label: 'Marked' },
]
export const CLIPPED: Choice[] = [
  unsaid('Not said'),
  { value: 'no', label: 'Wings whole' },
  { value: 'yes', label: 'Clipped' },
]
export const BROOD_STATE: Choice[] = [
  unsaid('Not said'),
  ...choices(BROOD_STATES, { alive: 'Alive', chilled: 'Chilled', dead: 'Dead' }),
]

export const BROOD_CARE: Choice[] = [
  unsaid('Not said'),
  { value: 'closed-chest', label: 'Closed chest', hint: 'shut away, warm and damp' },
  { value: 'open-air', label: 'In the open', hint: 'lay out in sun or wind' },
]

export const CELLS_AT_REMOVAL: Choice[] = [
  unsaid('Not looked'),
  { value: 'none', label: 'None' },
  { value: 'open', label: 'Open' },
  { value: 'capped', label: 'Capped' },
]

export const TIED: Choice[] = [
  unsaid('Not said'),
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
]

export const LID: Choice[] = [
  { value: 'yes', label: 'Opened', hint: 'lid off, frames out' },
  { value: 'no', label: 'Lid stayed on', hint: 'looked from outside' },
]

const NOT_LOOKED = unsaid('Not looked')

export const EGGS: Choice[] = [
  NOT_LOOKED,
  { value: 'none', label: 'None' },
  { value: 'single', label: 'Single', hint: 'one, at the cell’s floor' },
  { value: 'multiple', label: 'Several', hint: 'in a cell, or on its walls' },
]
export const OPEN_BROOD: Choice[] = [
  NOT_LOOKED,
  { value: 'none', label: 'None' },
  { value: 'some', label: 'Some' },
  { value: 'plenty', label: 'Plenty' },
]
export const CAPPED_BROOD: Choice[] = [
  NOT_LOOKED,
  { value: 'none', label: 'None' },
  { value: 'worker', label: 'Worker', hint: 'flat caps' },
  { value: 'drone-in-worker', label: 'Drone caps', hint: 'raised, in worker cells' },
]
export const FRESH_COMB: Choice[] = [
  unsaid('Not sure'),
  { value: 'no', label: 'Old comb', hint: 'came along, or was given' },
  { value: 'yes', label: 'Fresh comb', hint: 'drawn since the intake' },
]
export const QUEEN_SEEN: Choice[] = [
  NOT_LOOKED,
  { value: 'unseen', label: 'Not seen' },
  { value: 'seen', label: 'Seen' },
]
export const CELLS: Choice[] = [
  NOT_LOOKED,
  { value: 'none', label: 'None' },
  { value: 'cups', label: 'Cups', hint: 'empty' },
  { value: 'open', label: 'Open', hint: 'larva in jelly' },
  { value: 'capped', label: 'Capped' },
  { value: 'emerged', label: 'Emerged', hint: 'tip cut round' },
  { value: 'torn-down', label: 'Torn down', hint: 'hole in the side' },
]
/** How surely "none" was looked for. */
export const SEARCHED: Choice[] = [
  unsaid('Not said'),
  ...choices(HOW_SEARCHED, { 'in-haste': 'At a glance', thoroughly: 'Frame by frame' }),
]
/** A box in which nothing lives, as anybody may say it. */
export const LOST: Choice[] = choices(LOST_BOX, { 'no-bees': 'No bees', dead: 'Dead', gone: 'Gone' })
export const NOTE_FOR: Choice[] = [
  unsaid('Just a note'),
  { value: 'look', label: 'Please look at this', hint: 'stands on the beekeeper’s Today' },
]

/** What a signed note decides. */
export const SETTLES: Choice[] = [
  unsaid('Nothing'),
  ...choices(SETTLED, {
    temper: 'It may go as fierce as it is',
    'sprayed-comb-out': 'The sprayed comb is out',
  }),
]
export const STORES: Choice[] = [
  NOT_LOOKED,
  { value: 'low', label: 'Low' },
  { value: 'enough', label: 'Enough' },
  { value: 'heavy', label: 'Heavy' },
]
export const SIGN: Choice[] = [
  { value: 'none', label: 'Looked: none' },
  ...choices(SIGNS, {
    beetles: 'Hive beetles',
    moths: 'Wax moth',
    chalkbrood: 'Chalkbrood',
    'brood-disease-suspected': 'Brood disease suspected',
    robbing: 'Robbing',
    'deformed-wings': 'Deformed wings',
    'mites-seen': 'Mites seen',
    'queenless-roar': 'Queenless roar',
  }),
]
export const TEMPER: Choice[] = [
  unsaid('Not said'),
  { value: '1', label: '1', hint: 'calm' },
  { value: '2', label: '2' },
  { value: '3', label: '3', hint: 'usual' },
  { value: '4', label: '4' },
  { value: '5', label: '5', hint: 'fierce' },
]

export const CAGE: Choice[] = [
  { value: 'released', label: 'Out, accepted' },
  { value: 'still-caged', label: 'Still in the cage' },
  { value: 'rejected', label: 'Rejected', hint: 'balled, bitten at, or gone' },
  { value: 'dead', label: 'Dead' },
]

export const GIFT: Choice[] = choices(GIFTS, {
  'egg-frame': 'Frame of eggs',
  'open-brood': 'Open brood',
  'capped-brood': 'Capped brood',
  'queen-cell': 'Queen cell',
  virgin: 'Virgin queen',
  'mated-queen': 'Mated queen',
  syrup: 'Syrup',
  pollen: 'Pollen',
  treatment: 'Mite treatment',
  combs: 'Empty combs',
  bees: 'Bees',
})

export const SYRUP: Choice[] = [unsaid('Not said'), ...choices(SYRUPS, { '1:1': '1 to 1', '2:1': '2 to 1' })]

const CLEARED_LABELS: Record<(typeof CLEARED_BY)[number], Omit<Choice, 'value'>> = {
  inspector: { label: 'The apiary inspector' },
  laboratory: { label: 'A laboratory', hint: 'a sample was sent in' },
  'own-look': { label: 'Our own later look', hint: 'every brood frame, bees shaken off' },
}
export const CLEARED: Choice[] = CLEARED_BY.map((value) => ({ value, ...CLEARED_LABELS[value] }))

export const OUTCOME: Choice[] = choices(OUTCOMES, {
  'moved-out': 'Moved out',
  united: 'United with another',
  died: 'Died',
  absconded: 'Absconded',
  other: 'Something else',
  unknown: 'Gone, not known how',
})

/**
 * What a colony was lost of, as far as anybody can tell (common practice). Kept in these words, so that an export and an older
 * version read the same; anything else is typed.
 */
const CAUSES = [
  'no queen',
  'laying workers',
  'too few bees',
  'starved',
  'robbed out',
  'mites',
  'brood disease',
  'beetles or moths',
  'heat',
  'cold or wet',
  'poisoned',
  'the removal itself',
] as const
export const CAUSE: Choice[] = [
  unsaid('Not said'),
  ...choices(CAUSES, {
    'no queen': 'No queen',
    'laying workers': 'Laying workers',
    'too few bees': 'Too few bees',
    starved: 'Starved',
    'robbed out': 'Robbed out',
    mites: 'Mites',
    'brood disease': 'Brood disease',
    'beetles or moths': 'Beetles or moths',
    heat: 'Heat',
    'cold or wet': 'Cold or wet',
    poisoned: 'Poisoned',
    'the removal itself': 'The removal itself',
  }),
]

/** Why a box could not be got to. */
export const MISSED: Choice[] = choices(MISSED_REASONS, {
  rain: 'Rain',
  cold: 'Too cold',
  wind: 'Too windy',
  heat: 'Too hot',
  'no-time': 'No time left',
  'no-access': 'No way in',
  'too-fierce': 'Too fierce',
  'not-found': 'Box not found',
  other: 'Something else',
})

/** Quarter frames that can be tapped; others are typed. */
/** Why an entry is taken back: what is tapped is kept as it reads. */
export const WHY_TAKEN_BACK: Choice[] = [
  'It was another box',
  'It was another day',
  'Written down twice',
  'Tapped by mistake',
  'It did not happen',
].map((words) => ({ value: words, label: words }))

export const FRAMES_TAPPED: Choice[] = [
  unsaid('Not counted'),
  { value: '0', label: 'None' },
  { value: '0.25', label: '¼' },
  { value: '0.5', label: '½' },
  { value: '1', label: '1' },
  { value: '2', label: '2' },
  { value: '3', label: '3' },
]

/** Frames covered with bees: more than brood. */
export const BEES_TAPPED: Choice[] = [
  unsaid('Not counted'),
  { value: '1', label: '1' },
  { value: '2', label: '2' },
  { value: '3', label: '3' },
  { value: '4', label: '4' },
  { value: '5', label: '5' },
  { value: '6', label: '6' },
]

/** The label of a value among choices; the value itself when it is not one of them. */
export const labelIn = (choices: readonly Choice[], value: string): string =>
  choices.find((c) => c.value === value)?.label ?? value
