/**
 * The removal sheet: one job from the phone call to the truck. Private: it names a customer. SI units (°C, m, mm, kg).
 * Every part may be empty; what is missing is said by `beforeCut`, not by the schema.
 */

import { z } from 'zod'
import { isDay } from '../days.ts'
import { METHODS, QUEEN_AT_INTAKE } from '../journal/index.ts'
import { DRAWN } from './drawing.ts'

const day = z.string().refine(isDay, 'must be a real date written YYYY-MM-DD')
const time = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'must be a time written HH:MM')
const text = (max: number) =>
  z.string().trim().min(1, 'must not be empty').max(max, `must be at most ${max} characters`)
const yesNo = z.enum(['yes', 'no', 'unknown'])
const frames = z
  .number()
  .min(0, 'must not be negative')
  .max(60, 'must be at most 60 frames')
  .multipleOf(0.25, 'must be in quarter frames (0.25, 0.5, …)')
const temper = z.int().min(1, 'must be 1 (calm) to 5 (fierce)').max(5, 'must be 1 (calm) to 5 (fierce)')
const money = z.number().min(0, 'must not be negative').max(1_000_000)
const celsius = z.number().min(-30).max(60)
const several = <T extends string>(values: readonly T[]) => z.array(z.enum(values)).max(values.length)

export const FOUND_BY = ['flight', 'heat-camera', 'scope', 'listening', 'opened'] as const
export const ACCESS = ['ground', 'step-ladder', 'ladder', 'roof', 'lift'] as const
/** Lists: an empty one says that somebody looked and found none, one left out that nobody has said. */
/** electric: somewhere behind it; electric-in-cut: somebody has said that they are in the way of the cut. */
export const BEHIND = ['electric', 'electric-in-cut', 'gas', 'water', 'flue', 'insulation'] as const
export const HAZARDS = ['asbestos', 'lead-paint', 'weak-structure', 'droppings'] as const
export const BYSTANDERS = ['children', 'animals', 'neighbours', 'passers-by', 'allergic'] as const
export const VACUUMS = ['none', 'bee-vacuum', 'shop-vacuum'] as const
export const DECISIONS = ['go', 'wait', 'refuse'] as const
export const SEALED = ['yes', 'no', 'owner'] as const
export const CLEANED = ['all', 'part', 'none'] as const

/** Who called, and where. */
export const job = z.strictObject({
  name: text(120).optional(),
  phone: text(60).optional(),
  email: text(200).optional(),
  address: text(300).optional(),
  /** Gate codes, parking, the dog. */
  wayIn: text(500).optional(),
  calledOn: day.optional(),
  /** What they see, and since when. */
  told: text(1000).optional(),
  plannedOn: day.optional(),
  plannedAt: time.optional(),
})

/** Where the bees are and what stands between. */
export const site = z.strictObject({
  /** A removal type, as intakes have it. */
  type: text(40).optional(),
  where: text(300).optional(),
  foundBy: several(FOUND_BY).optional(),
  foundNote: text(500).optional(),
  access: z.enum(ACCESS).optional(),
  heightM: z.number().min(0).max(100).optional(),
  /** What is cut: siding, plaster, boards. */
  surface: text(120).optional(),
  sheathingMm: z.number().min(0, 'must not be negative').max(500).optional(),
  behind: several(BEHIND).optional(),
  hazards: several(HAZARDS).optional(),
  /** Built before 1980, when asbestos and lead paint were still common. */
  old: yesNo.optional(),
  behindNote: text(500).optional(),
  sprayed: yesNo.optional(),
  sprayedNote: text(300).optional(),
  bystanders: several(BYSTANDERS).optional(),
  bystandersNote: text(300).optional(),
  temper: temper.optional(),
  africanized: yesNo.optional(),
})

