/** What forms ask of an entry, in English: the label, what is asked where it is more, a hint, what stands after it. */
export interface FieldText {
  label: string
  asks?: string
  hint?: string
  unit?: string
  /** Of the field beside the answers. */
  other?: string
}

const note: FieldText = { label: 'Note' }
const photos: FieldText = { label: 'Photos' }
const yard: FieldText = { label: 'Yard' }
const stand: FieldText = { label: 'Stand' }
const orType = 'or type'

/** How the bees were taken, and what came along in the box. */
const taken = {
  outdoorC: { label: 'Outdoor temperature' } as FieldText,
  method: { label: 'How the bees came off' } as FieldText,
  queen: { label: 'The queen' } as FieldText,
}

const along = {
  'brood.eggs': { label: 'Frames with eggs', asks: 'With eggs', other: orType } as FieldText,
  'brood.open': { label: 'Frames with open brood', asks: 'With open brood', other: orType } as FieldText,
  'brood.capped': {
    label: 'Frames with capped brood',
    asks: 'With capped brood',
    other: orType,
  } as FieldText,
  broodCare: { label: 'How the brood travelled' } as FieldText,
  queenCells: { label: 'Queen cells at the removal' } as FieldText,
  'bees.frames': { label: 'Frames covered with bees', other: orType } as FieldText,
  'bees.kg': { label: 'Weight of bees', asks: 'or their weight' } as FieldText,
  deadBeesKg: { label: 'Dead bees in the box' } as FieldText,
  tiedComb: { label: 'Comb tied in with bands' } as FieldText,
  temper: { label: 'Temper' } as FieldText,
}

export const fields = {
  common: { on: { label: 'Day' } as FieldText, at: { label: 'Time' } as FieldText },
  taken,
  along,
  /** What the day of an entry is called. */
  days: {
    intake: 'Day it came',
    move: 'Day of the move',
    'queen-cage': 'Day',
    inspection: 'Day of the visit',
    'disease-cleared': 'Day it was found clear',
    'mite-wash': 'Day',
    'ties-removed': 'Day',
    given: 'Day',
    note: 'Day',
    'missed-visit': 'Day it was not reached',
    outcome: 'Day it left',
    withdrawal: 'Day',
  },
  intake: {
    'removal.type': { label: 'Kind of removal', other: orType } as FieldText,
    'removal.removedOn': {
      label: 'Day of the removal',
      asks: 'Day of the removal, if earlier',
      hint: 'Her last day on this comb. Everything is counted from it.',
    } as FieldText,
    'removal.hoursOpenToBoxed': {
      label: 'Hours from opening to boxed',
      asks: 'From opening to boxed',
      unit: 'hours',
    } as FieldText,
    'removal.sprayed': {
      label: 'Sprayed',
      asks: 'Was the colony sprayed?',
      hint: 'Sprayed: keep no comb and no honey, and feed none of it.',
    } as FieldText,
    'removal.site': {
      label: 'Where from',
      asks: 'Address or customer',
      hint: 'Private: stays out of lists and exports.',
    } as FieldText,
    queenVirgin: { label: 'Had she laid', asks: 'If she was seen: had she laid?' } as FieldText,
    queenMarked: { label: 'Marked', asks: 'A colour on her back?' } as FieldText,
    queenClipped: { label: 'Clipped', asks: 'Her wings?' } as FieldText,
    broodState: { label: 'The brood that came along' } as FieldText,
    note: { ...note, hint: 'Everybody in the yard reads it: nothing about the customer.' },
  },
  inspection: {
    opened: { label: 'Lid', asks: 'The lid' } as FieldText,
    eggs: { label: 'Eggs' } as FieldText,
    open: { label: 'Open brood' } as FieldText,
    capped: { label: 'Capped brood' } as FieldText,
    onFreshComb: { label: 'Where the brood is', asks: 'Where is that brood?' } as FieldText,
    queen: taken.queen,
    cells: { label: 'Queen cells' } as FieldText,
    cellCount: { label: 'How many cells' } as FieldText,
    searched: { label: 'How thoroughly', asks: 'How thoroughly did you look?' } as FieldText,
    framesOfBees: along['bees.frames'],
    framesOfBrood: { label: 'Frames with brood', other: orType } as FieldText,
    lost: { label: 'Nothing lives in it' } as FieldText,
    beesInIt: 'Bees in it',
    stores: { label: 'Stores' } as FieldText,
    signs: { label: 'Signs of trouble', hint: 'Tap all you saw.' } as FieldText,
  },
  given: {
    what: { label: 'What was given' } as FieldText,
    donor: { label: 'From colony' } as FieldText,
    frames: { label: 'How many frames' } as FieldText,
    caged: {
      label: 'If a queen: in a cage?',
      hint: 'Never introduce a bought queen while a virgin or any queen cell is in the box: look first.',
    } as FieldText,
    noQueen: 'No queen',
    isCaged: 'Caged',
    notCaged: 'Not caged',
    litres: { label: 'Syrup' } as FieldText,
    syrup: { label: 'Sugar to water, by weight' } as FieldText,
    kg: { label: 'Feed by weight', hint: 'Sugar, fondant, patty.' } as FieldText,
    product: {
      label: 'Product',
      hint: 'Mite treatment: respirator and gloves; the label is the law. Wash again 10 to 14 days after.',
    } as FieldText,
    batch: { label: 'Batch', asks: 'Batch, on its pack' } as FieldText,
    withdrawalDays: {
      label: 'Withdrawal, days',
      asks: 'Withdrawal',
      hint: 'Days in which nothing is harvested for eating, by its label.',
      unit: 'days',
    } as FieldText,
    cost: { label: 'Cost' } as FieldText,
  },
  cage: { label: 'The queen’s cage' } as FieldText,
  wash: {
    bees: { label: 'Bees in the sample' } as FieldText,
    mites: { label: 'Mites counted' } as FieldText,
  },
  cleared: {
    clearedBy: { label: 'Who found it clear' } as FieldText,
    reference: { label: 'Report or sample number', hint: 'So that it can be shown later.' } as FieldText,
    note: { ...note, hint: 'What was looked at, and how.' },
  },
  distanceKm: { label: 'How far, as the bee flies' } as FieldText,
  outcome: {
    what: { label: 'What became of it' } as FieldText,
    into: { label: 'United into', hint: 'Tag of the colony that took it in.' } as FieldText,
    cause: {
      label: 'Cause',
      asks: 'If it was lost: of what, do you think?',
      other: 'or type',
    } as FieldText,
    destination: { label: 'Where to', hint: 'Yard, or who took it.' } as FieldText,
  },
  text: note,
  asks: { label: 'For whom', asks: 'Who should see it?' } as FieldText,
  settles: { label: 'It decides', asks: 'What it decides' } as FieldText,
  missed: {
    reason: { label: 'Why not' } as FieldText,
    again: { label: 'Try again on', hint: 'Empty: the day after.' } as FieldText,
  },
  withdrawal: {
    label: 'Reason',
    hint: 'The entry stays in the journal, struck out, with your name and this reason.',
    other: 'or type why',
  } as FieldText,
  note,
  photos,
  yard,
  stand,
}
