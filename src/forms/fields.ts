/**
 * The fields of each entry kind, each said once: drawn in forms, read from what was typed and filled again from an
 * entry, on the server and in the phone alike.
 */
import type { Entry, EntryKind } from '../journal/index.ts'
import { removalTypes, type Words, wordsIn } from '../words/index.ts'
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

/** The fields of every kind, and those that several forms ask, in the words of a language. */
function formsIn(w: Words) {
  const { choices: c, fields: f } = w
  const NOTE = lines(f.note)
  /** Names of photos already kept; the files themselves come in a field of their own. */
  const PHOTOS: FieldSpec = { as: 'photos', label: f.photos.label }
  const YARD = text(f.yard, { maxlength: 80, required: true })
  const STAND = text(f.stand, { maxlength: 20 })
  /** Fields that every form of an entry has beside its own. */
  const COMMON = {
    on: day(f.common.on, { past: true, required: true }),
    at: time(f.common.at, { now: true }),
  } satisfies FieldSpecs
  /** How the bees were taken, asked alike where the removal is written up and where the intake is logged. */
  const TAKEN = {
    outdoorC: number(f.taken.outdoorC, { quantity: 'temperature', min: -30, max: 60 }),
    method: choice(f.taken.method, c.METHOD, 3),
    queen: choice(f.taken.queen, c.QUEEN, 2),
  } satisfies FieldSpecs
  /** What came along in the box, asked alike in both places. */
  const ALONG = {
    'brood.eggs': frames(f.along['brood.eggs'], c.FRAMES_TAPPED),
    'brood.open': frames(f.along['brood.open'], c.FRAMES_TAPPED),
    'brood.capped': frames(f.along['brood.capped'], c.FRAMES_TAPPED),
    broodCare: choice(f.along.broodCare, c.BROOD_CARE, 3),
    queenCells: choice(f.along.queenCells, c.CELLS_AT_REMOVAL, 4),
    'bees.frames': frames(f.along['bees.frames'], c.BEES_TAPPED),
    'bees.kg': number(f.along['bees.kg'], { quantity: 'weight', max: 20 }),
    deadBeesKg: number(f.along.deadBeesKg, { quantity: 'weight', max: 20 }),
    tiedComb: yesNo(f.along.tiedComb, c.TIED, 3),
    temper: score(f.along.temper, c.TEMPER, 3, { min: 1, max: 5 }),
  } satisfies FieldSpecs
  const FIELDS = {
    intake: {
      'removal.type': choice(f.intake['removal.type'], removalTypes([], w.choiceWords), 3, {
        other: { inputmode: 'text', maxlength: 40 },
      }),
      'removal.removedOn': day(f.intake['removal.removedOn'], { past: true }),
      'removal.outdoorC': TAKEN.outdoorC,
      'removal.hoursOpenToBoxed': number(f.intake['removal.hoursOpenToBoxed'], { max: 240 }),
      'removal.method': TAKEN.method,
      'removal.sprayed': choice(f.intake['removal.sprayed'], c.SPRAYED, 3, { standing: 'unknown' }),
      'removal.site': text(f.intake['removal.site'], { maxlength: 300, wide: true }),
      yard: YARD,
      stand: STAND,
      queen: TAKEN.queen,
      queenVirgin: yesNo(f.intake.queenVirgin, c.VIRGIN, 3),
      queenMarked: yesNo(f.intake.queenMarked, c.MARKED, 3),
      queenClipped: yesNo(f.intake.queenClipped, c.CLIPPED, 3),
      ...ALONG,
      broodState: choice(f.intake.broodState, c.BROOD_STATE, 4),
      note: lines(f.intake.note),
      photos: PHOTOS,
    },
    inspection: {
      opened: yesNo(f.inspection.opened, c.LID, 2),
      eggs: choice(f.inspection.eggs, c.EGGS, 4),
      open: choice(f.inspection.open, c.OPEN_BROOD, 4),
      capped: choice(f.inspection.capped, c.CAPPED_BROOD, 4),
      onFreshComb: yesNo(f.inspection.onFreshComb, c.FRESH_COMB, 3),
      queen: choice(f.inspection.queen, c.QUEEN_SEEN, 3),
      cells: choice(f.inspection.cells, c.CELLS, 4),
      cellCount: whole(f.inspection.cellCount, { max: 200, maxlength: 4 }),
      searched: choice(f.inspection.searched, c.SEARCHED, 3),
      framesOfBees: frames(f.inspection.framesOfBees, c.BEES_TAPPED),
      framesOfBrood: frames(f.inspection.framesOfBrood, c.FRAMES_TAPPED),
      lost: choice(f.inspection.lost, [{ value: '', label: f.inspection.beesInIt }, ...c.LOST], 4),
      stores: choice(f.inspection.stores, c.STORES, 4),
      signs: list(f.inspection.signs, c.SIGN, 3),
      temper: ALONG.temper,
      note: NOTE,
      photos: PHOTOS,
    },
    given: {
      what: choice(f.given.what, c.GIFT, 3),
      donor: text(f.given.donor, { maxlength: 60 }),
      frames: number(f.given.frames, { max: 60 }),
      caged: yesNo(
        f.given.caged,
        [
          { value: '', label: f.given.noQueen },
          { value: 'yes', label: f.given.isCaged },
          { value: 'no', label: f.given.notCaged },
        ],
        3,
      ),
      litres: number(f.given.litres, { quantity: 'volume', max: 100 }),
      syrup: choice(f.given.syrup, c.SYRUP, 3),
      kg: number(f.given.kg, { quantity: 'weight', max: 50 }),
      product: text(f.given.product, { maxlength: 120, wide: true }),
      batch: text(f.given.batch, { maxlength: 60 }),
      withdrawalDays: whole(f.given.withdrawalDays, { max: 365, maxlength: 3 }),
      cost: number(f.given.cost, { max: 100_000, maxlength: 10 }),
      note: NOTE,
    },
    'queen-cage': { found: choice(f.cage, c.CAGE, 2), note: NOTE },
    'ties-removed': { note: NOTE },
    'mite-wash': {
      bees: whole(f.wash.bees, { min: 1, max: 5000 }),
      mites: whole(f.wash.mites, { max: 5000 }),
      note: NOTE,
      photos: PHOTOS,
    },
    'disease-cleared': {
      clearedBy: choice(f.cleared.clearedBy, c.CLEARED, 2),
      reference: text(f.cleared.reference, { maxlength: 120, wide: true }),
      note: lines(f.cleared.note),
      photos: PHOTOS,
    },
    move: {
      yard: YARD,
      stand: STAND,
      distanceKm: number(f.distanceKm, { quantity: 'distance', max: 20_000 }),
      note: NOTE,
    },
    outcome: {
      what: choice(f.outcome.what, c.OUTCOME, 2),
      into: text(f.outcome.into, { maxlength: 60 }),
      cause: choice(f.outcome.cause, c.CAUSE, 3, { other: { inputmode: 'text', maxlength: 200 } }),
      destination: text(f.outcome.destination, { maxlength: 200, wide: true }),
      note: NOTE,
    },
    note: {
      text: lines(f.text, { rows: 5 }),
      asks: choice(f.asks, c.NOTE_FOR, 2),
      settles: choice(f.settles, c.SETTLES, 3),
      photos: PHOTOS,
    },
    'missed-visit': {
      reason: choice(f.missed.reason, c.MISSED, 3),
      again: day(f.missed.again),
      note: NOTE,
    },
    withdrawal: {
      reason: choice(f.withdrawal, c.WHY_TAKEN_BACK, 2, { other: { inputmode: 'text', maxlength: 500 } }),
    },
  } satisfies { [K in EntryKind]: { [P in PathOf<Own<K>>]?: FieldSpec } }
  return { COMMON, TAKEN, ALONG, FIELDS }
}

