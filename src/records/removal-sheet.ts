/**
 * The removal sheet: one job from the phone call to the truck. Private: it names a customer. SI units (°C, m, mm, kg).
 * Every part may be empty; what is missing is said by `beforeCut`, not by the schema.
 */

import { z } from 'zod'
import { METHODS, QUEEN_AT_INTAKE } from '../journal/index.ts'
import { DRAWN } from './drawing.ts'
import { day, money, photos, several, text, time } from './kinds.ts'
import { clearance, moment, noted, place, secondName, withoutGo } from './said-by-others.ts'

const yesNo = z.enum(['yes', 'no', 'unknown'])
const frames = z
  .number()
  .min(0, 'must not be negative')
  .max(60, 'must be at most 60 frames')
  .multipleOf(0.25, 'must be in quarter frames (0.25, 0.5, …)')
const temper = z.int().min(1, 'must be 1 (calm) to 5 (fierce)').max(5, 'must be 1 (calm) to 5 (fierce)')
const celsius = z.number().min(-30).max(60)
/** A length of the nest, of what covers it, or of a cut. */
const millimetres = z.number().min(0, 'must not be negative')

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
/** What hangs or flies there, as far as the caller can tell. */
const CALLED_ABOUT = ['swarm', 'nest', 'unsure', 'wasps'] as const
export const SINCE = ['today', 'days', 'weeks', 'months', 'years'] as const
export const CALLERS = ['owner', 'tenant', 'neither'] as const
/** What is left to do at the hole beside shutting the entrance and taking out the comb. */
export const CLOSED_UP = ['void', 'smell', 'stragglers'] as const
/** How the box travelled. */
export const ON_THE_WAY = ['gentle', 'vent', 'strapped', 'shut'] as const
/** Why a customer calls again. */
export const CALL_BACKS = [
  'bees-back',
  'stragglers',
  'honey',
  'smell',
  'new-swarm',
  'damage',
  'other',
] as const

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
  bees: z.enum(CALLED_ABOUT).optional(),
  since: z.enum(SINCE).optional(),
  caller: z.enum(CALLERS).optional(),
  /** Sent by the caller or taken on the first look. */
  photos,
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
  /** Not known is an answer: they are met as fierce ones. */
  temper: z.union([temper, z.literal('unknown')]).optional(),
  africanized: yesNo.optional(),
  /** For which place it was looked and asked: at another one it is not looked yet. */
  lookedAt: z
    .strictObject({
      behind: place.optional(),
      hazards: place.optional(),
      old: place.optional(),
      bystanders: place.optional(),
    })
    .optional(),
  /** What can kill, as it came onto the sheet and went off it. */
  noted: z.array(noted).max(80).optional(),
  /** The nest as heat, scope or the opening showed it. */
  nestHighMm: millimetres.max(10_000).optional(),
  nestWideMm: millimetres.max(10_000).optional(),
  nestDeepMm: millimetres.max(5_000).optional(),
  /** Where they fly in, and how far that is from the nest. */
  entrance: text(200).optional(),
  entranceM: z.number().min(0).max(100).optional(),
  /** Others they use: each has to be shut. */
  otherEntrances: text(300).optional(),
  photos,
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
  /** SHA-256, in hex, of the secret part of the address at which the signer finds the text. */
  copy: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .optional(),
})

export const agreement = z.strictObject({
  pricing: z.enum(['hourly', 'fixed']).optional(),
  hourly: money.optional(),
  hours: z.number().min(0, 'must not be negative').max(1000).optional(),
  fixed: money.optional(),
  /** What is agreed for this job beside the template. */
  extra: text(2000).optional(),
  /** Days in which the yard comes back without charge when bees return to the same place. */
  warrantyDays: z.int().min(0, 'must not be negative').max(3650).optional(),
  deposit: money.optional(),
  depositOn: day.optional(),
  paid: money.optional(),
  paidOn: day.optional(),
  invoice: text(60).optional(),
  signature: signature.optional(),
})

