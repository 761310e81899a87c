/**
 * The fields of each entry kind as forms show them: one list per kind, read both ways (typed text to entry, entry to
 * typed text), on the server and in the phone alike. A field's name in a form is its path in the entry.
 */
import type { EntryKind } from '../journal/index.ts'
import type { Quantity } from '../words/index.ts'

export interface FieldSpec {
  /** Dotted path in the entry. */
  path: string
  as: 'text' | 'choice' | 'yes-no' | 'list' | 'number' | 'whole'
  /** As it stands beside the field and at the start of a problem's sentence. */
  label: string
  /** For numbers: what is stored, in SI. Typed in the yard's units. */
  quantity?: Quantity
  /** For numbers: limits in what is stored. */
  min?: number
  max?: number
  /** A second field, typed by hand, that wins over the tapped one. */
  orTyped?: true
}

const text = (path: string, label: string): FieldSpec => ({ path, as: 'text', label })
const choice = (path: string, label: string): FieldSpec => ({ path, as: 'choice', label })
const yesNo = (path: string, label: string): FieldSpec => ({ path, as: 'yes-no', label })
const frames = (path: string, label: string): FieldSpec => ({
  path,
  as: 'number',
  label,
  min: 0,
  max: 60,
  orTyped: true,
})
const weight = (path: string, label: string): FieldSpec => ({
  path,
  as: 'number',
  label,
  quantity: 'weight',
  min: 0,
  max: 20,
})
const NOTE = text('note', 'Note')
/** Names of photos already kept; the files themselves come in a field of their own. */
const PHOTOS: FieldSpec = { path: 'photos', as: 'list', label: 'Photos' }
const TEMPER: FieldSpec = { path: 'temper', as: 'whole', label: 'Temper', min: 1, max: 5 }

/** Fields that every form of an entry has beside its own. */
export const COMMON: FieldSpec[] = [text('on', 'Day'), text('at', 'Time')]

export const FIELDS: Record<EntryKind, FieldSpec[]> = {
  intake: [
    { ...text('removal.type', 'Kind of removal'), orTyped: true },
    text('removal.removedOn', 'Day of the removal'),
    {
      path: 'removal.outdoorC',
      as: 'number',
      label: 'Outdoor temperature',
      quantity: 'temperature',
      min: -30,
      max: 60,
    },
    {
      path: 'removal.hoursOpenToBoxed',
      as: 'number',
      label: 'Hours from opening to boxed',
      min: 0,
      max: 240,
    },
    choice('removal.method', 'How the bees came off'),
    choice('removal.sprayed', 'Sprayed'),
    text('removal.site', 'Where from'),
    text('yard', 'Yard'),
    text('stand', 'Stand'),
    choice('queen', 'The queen'),
    frames('brood.eggs', 'Frames with eggs'),
    frames('brood.open', 'Frames with open brood'),
    frames('brood.capped', 'Frames with capped brood'),
    choice('broodCare', 'How the brood travelled'),
    choice('queenCells', 'Queen cells at the removal'),
    frames('bees.frames', 'Frames covered with bees'),
    weight('bees.kg', 'Weight of bees'),
    weight('deadBeesKg', 'Dead bees in the box'),
    yesNo('tiedComb', 'Comb tied in with bands'),
    TEMPER,
    NOTE,
    PHOTOS,
  ],
  inspection: [
    yesNo('opened', 'Lid'),
    choice('eggs', 'Eggs'),
    choice('open', 'Open brood'),
    choice('capped', 'Capped brood'),
    yesNo('onFreshComb', 'Where the brood is'),
    choice('queen', 'The queen'),
    choice('cells', 'Queen cells'),
    { path: 'cellCount', as: 'whole', label: 'How many cells', min: 0, max: 200 },
    frames('framesOfBees', 'Frames covered with bees'),
    frames('framesOfBrood', 'Frames with brood'),
    choice('stores', 'Stores'),
    { path: 'signs', as: 'list', label: 'Signs of trouble' },
    TEMPER,
    NOTE,
    PHOTOS,
  ],
  given: [
    choice('what', 'What was given'),
    text('donor', 'From colony'),
    frames('frames', 'How many frames'),
    yesNo('caged', 'If a queen: in a cage?'),
    { path: 'litres', as: 'number', label: 'Syrup', quantity: 'volume', min: 0, max: 100 },
    choice('syrup', 'Sugar to water, by weight'),
    { path: 'kg', as: 'number', label: 'Feed by weight', quantity: 'weight', min: 0, max: 50 },
    text('product', 'Product'),
    text('batch', 'Batch'),
    { path: 'withdrawalDays', as: 'whole', label: 'Withdrawal, days', min: 0, max: 365 },
    { path: 'cost', as: 'number', label: 'Cost', min: 0, max: 100_000 },
    NOTE,
  ],
  'queen-cage': [choice('found', 'The queen’s cage'), NOTE],
  'ties-removed': [NOTE],
  'mite-wash': [
    { path: 'bees', as: 'whole', label: 'Bees in the sample', min: 1, max: 5000 },
    { path: 'mites', as: 'whole', label: 'Mites counted', min: 0, max: 5000 },
    NOTE,
  ],
  'disease-cleared': [
    choice('clearedBy', 'Who found it clear'),
    text('reference', 'Report or sample number'),
    NOTE,
  ],
  move: [text('yard', 'Yard'), text('stand', 'Stand'), NOTE],
  outcome: [
    choice('what', 'What became of it'),
    text('into', 'United into'),
    text('cause', 'Cause'),
    text('destination', 'Where to'),
    NOTE,
  ],
  note: [text('text', 'Note'), PHOTOS],
  'missed-visit': [choice('reason', 'Why not'), text('again', 'Try again on'), NOTE],
  withdrawal: [text('reason', 'Reason')],
}

/** Name of the box that says that the yard typed is meant to be a new one. */
export const NEW_YARD = 'newYard'

/** Name of the hand-typed twin of a field with `orTyped`. */
export const typedTwin = (name: string): string => `${name}+`

/** Whether entries of that kind may have photos. */
export const hasPhotos = (kind: EntryKind): boolean => FIELDS[kind].includes(PHOTOS)
