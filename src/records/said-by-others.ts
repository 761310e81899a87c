/**
 * What others answer for on a removal sheet: the licensed trade for one hazard each, and a second person for one item each.
 * Both say what was known then: they stand only while that is still what is known.
 */
import * as z from 'zod/mini'
import { photoId } from '../journal/index.ts'
import { day, several, text, time } from './kinds.ts'

/** Found things that a licensed trade has to clear, each by itself. */
export const TRADE_HAZARDS = [
  'electric',
  'electric-in-cut',
  'gas',
  'flue',
  'asbestos',
  'lead-paint',
  'weak-structure',
] as const
export type TradeHazard = (typeof TRADE_HAZARDS)[number]

/** One hazard cleared by the trade that is licensed for it. */
export const clearance = z.strictObject({
  hazard: z.enum(TRADE_HAZARDS),
  who: text(120),
  /** Number of the licence, or the company. */
  licence: text(120),
  on: day,
  photo: z.optional(photoId),
  /** Every hazard known when it was given: one that is found later opens it again. */
  knew: several(TRADE_HAZARDS),
  /** Where it was given for, as the sheet said then: it does not move to another wall or another house. */
  address: z.optional(text(300)),
  where: z.optional(text(300)),
})

/** A second person answers, by name, for one item that is unmet. */
export const secondName = z.strictObject({
  item: text(40),
  by: text(120),
  reason: text(500),
  on: day,
  at: z.optional(time),
  /** What was unmet, in the words it was shown in: it is not signed for anything else. */
  of: text(600),
})

export type Clearance = z.infer<typeof clearance>
export type SecondName = z.infer<typeof secondName>
