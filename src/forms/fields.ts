/**
 * The fields of each entry kind, each said once: drawn in forms, read from what was typed and filled again from an
 * entry, on the server and in the phone alike.
 */
import type { Entry, EntryKind } from '../journal/index.ts'
import {
  BEES_TAPPED,
  BROOD_CARE,
  BROOD_STATE,
  CAGE,
  CAPPED_BROOD,
  CAUSE,
  CELLS,
  CELLS_AT_REMOVAL,
  CLEARED,
  CLIPPED,
  EGGS,
  FRAMES_TAPPED,
  FRESH_COMB,
  GIFT,
  LID,
  LOST,
  MARKED,
  METHOD,
  MISSED,
  NOTE_FOR,
  OPEN_BROOD,
  OUTCOME,
  QUEEN,
  QUEEN_SEEN,
  removalTypes,
  SEARCHED,
  SETTLES,
  SIGN,
  SPRAYED,
  STORES,
  SYRUP,
  TEMPER,
  TIED,
  VIRGIN,
  WHY_TAKEN_BACK,
} from '../words/index.ts'
import {
  choice,
  day,
  type FieldSpec,
  type FieldSpecs,
  frames,
  lines,
  list,
  number,
  score,
  text,
  time,
  whole,
  yesNo,
} from './spec.ts'

const NOTE = lines('Note')
/** Names of photos already kept; the files themselves come in a field of their own. */
const PHOTOS: FieldSpec = { as: 'photos', label: 'Photos' }
const YARD = text('Yard', { maxlength: 80, required: true })
const STAND = text('Stand', { maxlength: 20 })

/** Fields that every form of an entry has beside its own. */
export const COMMON = {
  on: day('Day', { past: true, required: true }),
  at: time('Time', { now: true }),
} satisfies FieldSpecs

/** How the bees were taken, asked alike where the removal is written up and where the intake is logged. */
export const TAKEN = {
  outdoorC: number('Outdoor temperature', { quantity: 'temperature', min: -30, max: 60 }),
  method: choice('How the bees came off', METHOD, 3),
  queen: choice('The queen', QUEEN, 2),
} satisfies FieldSpecs

/** What came along in the box, asked alike in both places. */
export const ALONG = {
  'brood.eggs': frames('Frames with eggs', FRAMES_TAPPED, { asks: 'With eggs' }),
  'brood.open': frames('Frames with open brood', FRAMES_TAPPED, { asks: 'With open brood' }),
  'brood.capped': frames('Frames with capped brood', FRAMES_TAPPED, { asks: 'With capped brood' }),
  broodCare: choice('How the brood travelled', BROOD_CARE, 3),
  queenCells: choice('Queen cells at the removal', CELLS_AT_REMOVAL, 4),
  'bees.frames': frames('Frames covered with bees', BEES_TAPPED),
  'bees.kg': number('Weight of bees', { asks: 'or their weight', quantity: 'weight', max: 20 }),
  deadBeesKg: number('Dead bees in the box', { quantity: 'weight', max: 20 }),
  tiedComb: yesNo('Comb tied in with bands', TIED, 3),
  temper: score('Temper', TEMPER, 3, { min: 1, max: 5 }),
} satisfies FieldSpecs

