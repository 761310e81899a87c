/** What the HTTP API answers, as zod schemas: the OpenAPI document is made from them, and the tests hold answers to it. */

import { z } from 'zod'
import { entry, KIND_SCHEMAS, OUTCOMES, QUEEN_AT_INTAKE, day as realDay } from '../../journal/index.ts'
import { ROLES } from '../../people/index.ts'
import { SCOPES } from '../../people/node.ts'
import { ACTIONS, PHASES, type Plan, RULES } from '../../recovery/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { type Review, TESTED } from '../review/index.ts'

const day = realDay
const instant = z.iso.datetime()
const text = z.string()
const count = z.int().min(0)

const span = z.object({ earliest: day, likely: day, latest: day })
const range = z.object({ from: day, to: day })

/** Why, as data: a code and the parameters of its sentence. Codes are added to and never change their meaning. */
const said = z.looseObject({ code: text })

const check = z.object({
  rule: z.enum(RULES),
  opens: day,
  due: day,
  closes: day,
  status: z.enum(['waiting', 'open', 'due', 'overdue', 'answered', 'void']),
  answeredOn: z.optional(day),
  why: text,
  reason: said,
  source: text,
})

/** The format of `resettle plan`. */
const plan = z.object({
  tag: text,
  asOf: day,
  day: count,
  phase: z.enum(PHASES),
  checks: z.array(check),
  advice: z.object({
    action: z.enum(ACTIONS),
    why: text,
    reasons: z.array(said).readonly(),
    until: z.optional(day),
    sign: z.enum(['robbing', 'beetles', 'moths', 'deformed-wings']).optional(),
    rule: z.enum(RULES).optional(),
  }),
  quiet: range.nullable(),
  spans: z.object({
    cellsPossibleUntil: z.optional(day),
    emergence: span.optional(),
    firstEgg: span.optional(),
    workerBroodProof: span.optional(),
    layingWorkerRisk: span.optional(),
    broodless: range.optional(),
  }),
  horizon: z.object({ eggs: z.nullable(day), open: z.nullable(day), capped: z.nullable(day) }),
  surprises: z.array(text),
  surprised: z.array(said).readonly(),
  missing: z.array(
    z.object({ check: z.enum(RULES), what: z.enum(['eggs', 'queen cells', 'capped brood']), since: day }),
  ),
  exposed: z
    .object({
      from: text,
      bond: z.enum(['gave', 'got', 'united', 'robbing']),
      on: day,
      how: text,
      deed: said.optional(),
      bonds: z.array(z.object({ on: day, how: text, deed: said.optional() })),
      since: day,
      look: z.object({ opens: day, due: day, closes: day }),
    })
    .nullable(),
  lost: z.object({ on: day, how: z.enum(['no-bees', 'dead', 'gone']), by: text }).nullable(),
  until: z.nullable(day),
  /** The stories of the queen that fit all that was seen, likeliest first. */
  belief: z.array(z.object({ story: z.string(), odds: z.number() })).optional(),
  /** What can be done where the guard rails leave it open, best first. */
  options: z
    .array(z.object({ action: z.string(), inDays: z.int(), keepsQueen: z.number(), value: z.number() }))
    .optional(),
  readiness: z.object({
    ready: z.boolean(),
    unmet: z.array(z.object({ what: text, reason: said, earliest: z.nullable(day) })),
    expected: span.nullable(),
  }),
})

/** Compiles only while the schema takes every plan there is. @public */
export const asPlan = (p: Plan): z.input<typeof plan> => p

export const colony = z.object({
  id: z.uuid(),
  tag: text,
  yard: text,
  stand: text.nullable(),
  removalType: text,
  queenAtIntake: z.enum(QUEEN_AT_INTAKE),
  intakeOn: day,
  removedOn: day,
  phase: z.enum(PHASES),
  outcome: z.enum(OUTCOMES).nullable(),
  closedOn: z.nullable(day),
  /** The day the rest is as of; of a colony that left, the day it left. */
  asOf: day,
  day: count,
  next: z.object({ rule: z.enum(RULES), opens: day, due: day, closes: day }).nullable(),
  action: z.enum(ACTIONS),
  actionWhy: text,
  toDo: z.boolean(),
})

