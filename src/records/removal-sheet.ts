/**
 * The removal sheet: one job from the phone call to the truck. Private: it names a customer. SI units (°C, m, mm, kg).
 * Every part may be empty; what is missing is said by `beforeCut`, not by the schema.
 */

import * as z from 'zod/mini'
import {
  beesBoxed,
  broodComb,
  day,
  METHODS,
  photos as photoIds,
  QUEEN_AT_INTAKE,
  temper,
  text,
  time,
} from '../journal/index.ts'
import { DRAWN } from './drawing.ts'
import { money, several } from './kinds.ts'
import { LETTERS } from './letters.ts'
import { clearance, lookedPlace, moment, noted, place, secondName, withoutGo } from './said-by-others.ts'

const photos = z.optional(photoIds)
const yesNo = z.enum(['yes', 'no', 'unknown'])
const celsius = z.number().check(z.minimum(-30), z.maximum(60))
/** A length of the nest, of what covers it, or of a cut. */
const millimetres = z.number().check(z.minimum(0, 'must not be negative'))

export const FOUND_BY = ['flight', 'heat-camera', 'scope', 'listening', 'opened'] as const
export const ACCESS = ['ground', 'step-ladder', 'ladder', 'roof', 'lift'] as const
/** Lists: an empty one says that somebody looked and found none, one left out that nobody has said. */
/** electric: somewhere behind it; electric-in-cut: somebody has said that they are in the way of the cut. */
export const BEHIND = ['electric', 'electric-in-cut', 'gas', 'water', 'flue', 'insulation'] as const
export const HAZARDS = ['asbestos', 'lead-paint', 'weak-structure', 'droppings'] as const
export const BYSTANDERS = ['children', 'animals', 'neighbours', 'passers-by', 'allergic'] as const
export const VACUUMS = ['none', 'bee-vacuum', 'shop-vacuum'] as const
export const WIRES = ['none', 'near', 'unknown'] as const
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
  name: z.optional(text(120)),
  phone: z.optional(text(60)),
  email: z.optional(text(200)),
  address: z.optional(text(300)),
  /** Gate codes, parking, the dog. */
  wayIn: z.optional(text(LETTERS['job.wayIn'])),
  calledOn: z.optional(day),
  /** What they see, and since when. */
  told: z.optional(text(LETTERS['job.told'])),
  plannedOn: z.optional(day),
  plannedAt: z.optional(time),
  bees: z.optional(z.enum(CALLED_ABOUT)),
  since: z.optional(z.enum(SINCE)),
  caller: z.optional(z.enum(CALLERS)),
  /** Sent by the caller or taken on the first look. */
  photos,
})

/** Where the bees are and what stands between. */
export const site = z.strictObject({
  /** A removal type, as intakes have it. */
  type: z.optional(text(40)),
  where: z.optional(text(LETTERS['site.where'])),
  foundBy: z.optional(several(FOUND_BY)),
  foundNote: z.optional(text(LETTERS['site.foundNote'])),
  access: z.optional(z.enum(ACCESS)),
  heightM: z.optional(z.number().check(z.minimum(0), z.maximum(100))),
  /** What is cut: siding, plaster, boards. */
  surface: z.optional(text(LETTERS['site.surface'])),
  sheathingMm: z.optional(z.number().check(z.minimum(0, 'must not be negative'), z.maximum(500))),
  behind: z.optional(several(BEHIND)),
  hazards: z.optional(several(HAZARDS)),
  /** Built before 1980, when asbestos and lead paint were still common. */
  old: z.optional(yesNo),
  /** Somebody saw wires, a meter or a pole near bees or ladder: it does not go off by another look. */
  nearWires: z.optional(z.literal(true)),
  /** How it is known that an old building has neither asbestos nor lead where it is opened. */
  oldHow: z.optional(z.enum(['tested', 'untouched'])),
  /** How it is known that nothing runs behind it. */
  behindHow: z.optional(z.enum(['detector', 'traced', 'owner'])),
  behindNote: z.optional(text(LETTERS['site.behindNote'])),
  sprayed: z.optional(yesNo),
  sprayedNote: z.optional(text(LETTERS['site.sprayedNote'])),
  bystanders: z.optional(several(BYSTANDERS)),
  bystandersNote: z.optional(text(LETTERS['site.bystandersNote'])),
  /** Not known is an answer: they are met as fierce ones. */
  temper: z.optional(z.union([temper, z.literal('unknown')])),
  africanized: z.optional(yesNo),
  /** For which place it was looked and asked: at another one it is not looked yet. */
  lookedAt: z.optional(
    z.strictObject({
      behind: z.optional(lookedPlace),
      hazards: z.optional(lookedPlace),
      old: z.optional(lookedPlace),
      bystanders: z.optional(lookedPlace),
    }),
  ),
  /** What can kill, as it came onto the sheet and went off it. */
  noted: z.optional(z.array(noted).check(z.maxLength(80))),
  /** The nest as heat, scope or the opening showed it. */
  nestHighMm: z.optional(millimetres.check(z.maximum(10_000))),
  nestWideMm: z.optional(millimetres.check(z.maximum(10_000))),
  nestDeepMm: z.optional(millimetres.check(z.maximum(5_000))),
  /** Where they fly in, and how far that is from the nest. */
  entrance: z.optional(text(LETTERS['site.entrance'])),
  entranceM: z.optional(z.number().check(z.minimum(0), z.maximum(100))),
  /** Others they use: each has to be shut. */
  otherEntrances: z.optional(text(LETTERS['site.otherEntrances'])),
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
  path: z.optional(
    z.string().check(z.maxLength(60_000), z.regex(DRAWN, 'must be path data made of M and L')),
  ),
  /** SHA-256, in hex, of the secret part of the address at which the signer finds the text. */
  copy: z.optional(z.string().check(z.regex(/^[0-9a-f]{64}$/, 'must be a SHA-256 in hex'))),
})