const forecastHour = z.strictObject({ at: time, c: celsius })

/** Looked at before the cut. */
export const check = z.strictObject({
  /** The day the forecast is for, and its hours. */
  on: day.optional(),
  hours: z.array(forecastHour).max(24).optional(),
  /** The hottest hour of the planned work, where no hours are typed. */
  hottestC: celsius.optional(),
  from: time.optional(),
  until: time.optional(),
  cutMm: z.number().min(0, 'must not be negative').max(500).optional(),
  vacuum: z.enum(VACUUMS).optional(),
  /** Ticked items of `ITEMS` (before-cut.ts), and the day they were so: they are no good on another. */
  done: z.array(text(40)).max(40).optional(),
  doneOn: day.optional(),
  doneAt: place.optional(),
  /** One line for all hazards together, as sheets had it once. Shown, and clears nothing any more. */
  clearedBy: text(300).optional(),
  clearances: z.array(clearance).max(40).optional(),
  seconds: z.array(secondName).max(40).optional(),
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
  /** Something was changed since that it does not stand over: it is decided anew. */
  fell: moment.optional(),
  /** The place it was decided for, as the sheet said then. */
  ...place.shape,
})

/** What was done and found. Fields that an intake has too are called the same. */
export const work = z.strictObject({
  on: day.optional(),
  arrivedAt: time.optional(),
  openedAt: time.optional(),
  boxedAt: time.optional(),
  leftAt: time.optional(),
  withoutGo: withoutGo.optional(),
  /** A “go” stood when it was begun, and what is asked then was met. */
  underGo: moment.optional(),
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
  closedUp: several(CLOSED_UP).optional(),
  /** Water and shade for people were there when work started. */
  water: z.boolean().optional(),
  onTheWay: several(ON_THE_WAY).optional(),
  /** Hours from the box being shut to its place in the yard. */
  boxHours: z.number().min(0).max(96).optional(),
  boxC: celsius.optional(),
  /** Of the place, closed up. */
  photos,
  /** What is left to the owner. */
  left: text(500).optional(),
  /** Of the bees; goes into the colony's journal, which everybody in the yard reads. */
  note: text(1500).optional(),
})

/** The job ended without bees in a box. */
const ended = z.strictObject({ on: day, why: text(500) })

/** The customer called again after the job: bees that return, honey that runs. */
export const callBack = z.strictObject({
  on: day,
  what: z.enum(CALL_BACKS),
  note: text(500).optional(),
  by: text(120),
  /** The day it was seen to. */
  doneOn: day.optional(),
})

export const sheet = z.strictObject({
  job,
  site,
  agreement,
  check,
  decision: decision.optional(),
  work,
  ended: ended.optional(),
  callBacks: z.array(callBack).max(50).optional(),
})

export type Job = z.infer<typeof job>
export type Site = z.infer<typeof site>
export type Agreement = z.infer<typeof agreement>
export type Signature = z.infer<typeof signature>
export type ForecastHour = z.infer<typeof forecastHour>
export type Check = z.infer<typeof check>
export type Decision = z.infer<typeof decision>
export type Work = z.infer<typeof work>
export type CallBack = z.infer<typeof callBack>
export type Sheet = z.infer<typeof sheet>

export const EMPTY_SHEET: Sheet = { job: {}, site: {}, agreement: {}, check: {}, work: {} }

/** What it is called in lists: the customer, else the place, else the telephone. */
export const sheetName = (s: Sheet): string =>
  s.job.name ?? s.job.address ?? s.job.phone ?? s.site.where ?? 'Unnamed job'

/** Names of all photos on a sheet. */
export const photosOfSheet = (s: Sheet): string[] => [
  ...(s.job.photos ?? []),
  ...(s.site.photos ?? []),
  ...(s.work.photos ?? []),
  ...(s.check.clearances ?? []).flatMap((c) => (c.photo === undefined ? [] : [c.photo])),
]