/** One colony as the API answers it. */
export function colonyOf(s: ColonySummary): z.input<typeof colony> {
  const { nextRule, nextOpens, nextDue, nextCloses } = s
  const next =
    nextRule === null || nextOpens === null || nextDue === null || nextCloses === null
      ? null
      : { rule: nextRule, opens: nextOpens, due: nextDue, closes: nextCloses }
  const { id, tag, yard, stand, removalType, intakeOn, removedOn, phase, closedOn, asOf } = s
  return {
    id,
    tag,
    yard,
    stand,
    removalType,
    queenAtIntake: s.queenAtIntake as z.input<typeof colony>['queenAtIntake'],
    intakeOn,
    removedOn,
    phase,
    outcome: s.outcome as z.input<typeof colony>['outcome'],
    closedOn,
    asOf,
    day: s.day,
    next,
    action: s.action,
    actionWhy: s.actionWhy,
    toDo: s.toDo,
  }
}

/** An entry with who recorded it when. `entry.colony` is the colony's id. */
const recorded = z.object({
  seq: z.int().min(1),
  recordedAt: instant,
  recordedBy: text,
  entry,
})

const pageOf = <T extends z.ZodType>(item: T) => z.object({ items: z.array(item), next: text.nullable() })

const colonies = pageOf(colony)
const plans = pageOf(plan)
const journal = pageOf(recorded)

/** What became of entries sent. */
const taken = z.object({ accepted: z.array(z.uuid()), already: z.array(z.uuid()) })

const me = z.object({
  name: text,
  role: z.enum(ROLES),
  scopes: z.array(z.enum(SCOPES)),
  today: day,
  timeZone: text,
})

const limit = z.number().min(0).max(1).nullable()
const share = z.object({ share: z.number().min(0).max(1), lower: limit, upper: limit })
const group = z.object({
  colonies: count,
  lost: count,
  steps: z.array(
    z.object({
      day: count,
      atRisk: count,
      lost: count,
      left: count,
      survival: z.number(),
      lower: limit,
      upper: limit,
    }),
  ),
  at30: z.object({ survival: z.number().nullable(), lower: limit, upper: limit }),
  at60: z.object({ survival: z.number().nullable(), lower: limit, upper: limit }),
  median: z.object({ day: count.nullable(), lower: count.nullable(), upper: count.nullable() }),
  restrictedMean60: z.number().nullable(),
  waysOfLeaving: z.array(
    z.object({ day: count, died: z.number(), absconded: z.number(), united: z.number() }),
  ),
  outcomes: z.array(
    z.object({
      day: count,
      movedOut: share,
      died: share,
      absconded: share,
      united: share,
      other: share,
      unknown: share.optional(),
      stillHere: share,
    }),
  ),
  fates: z.object({
    colonies: count,
    movedOut: count,
    died: count,
    absconded: count,
    united: count,
    other: count,
    stillHere: count,
    unknown: count,
  }),
  withoutDay: count,
})

/** The format of `resettle review --json`. */
const review = z.object({
  asOf: day,
  overall: group,
  byType: z.record(z.string(), group),
  logRank: z.object({ chisq: z.number(), df: count, p: z.number() }).nullable(),
  grayTests: z.array(
    z.object({
      outcome: z.enum(TESTED),
      chisq: z.number().nullable(),
      df: count.nullable(),
      p: z.number().nullable(),
    }),
  ),
})

/** Compiles only while the schema takes every review there is. @public */
export const asReview = (r: Review): z.input<typeof review> => r

const problem = z.object({
  type: text,
  title: text,
  status: z.int(),
  detail: text.optional(),
  errors: z.array(z.object({ entry: z.int().min(1).optional(), field: text, message: text })).optional(),
})

/** What may be sent: as in the journal; `by` is the token's owner where it is left out. */
const entryIn = z.discriminatedUnion('kind', [
  ...KIND_SCHEMAS.map((o) => z.strictObject({ ...o.shape, by: z.optional(o.shape.by) })),
] as unknown as typeof KIND_SCHEMAS)
const entriesIn = z.union([entryIn, z.array(entryIn).min(1).max(500)])

/** Components of the document, by name. */
export const COMPONENTS = {
  Colony: colony,
  Colonies: colonies,
  Plan: plan,
  Plans: plans,
  Entry: entry,
  RecordedEntry: recorded,
  Journal: journal,
  EntryIn: entryIn,
  EntriesIn: entriesIn,
  Taken: taken,
  Me: me,
  Review: review,
  Problem: problem,
} as const satisfies Record<string, z.core.$ZodType>
export type ComponentName = keyof typeof COMPONENTS