export const FIELDS = {
  intake: {
    'removal.type': choice('Kind of removal', removalTypes(), 3, {
      other: { label: 'or type', inputmode: 'text', maxlength: 40 },
    }),
    'removal.removedOn': day('Day of the removal', {
      asks: 'Day of the removal, if earlier',
      hint: 'Her last day on this comb. Everything is counted from it.',
      past: true,
    }),
    'removal.outdoorC': TAKEN.outdoorC,
    'removal.hoursOpenToBoxed': number('Hours from opening to boxed', {
      asks: 'From opening to boxed',
      unit: 'hours',
      max: 240,
    }),
    'removal.method': TAKEN.method,
    'removal.sprayed': choice('Sprayed', SPRAYED, 3, {
      asks: 'Was the colony sprayed?',
      hint: 'Sprayed: keep no comb and no honey, and feed none of it.',
      standing: 'unknown',
    }),
    'removal.site': text('Where from', {
      asks: 'Address or customer',
      hint: 'Private: stays out of lists and exports.',
      maxlength: 300,
      wide: true,
    }),
    yard: YARD,
    stand: STAND,
    queen: TAKEN.queen,
    queenVirgin: yesNo('Had she laid', VIRGIN, 3, { asks: 'If she was seen: had she laid?' }),
    queenMarked: yesNo('Marked', MARKED, 3, { asks: 'A colour on her back?' }),
    queenClipped: yesNo('Clipped', CLIPPED, 3, { asks: 'Her wings?' }),
    ...ALONG,
    broodState: choice('The brood that came along', BROOD_STATE, 4),
    note: { ...NOTE, hint: 'Everybody in the yard reads it: nothing about the customer.' },
    photos: PHOTOS,
  },
  inspection: {
    opened: yesNo('Lid', LID, 2, { asks: 'The lid' }),
    eggs: choice('Eggs', EGGS, 4),
    open: choice('Open brood', OPEN_BROOD, 4),
    capped: choice('Capped brood', CAPPED_BROOD, 4),
    onFreshComb: yesNo('Where the brood is', FRESH_COMB, 3, { asks: 'Where is that brood?' }),
    queen: choice('The queen', QUEEN_SEEN, 3),
    cells: choice('Queen cells', CELLS, 4),
    cellCount: whole('How many cells', { max: 200, maxlength: 4 }),
    searched: choice('How thoroughly', SEARCHED, 3, { asks: 'How thoroughly did you look?' }),
    framesOfBees: frames('Frames covered with bees', BEES_TAPPED),
    framesOfBrood: frames('Frames with brood', FRAMES_TAPPED),
    lost: choice('Nothing lives in it', [{ value: '', label: 'Bees in it' }, ...LOST], 4),
    stores: choice('Stores', STORES, 4),
    signs: list('Signs of trouble', SIGN, 3, { hint: 'Tap all you saw.' }),
    temper: ALONG.temper,
    note: NOTE,
    photos: PHOTOS,
  },
  given: {
    what: choice('What was given', GIFT, 3),
    donor: text('From colony', { maxlength: 60 }),
    frames: number('How many frames', { max: 60 }),
    caged: yesNo(
      'If a queen: in a cage?',
      [
        { value: '', label: 'No queen' },
        { value: 'yes', label: 'Caged' },
        { value: 'no', label: 'Not caged' },
      ],
      3,
      {
        hint: 'Never introduce a bought queen while a virgin or any queen cell is in the box: look first.',
      },
    ),
    litres: number('Syrup', { quantity: 'volume', max: 100 }),
    syrup: choice('Sugar to water, by weight', SYRUP, 3),
    kg: number('Feed by weight', { hint: 'Sugar, fondant, patty.', quantity: 'weight', max: 50 }),
    product: text('Product', {
      hint: 'Mite treatment: respirator and gloves; the label is the law. Wash again 10 to 14 days after.',
      maxlength: 120,
      wide: true,
    }),
    batch: text('Batch', { asks: 'Batch, on its pack', maxlength: 60 }),
    withdrawalDays: whole('Withdrawal, days', {
      asks: 'Withdrawal',
      hint: 'Days in which nothing is harvested for eating, by its label.',
      unit: 'days',
      max: 365,
      maxlength: 3,
    }),
    cost: number('Cost', { max: 100_000, maxlength: 10 }),
    note: NOTE,
  },
  'queen-cage': { found: choice('The queen’s cage', CAGE, 2), note: NOTE },
  'ties-removed': { note: NOTE },
  'mite-wash': {
    bees: whole('Bees in the sample', { min: 1, max: 5000 }),
    mites: whole('Mites counted', { max: 5000 }),
    note: NOTE,
    photos: PHOTOS,
  },
  'disease-cleared': {
    clearedBy: choice('Who found it clear', CLEARED, 2),
    reference: text('Report or sample number', {
      hint: 'So that it can be shown later.',
      maxlength: 120,
      wide: true,
    }),
    note: { ...NOTE, hint: 'What was looked at, and how.' },
    photos: PHOTOS,
  },
  move: {
    yard: YARD,
    stand: STAND,
    distanceKm: number('How far, as the bee flies', { quantity: 'distance', max: 20_000 }),
    note: NOTE,
  },
  outcome: {
    what: choice('What became of it', OUTCOME, 2),
    into: text('United into', { hint: 'Tag of the colony that took it in.', maxlength: 60 }),
    cause: choice('Cause', CAUSE, 3, {
      asks: 'If it was lost: of what, do you think?',
      other: { label: 'or type', inputmode: 'text', maxlength: 200 },
    }),
    destination: text('Where to', { hint: 'Yard, or who took it.', maxlength: 200, wide: true }),
    note: NOTE,
  },
  note: {
    text: lines('Note', { rows: 5 }),
    asks: choice('For whom', NOTE_FOR, 2, { asks: 'Who should see it?' }),
    settles: choice('It decides', SETTLES, 3, { asks: 'What it decides' }),
    photos: PHOTOS,
  },
  'missed-visit': {
    reason: choice('Why not', MISSED, 3),
    again: day('Try again on', { hint: 'Empty: the day after.' }),
    note: NOTE,
  },
  withdrawal: {
    reason: choice('Reason', WHY_TAKEN_BACK, 2, {
      hint: 'The entry stays in the journal, struck out, with your name and this reason.',
      other: { label: 'or type why', inputmode: 'text', maxlength: 500 },
    }),
  },
} satisfies { [K in EntryKind]: { [P in PathOf<Own<K>>]?: FieldSpec } }