type Forms = ReturnType<typeof formsIn>

/** In English, which is also what is read: names and limits are the same in every language. */
const ENGLISH = formsIn(wordsIn('en'))
export const { COMMON, TAKEN, ALONG, FIELDS } = ENGLISH

const byLanguage = new WeakMap<Words, Forms>([[wordsIn('en'), ENGLISH]])

/** The same fields in the words of a page; fields that only English pages have stay as they are. */
export function fieldsSaid<S extends FieldSpecs>(of: S, w: Words): S {
  const known = byLanguage.get(w) ?? formsIn(w)
  byLanguage.set(w, known)
  return (PLACES.get(of)?.(known) ?? of) as S
}

const PLACES = new Map<FieldSpecs, (forms: Forms) => FieldSpecs>([
  [COMMON, (forms) => forms.COMMON],
  [TAKEN, (forms) => forms.TAKEN],
  [ALONG, (forms) => forms.ALONG],
  ...Object.entries(FIELDS).map(([kind, of]): [FieldSpecs, (forms: Forms) => FieldSpecs] => [
    of,
    (forms) => forms.FIELDS[kind as EntryKind],
  ]),
])

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
type Unasked<K extends EntryKind> = Exclude<PathOf<Own<K>>, keyof Forms['FIELDS'][K]>

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
