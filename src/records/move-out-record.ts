/**
 * The move-out record: who took a colony over, where it went, and which permits were noted. Private, and beside the
 * outcome in the journal, which everybody in the yard reads. Every field may be empty: local rules say what is needed.
 */
import * as z from 'zod/mini'
import { day, text } from '../journal/index.ts'
import { money } from './kinds.ts'

/** As many papers as one move has at most. */
export const MOST_PERMITS = 4

/** One paper: a transport permit, a health certificate, a registration. */
const permit = z.strictObject({
  what: text(120),
  number: z.optional(text(80)),
  issuedBy: z.optional(text(120)),
  on: z.optional(day),
  until: z.optional(day),
})

/** As many answers as are kept of one colony. */
export const MOST_FOLLOW_UPS = 20

/** What somebody told of a colony after it moved out. */
const followUp = z.strictObject({
  /** The day for which it was told. */
  on: day,
  found: z.enum(['alive', 'dead']),
  /** Whether it had a laying queen; left out: not told. */
  queenright: z.optional(z.boolean()),
  /** Of a dead colony: the day from which it was dead, where that is known. */
  deadSince: z.optional(day),
  /** Who told: the new keeper at the sheet's address, or who wrote it down. */
  by: text(120),
})

export const moveRecord = z.strictObject({
  /** Private; never in the yard book. */
  buyer: z.optional(
    z.strictObject({
      name: z.optional(text(120)),
      phone: z.optional(text(60)),
      email: z.optional(text(200)),
      address: z.optional(text(300)),
    }),
  ),
  /** The yard it goes to, as authorities ask for it: stands in the yard book. */
  yard: z.optional(text(200)),
  /** Number under which that yard is registered. */
  registration: z.optional(text(80)),
  permits: z.optional(
    z.array(permit).check(z.maxLength(MOST_PERMITS, `must be at most ${MOST_PERMITS} papers`)),
  ),
  price: z.optional(money),
  /** Hive, frames, feeder. */
  wentAlong: z.optional(text(300)),
  note: z.optional(text(2000)),
  followUps: z.optional(
    z.array(followUp).check(z.maxLength(MOST_FOLLOW_UPS, `must be at most ${MOST_FOLLOW_UPS} answers`)),
  ),
  /** The new keeper was asked, and has not answered: nobody is asked twice. */
  askedOn: z.optional(day),
})

export type MoveRecord = z.infer<typeof moveRecord>
export type FollowUp = z.infer<typeof followUp>
export type Permit = z.infer<typeof permit>
