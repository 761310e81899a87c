/**
 * The schema of every entry in the journal. Public format: the README documents it; change it only by adding.
 *
 * An entry says what somebody saw or did on a day. SI units (°C, kg, litres); comb in frames, to the quarter.
 * A field left out of an inspection means "not looked at" and proves nothing.
 */
import * as z from 'zod/mini'
import { day, photos as photoIds, text, time } from './answers.ts'

const note = z.optional(text(2000))
const frames = z
  .number()
  .check(
    z.minimum(0, 'must not be negative'),
    z.maximum(60, 'must be at most 60 frames'),
    z.multipleOf(0.25, 'must be in quarter frames (0.25, 0.5, …)'),
  )
/** 1 calm to 5 fierce. */
export const temper = z
  .int()
  .check(z.minimum(1, 'must be 1 (calm) to 5 (fierce)'), z.maximum(5, 'must be 1 (calm) to 5 (fierce)'))
/** Brood comb that comes along, in frames. */
export const broodComb = z.strictObject({
  eggs: z.optional(frames),
  open: z.optional(frames),
  capped: z.optional(frames),
})
/** Bees in the box: frames they cover, or their weight. */
export const beesBoxed = z
  .strictObject({
    frames: z.optional(frames),
    kg: z.optional(z.number().check(z.minimum(0), z.maximum(20))),
  })
  .check(z.refine((b) => b.frames !== undefined || b.kg !== undefined, 'needs frames or kg'))
const hours = z
  .number()
  .check(z.minimum(0, 'must not be negative'), z.maximum(240, 'must be at most 240 hours'))
