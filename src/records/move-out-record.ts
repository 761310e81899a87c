/**
 * The move-out record: who took a colony over, where it went, and which permits were noted. Private, and beside the
 * outcome in the journal, which everybody in the yard reads. Every field may be empty: local rules say what is needed.
 */
import { z } from 'zod'
import { day, text } from './kinds.ts'

/** As many papers as one move has at most. */
export const MOST_PERMITS = 4

/** One paper: a transport permit, a health certificate, a registration. */
const permit = z.strictObject({
  what: text(120),
  number: text(80).optional(),
  issuedBy: text(120).optional(),
  on: day.optional(),
  until: day.optional(),
})

/** As many answers as are kept of one colony. */
export const MOST_FOLLOW_UPS = 20

/** What somebody told of a colony after it moved out. */
const followUp = z.strictObject({
  /** The day for which it was told. */
  on: day,
  found: z.enum(['alive', 'dead']),
  /** Whether it had a laying queen; left out: not told. */
  queenright: z.boolean().optional(),
  /** Of a dead colony: the day from which it was dead, where that is known. */
  deadSince: day.optional(),
  /** Who told: the new keeper at the sheet's address, or who wrote it down. */
  by: text(120),
})

export const moveRecord = z.strictObject({
  /** Private; never in the yard book. */
  buyer: z
    .strictObject({
      name: text(120).optional(),
      phone: text(60).optional(),
      email: text(200).optional(),
      address: text(300).optional(),
    })
    .optional(),
  /** The yard it goes to, as authorities ask for it: stands in the yard book. */
  yard: text(200).optional(),
  /** Number under which that yard is registered. */
  registration: text(80).optional(),
  permits: z.array(permit).max(MOST_PERMITS, `must be at most ${MOST_PERMITS} papers`).optional(),
  price: z.number().min(0, 'must not be negative').max(1_000_000).optional(),
  /** Hive, frames, feeder. */
  wentAlong: text(300).optional(),
  note: text(2000).optional(),
  followUps: z.array(followUp).max(MOST_FOLLOW_UPS, `must be at most ${MOST_FOLLOW_UPS} answers`).optional(),
  /** The new keeper was asked, and has not answered: nobody is asked twice. */
  askedOn: day.optional(),
})

export type MoveRecord = z.infer<typeof moveRecord>
export type FollowUp = z.infer<typeof followUp>
export type Permit = z.infer<typeof permit>

/** 'transport permit 47-B' */
export const permitWords = (p: Permit): string => [p.what, p.number].filter(Boolean).join(' ')