export const agreement = z.strictObject({
  pricing: z.optional(z.enum(['hourly', 'fixed'])),
  hourly: z.optional(money),
  hours: z.optional(z.number().check(z.minimum(0, 'must not be negative'), z.maximum(1000))),
  fixed: z.optional(money),
  /** What is agreed for this job beside the template. */
  extra: z.optional(text(2000)),
  /** Days in which the yard comes back without charge when bees return to the same place. */
  warrantyDays: z.optional(z.int().check(z.minimum(0, 'must not be negative'), z.maximum(3650))),
  deposit: z.optional(money),
  depositOn: z.optional(day),
  paid: z.optional(money),
  paidOn: z.optional(day),
  invoice: z.optional(text(60)),
  signature: z.optional(signature),
})

const forecastHour = z.strictObject({ at: time, c: celsius })

/** Looked at before the cut. */
export const check = z.strictObject({
  /** The day the forecast is for, and its hours. */
  on: z.optional(day),
  hours: z.optional(z.array(forecastHour).check(z.maxLength(24))),
  /** The hottest hour of the planned work, where no hours are typed. */
  hottestC: z.optional(celsius),
  from: z.optional(time),
  until: z.optional(time),
  cutMm: z.optional(z.number().check(z.minimum(0, 'must not be negative'), z.maximum(500))),
  vacuum: z.optional(z.enum(VACUUMS)),
  /** Ticked items of `ITEMS` (before-cut.ts), and the day they were so: they are no good on another. Some name another sheet. */
  done: z.optional(z.array(text(80)).check(z.maxLength(200))),
  doneOn: z.optional(day),
  doneAt: z.optional(place),
  /** The hour at which they were tapped. */
  tickedAt: z.optional(time),
  /** Wires, meter or pole near bees or ladder, as it was tapped on that day. */
  wires: z.optional(z.enum(WIRES)),
  /** One line for all hazards together, as sheets had it once. Shown, and clears nothing any more. */
  clearedBy: z.optional(text(300)),
  clearances: z.optional(z.array(clearance).check(z.maxLength(40))),
  seconds: z.optional(z.array(secondName).check(z.maxLength(40))),
})

export const decision = z.strictObject({
  is: z.enum(DECISIONS),
  /** Who decided, on the day, at the wall. */
  by: text(120),
  on: day,
  at: z.optional(time),
  reason: z.optional(text(1000)),
  /** What was unmet when it was decided, in words. */
  unmet: z.array(text(300)).check(z.maxLength(40)),
  /** Something was changed since that it does not stand over, or the book went back to a backup: it is decided anew. */
  fell: z.optional(
    z.extend(moment, {
      setBack: z.optional(z.literal(true)),
      /** It came in with a file, the yard's day is another one, a phone's clock was wrong, or whoever decided does so no more. */
      because: z.optional(z.enum(['import', 'time-zone', 'clock', 'account'])),
    }),
  ),
  /** Somebody else had refused, or had it wait for a reason: said for as long as anything is decided over it. */
  over: z.optional(
    z.strictObject({
      by: text(120),
      on: day,
      at: z.optional(time),
      reason: z.optional(text(1000)),
      wait: z.optional(z.literal(true)),
    }),
  ),
  /** Decided on a phone without signal: when it had last heard of the job, and what stands for what it had not heard. */
  heard: z.optional(
    z.strictObject({
      /** UTC, ISO. */
      of: text(30),
      /** Who read the list aloud, when, and whether anything was new on it. */
      by: z.optional(text(120)),
      at: z.optional(time),
      news: z.optional(z.enum(['none', 'tapped'])),
      /** Nobody did: whoever decided looked at all of it again. */
      looked: z.optional(z.literal(true)),
    }),
  ),
  /** The place it was decided for, as the sheet said then. */
  ...place.shape,
})