const cost = z.optional(z.number().check(z.minimum(0, 'must not be negative'), z.maximum(100_000)))
/** The tag painted on the box. */
export const tag = text(40).check(
  z.regex(/^[^\s/\\?#%<>"'`]+( [^\s/\\?#%<>"'`]+)*$/, 'must be letters, digits, dashes and single spaces'),
)
const yard = text(80)
const stand = text(20)

export const REMOVAL_TYPES = [
  'wall',
  'floor',
  'roof',
  'tree',
  'ground',
  'utility-box',
  'equipment',
  'container',
  'swarm',
  'trap-out',
  'abandoned-hive',
] as const
export const METHODS = ['vacuum', 'brushed', 'walked-in', 'trap', 'hived'] as const
/** `unknown`: nobody wrote of her, as in an old book; the plan takes it as unseen. */
export const QUEEN_AT_INTAKE = ['caged', 'loose', 'unseen', 'lost', 'unknown'] as const
/** What had become of the brood by the time it was boxed. Chilled or dead brood can become no queen. */
export const BROOD_STATES = ['alive', 'chilled', 'dead'] as const
/** Anybody may say that the box is lost; a beekeeper records how it left. */
export const LOST_BOX = ['no-bees', 'dead', 'gone'] as const
/** How surely "none" was looked for: in passing, or frame by frame. Left out: nobody said. */
export const SEARCHED = ['in-haste', 'thoroughly'] as const
/** Whom a note is for: `look`, whoever looks after the box is asked to look at it. */
const NOTE_ASKS = ['look'] as const
/** What a signed note decides, so that it no longer keeps a colony here. */
export const SETTLES = ['temper', 'sprayed-comb-out'] as const
export const SIGNS = [
  'beetles',
  'moths',
  'chalkbrood',
  'brood-disease-suspected',
  'robbing',
  'deformed-wings',
  'mites-seen',
  'queenless-roar',
] as const
export const GIFTS = [
  'egg-frame',
  'open-brood',
  'capped-brood',
  'queen-cell',
  'virgin',
  'mated-queen',
  'syrup',
  'pollen',
  'treatment',
  'combs',
  'bees',
] as const
/** Who found that a suspected brood disease is not there, or no longer. */
export const CLEARED_BY = ['inspector', 'laboratory', 'own-look'] as const
/** Sugar to water, by weight. */
export const SYRUPS = ['1:1', '2:1'] as const
/** `unknown`: it is gone, and nobody knows how. */
export const OUTCOMES = ['moved-out', 'united', 'died', 'absconded', 'other', 'unknown'] as const

/** Why a box on the round was not reached. */
export const MISSED_REASONS = [
  'rain',
  'cold',
  'wind',
  'heat',
  'no-time',
  'no-access',
  'too-fierce',
  'not-found',
  'other',
] as const

const photos = z.optional(photoIds.check(z.minLength(1)))

/** What every entry carries. `colony` is the tag or id; `replaces` makes it a correction of that entry. */
const base = {
  id: z.uuid(),
  colony: text(60),
  on: day,
  at: z.optional(time),
  by: text(60),
  replaces: z.optional(z.uuid()),
}

export const intake = z.strictObject({
  ...base,
  kind: z.literal('intake'),
  removal: z.strictObject({
    type: text(40),
    /** Day of the removal; the day of intake when left out. */
    removedOn: z.optional(day),
    outdoorC: z.optional(z.number().check(z.minimum(-30), z.maximum(60))),
    hoursOpenToBoxed: z.optional(hours),
    method: z.optional(z.enum(METHODS)),
    sprayed: z.optional(z.enum(['yes', 'no', 'unknown'])),
    /** Where from. Private: never shown to helpers or exported without asking. */
    site: z.optional(text(300)),
  }),
  yard,
  stand: z.optional(stand),
  queen: z.enum(QUEEN_AT_INTAKE),
  /** Brood comb that came along. Left out: unknown. All three 0: none. */
  brood: z.optional(broodComb),
  /** Hours from opening to boxed may stand here as well as in `removal`; read both through `hoursOpenToBoxed`. */
  hoursOpenToBoxed: z.optional(hours),
  /** Of a queen caged or loose: a virgin, as a cast swarm brings. Left out: taken for one that lays. */
  queenVirgin: z.optional(z.boolean()),
  /** A coloured mark on her, or a clipped wing: she is known again, and cannot be a new queen. */
  queenMarked: z.optional(z.boolean()),
  queenClipped: z.optional(z.boolean()),
  broodState: z.optional(z.enum(BROOD_STATES)),
  broodCare: z.optional(z.enum(['closed-chest', 'open-air'])),
  queenCells: z.optional(z.enum(['none', 'open', 'capped'])),
  bees: z.optional(beesBoxed),
  deadBeesKg: z.optional(z.number().check(z.minimum(0), z.maximum(20))),
  tiedComb: z.optional(z.boolean()),
  temper: z.optional(temper),
  note,
  photos,
})

const inspection = z.strictObject({
  ...base,
  kind: z.literal('inspection'),
  /** true: lid off, frames out. false: an outside look, the lid stayed on. */
  opened: z.boolean(),
  eggs: z.optional(z.enum(['none', 'single', 'multiple'])),
  open: z.optional(z.enum(['none', 'some', 'plenty'])),
  capped: z.optional(z.enum(['none', 'worker', 'drone-in-worker'])),
  /** The brood seen is on comb drawn since intake, so nobody but this colony's layer can have laid it. */
  onFreshComb: z.optional(z.boolean()),
  queen: z.optional(z.enum(['seen', 'unseen'])),
  cells: z.optional(z.enum(['none', 'cups', 'open', 'capped', 'emerged', 'torn-down'])),
  cellCount: z.optional(z.int().check(z.minimum(0), z.maximum(200))),
  framesOfBees: z.optional(frames),
  framesOfBrood: z.optional(frames),
  stores: z.optional(z.enum(['low', 'enough', 'heavy'])),
  /** Looked for and seen; an empty list: looked for, none seen. */
  signs: z.optional(z.array(z.enum(SIGNS)).check(z.maxLength(SIGNS.length))),
  /** No bees in it, all dead, or gone: with the lid on or off. */
  lost: z.optional(z.enum(LOST_BOX)),
  searched: z.optional(z.enum(SEARCHED)),
  temper: z.optional(temper),
  note,
  photos,
})

const given = z.strictObject({
  ...base,
  kind: z.literal('given'),
  what: z.enum(GIFTS),
  donor: z.optional(text(60)),
  frames: z.optional(frames),
  caged: z.optional(z.boolean()),
  litres: z.optional(z.number().check(z.minimum(0), z.maximum(100))),
  /** Of syrup: how strong it was. */
  syrup: z.optional(z.enum(SYRUPS)),
  /** Feed by weight: pollen patties, fondant, dry sugar. */
  kg: z.optional(
    z.number().check(z.minimum(0, 'must not be negative'), z.maximum(50, 'must be at most 50 kg')),
  ),
  product: z.optional(text(120)),
  /** Of a treatment: the number on its pack, and the days after it in which nothing is harvested for eating, by its label. */
  batch: z.optional(text(60)),
  withdrawalDays: z.optional(z.int().check(z.minimum(0), z.maximum(365))),
  cost,
  note,
})

const queenCage = z.strictObject({
  ...base,
  kind: z.literal('queen-cage'),
  found: z.enum(['released', 'still-caged', 'rejected', 'dead']),
  note,
})

const tiesRemoved = z.strictObject({ ...base, kind: z.literal('ties-removed'), note })

export const miteWash = z.strictObject({
  ...base,
  kind: z.literal('mite-wash'),
  bees: z.int().check(z.minimum(1, 'must be at least 1 bee'), z.maximum(5000)),
  mites: z.int().check(z.minimum(0), z.maximum(5000)),
  note,
  photos,
})

/**
 * A suspected brood disease is cleared: by the apiary inspector, by a laboratory, or by an own look some time later. A
 * clean look alone does not say so: somebody has to, and sign it.
 */
const diseaseCleared = z.strictObject({
  ...base,
  kind: z.literal('disease-cleared'),
  clearedBy: z.enum(CLEARED_BY),
  /** Number of the report or of the sample. */
  reference: z.optional(text(120)),
  note,
  photos,
})

const move = z.strictObject({
  ...base,
  kind: z.literal('move'),
  yard,
  stand: z.optional(stand),
  /** From the old stand to the new one, as the bee flies. */
  distanceKm: z.optional(z.number().check(z.minimum(0, 'must not be negative'), z.maximum(20_000))),
  note,
})

export const outcome = z.strictObject({
  ...base,
  kind: z.literal('outcome'),
  what: z.enum(OUTCOMES),
  /** Of an old book: nobody wrote down on which day. `on` is then the day of intake, or of its last entry, and stands for none. */
  dayUnknown: z.optional(z.literal(true)),
  /** The colony it was united into. */
  into: z.optional(text(60)),
  cause: z.optional(text(200)),
  destination: z.optional(text(200)),
  note,
})

const noteEntry = z.strictObject({
  ...base,
  kind: z.literal('note'),
  text: text(2000),
  settles: z.optional(z.enum(SETTLES)),
  asks: z.optional(z.enum(NOTE_ASKS)),
  photos,
})

/** On the round, but nobody got to it. Not a visit: it answers nothing and proves nothing, and no window waits for it. */
const missedVisit = z.strictObject({
  ...base,
  kind: z.literal('missed-visit'),
  reason: z.enum(MISSED_REASONS),
  /** The day on which it is to be tried again; the day after when left out. */
  again: z.optional(day),
  note,
})

/** Takes an entry back. What it withdraws stays in the journal, struck out. */
const withdrawal = z.strictObject({
  ...base,
  kind: z.literal('withdrawal'),
  replaces: z.uuid(),
  reason: text(500),
})

export const entry = z.discriminatedUnion('kind', [
  intake,
  inspection,
  given,
  queenCage,
  tiesRemoved,
  miteWash,
  diseaseCleared,
  move,
  outcome,
  noteEntry,
  missedVisit,
  withdrawal,
])

export type Intake = z.infer<typeof intake>
export type Inspection = z.infer<typeof inspection>
export type Given = z.infer<typeof given>
export type QueenCage = z.infer<typeof queenCage>
export type MiteWash = z.infer<typeof miteWash>
export type DiseaseCleared = z.infer<typeof diseaseCleared>
export type Move = z.infer<typeof move>
export type Outcome = z.infer<typeof outcome>
export type Note = z.infer<typeof noteEntry>
export type MissedVisit = z.infer<typeof missedVisit>
export type Withdrawal = z.infer<typeof withdrawal>
export type Entry = z.infer<typeof entry>
/** Hours from opening the cavity to the bees being boxed, wherever it was written. */
export const hoursOpenToBoxed = (e: Intake): number | undefined =>
  e.removal.hoursOpenToBoxed ?? e.hoursOpenToBoxed

/** The queen at intake as a plan takes her: one that nobody wrote of may be in the box or not, as one not seen. */
export const queenTaken = ({ queen }: Pick<Intake, 'queen'>): Exclude<Intake['queen'], 'unknown'> =>
  queen === 'unknown' ? 'unseen' : queen

export type EntryKind = Entry['kind']
export type Gift = Given['what']
export type MissedReason = MissedVisit['reason']
/** The schema of each kind, in the order of the format. */
export const KIND_SCHEMAS = entry.def.options
export const ENTRY_KINDS = KIND_SCHEMAS.flatMap((o) => o.shape.kind.def.values)