type Own<K extends EntryKind> = Omit<
  Extract<Entry, { kind: K }>,
  'id' | 'colony' | 'kind' | 'on' | 'at' | 'by' | 'replaces'
>
type Inner<T> = T extends string | readonly unknown[]
  ? never
  : T extends object
    ? `.${keyof T & string}`
    : never
/** The dotted paths of an entry's own fields. */
type PathOf<T> = {
  [P in keyof T & string]-?: [Inner<NonNullable<T[P]>>] extends [never]
    ? P
    : `${P}${Inner<NonNullable<T[P]>>}`
}[keyof T & string]
type Unasked<K extends EntryKind> = Exclude<PathOf<Own<K>>, keyof (typeof FIELDS)[K]>

/**
 * What an entry can say that no form asks, and until when a correction keeps it: `day`, while the day stays the same. A
 * field of the schema that is neither here nor above does not compile.
 */
const UNASKED: {
  [K in EntryKind as [Unasked<K>] extends [never] ? never : K]: Record<Unasked<K>, 'always' | 'day'>
} = {
  intake: { hoursOpenToBoxed: 'always' },
  outcome: { dayUnknown: 'day' },
}

/** What a correction, dated `on`, takes over from the entry it corrects, because its form cannot show it. */
export function unasked(entry: Entry, on: unknown): Record<string, unknown> {
  const kept: Partial<Record<EntryKind, Record<string, string>>> = UNASKED
  return Object.fromEntries(
    Object.entries(entry).filter(([name]) => {
      const until = kept[entry.kind]?.[name]
      return until === 'always' || (until === 'day' && on === entry.on)
    }),
  )
}

/** The fields of a kind that is only known when it runs. */
export const fieldsOf = (kind: EntryKind): FieldSpecs => FIELDS[kind]

/** Name of the box that says that the yard typed is meant to be a new one. */
export const NEW_YARD = 'newYard'

/** Whether entries of that kind may have photos. */
export const hasPhotos = (kind: EntryKind): boolean => 'photos' in FIELDS[kind]