const VISIT = {
  on: z.optional(day),
  arrivedAt: z.optional(time),
  openedAt: z.optional(time),
  leftAt: z.optional(time),
  /** A “go” stood when it was begun, and what is asked then was met. */
  underGo: z.optional(moment),
  outdoorC: z.optional(celsius),
  /** Clothing, smoker, water and shade were there when work started. */
  water: z.optional(z.boolean()),
}
/** One time at which somebody was there: how hot it was, what stood ready, when it was opened or gone on with, and when they left. */
const visit = z.strictObject(VISIT)

/** What was done and found. Fields that an intake has too are called the same. Day, hours and heat are of the last visit. */
export const work = z.strictObject({
  ...VISIT,
  /** Visits before that one, at which it was opened and not boxed. */
  earlier: z.optional(z.array(visit).check(z.maxLength(60))),
  /** Which words stood on the sheet when the last visit began, each as a fingerprint. */
  knew: z.optional(z.array(text(20)).check(z.maxLength(300))),
  boxedAt: z.optional(time),
  withoutGo: z.optional(withoutGo),
  method: z.optional(z.enum(METHODS)),
  queen: z.optional(z.enum(QUEEN_AT_INTAKE)),
  queenFoundAt: z.optional(time),
  brood: z.optional(broodComb),
  broodCare: z.optional(z.enum(['closed-chest', 'open-air'])),
  queenCells: z.optional(z.enum(['none', 'open', 'capped'])),
  bees: z.optional(beesBoxed),
  deadBeesKg: z.optional(z.number().check(z.minimum(0), z.maximum(20))),
  tiedComb: z.optional(z.boolean()),
  temper: z.optional(temper),
  sealed: z.optional(z.enum(SEALED)),
  cleaned: z.optional(z.enum(CLEANED)),
  closedUp: z.optional(several(CLOSED_UP)),
  onTheWay: z.optional(several(ON_THE_WAY)),
  /** Hours from the box being shut to its place in the yard. */
  boxHours: z.optional(z.number().check(z.minimum(0), z.maximum(96))),
  boxC: z.optional(celsius),
  /** Of the place, closed up. */
  photos,
  /** What is left to the owner. */
  left: z.optional(text(500)),
  /** Of the bees; goes into the colony's journal, which everybody in the yard reads. */
  note: z.optional(text(1500)),
})

/** The job ended without bees in a box. */
const ended = z.strictObject({ on: day, why: text(500) })

/** The customer called again after the job: bees that return, honey that runs. */
export const callBack = z.strictObject({
  on: day,
  what: z.enum(CALL_BACKS),
  note: z.optional(text(500)),
  /** Something was opened for it: that has a sheet of its own. Absent where it was not asked yet. */
  opened: z.optional(z.boolean()),
  by: text(120),
  /** The day it was seen to. */
  doneOn: z.optional(day),
})

export const sheet = z.strictObject({
  job,
  site,
  agreement,
  check,
  decision: z.optional(decision),
  work,
  ended: z.optional(ended),
  callBacks: z.optional(z.array(callBack).check(z.maxLength(50))),
  /** Colonies beside the first that came of it, where a phone logged them: the sheet brings what links them. */
  boxes: z.optional(z.array(text(40)).check(z.maxLength(40))),
})

export type Job = z.infer<typeof job>
export type Site = z.infer<typeof site>
export type Agreement = z.infer<typeof agreement>
export type Signature = z.infer<typeof signature>
export type ForecastHour = z.infer<typeof forecastHour>
export type Check = z.infer<typeof check>
export type Decision = z.infer<typeof decision>
export type Work = z.infer<typeof work>
export type Visit = z.infer<typeof visit>
export type CallBack = z.infer<typeof callBack>
export type Sheet = z.infer<typeof sheet>

/** Who saves the version that takes the force from what came in with a file. A newer file replaces it. */
export const BROUGHT_IN = 'Coming in with a file'

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