/** What customer and yard agree on, as it was signed. */
export const signature = z.strictObject({
  how: z.enum(['paper', 'drawn']),
  name: text(120),
  on: day,
  /** The whole text that was signed, prices included. */
  terms: text(14_000),
  /** A drawn name as SVG path data on a field of 600 by 200; made by this server from points (drawing.ts). */
  path: z.string().max(60_000).regex(DRAWN, 'must be path data made of M and L').optional(),
})

export const agreement = z.strictObject({
  pricing: z.enum(['hourly', 'fixed']).optional(),
  hourly: money.optional(),
  hours: z.number().min(0, 'must not be negative').max(1000).optional(),
  fixed: money.optional(),
  /** What is agreed for this job beside the template. */
  extra: text(2000).optional(),
  signature: signature.optional(),
})

export const forecastHour = z.strictObject({ at: time, c: celsius })

/** Looked at before the cut. */
export const check = z.strictObject({
  /** The day the forecast is for, and its hours. */
  on: day.optional(),
  hours: z.array(forecastHour).max(24).optional(),
  from: time.optional(),
  until: time.optional(),
  cutMm: z.number().min(0, 'must not be negative').max(500).optional(),
  vacuum: z.enum(VACUUMS).optional(),
  /** Ticked items of `ITEMS` (before-cut.ts). */
  done: z.array(text(40)).max(40).optional(),
  /** Which licensed trade cleared what, and when. */
  clearedBy: text(300).optional(),
})

export const decision = z.strictObject({
  is: z.enum(DECISIONS),
  /** Who decided, on the day, at the wall. */
  by: text(120),
  on: day,
  at: time.optional(),
  reason: text(1000).optional(),
  /** What was unmet when it was decided, in words. */
  unmet: z.array(text(300)).max(40),
})

/** What was done and found. Fields that an intake has too are called the same. */
export const work = z.strictObject({
  on: day.optional(),
  arrivedAt: time.optional(),
  openedAt: time.optional(),
  boxedAt: time.optional(),
  leftAt: time.optional(),
  outdoorC: celsius.optional(),
  method: z.enum(METHODS).optional(),
  queen: z.enum(QUEEN_AT_INTAKE).optional(),
  queenFoundAt: time.optional(),
  brood: z
    .strictObject({ eggs: frames.optional(), open: frames.optional(), capped: frames.optional() })
    .optional(),
  broodCare: z.enum(['closed-chest', 'open-air']).optional(),
  queenCells: z.enum(['none', 'open', 'capped']).optional(),
  bees: z
    .strictObject({ frames: frames.optional(), kg: z.number().min(0).max(20).optional() })
    .refine((b) => b.frames !== undefined || b.kg !== undefined, 'needs frames or kg')
    .optional(),
  deadBeesKg: z.number().min(0).max(20).optional(),
  tiedComb: z.boolean().optional(),
  temper: temper.optional(),
  sealed: z.enum(SEALED).optional(),
  cleaned: z.enum(CLEANED).optional(),
  /** What is left to the owner. */
  left: text(500).optional(),
  /** Of the bees; goes into the colony's journal, which everybody in the yard reads. */
  note: text(1500).optional(),
})

/** The job ended without bees in a box. */
export const ended = z.strictObject({ on: day, why: text(500) })

export const sheet = z.strictObject({
  job,
  site,
  agreement,
  check,
  decision: decision.optional(),
  work,
  ended: ended.optional(),
})

export type Job = z.infer<typeof job>
export type Site = z.infer<typeof site>
export type Agreement = z.infer<typeof agreement>
export type Signature = z.infer<typeof signature>
export type ForecastHour = z.infer<typeof forecastHour>
export type Check = z.infer<typeof check>
export type Decision = z.infer<typeof decision>
export type Work = z.infer<typeof work>
export type Sheet = z.infer<typeof sheet>

export const EMPTY_SHEET: Sheet = { job: {}, site: {}, agreement: {}, check: {}, work: {} }

/** What it is called in lists: the customer, else the place, else the telephone. */
export const sheetName = (s: Sheet): string =>
  s.job.name ?? s.job.address ?? s.job.phone ?? s.site.where ?? 'Unnamed job'
