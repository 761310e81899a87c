/**
 * What is answered for on a removal sheet, and by whom: the licensed trade for one hazard each, a second person for one item
 * each, and whoever takes something off that can kill. All say what was known then, and where: they stand only while that is
 * still so.
 */
import * as z from 'zod/mini'
import { day, photoId, text, time } from '../journal/index.ts'
import { DRAWN } from './drawing.ts'
import { several } from './kinds.ts'
import { LETTERS } from './letters.ts'

/** Found things that a licensed trade has to clear, each by itself. */
export const TRADE_HAZARDS = [
  'electric',
  'electric-in-cut',
  'gas',
  'flue',
  'asbestos',
  'lead-paint',
  'weak-structure',
  /** Live wires, a meter or a pole beside bees, ladder or whatever is held up. */
  'near-wires',
] as const
export type TradeHazard = (typeof TRADE_HAZARDS)[number]

/** Who clears a hazard. `supplier`: of power or gas, who owns the line; `locator`: whoever finds and marks lines. */
export const TRADES = [
  'electrician',
  'gas-fitter',
  'supplier',
  'locator',
  'heating',
  'surveyor',
  'builder',
] as const
export type Trade = (typeof TRADES)[number]

const PLACE = {
  address: z.optional(text(300)),
  where: z.optional(text(LETTERS['site.where'])),
  /** What is cut, and what kind of place it is (wall, roof, …). */
  surface: z.optional(text(LETTERS['site.surface'])),
  type: z.optional(text(40)),
}
/** One wall of one house, as the sheet said then: nothing that was seen or said of it moves to another. */
export const place = z.strictObject(PLACE)
export type Place = z.infer<typeof place>

/** A place, and the day on which somebody looked or asked there. */
export const lookedPlace = z.strictObject({ ...PLACE, on: z.optional(day) })

/** A moment, UTC, ISO. */
const instant = text(30)

/** What a trade's paper says: that it is dead, shut or carries, or that there is none; the others clear nothing. */
export const PAPER_SAYS = ['clear', 'found', 'not-yet'] as const

/** One hazard cleared by the trade that is licensed for it. */
export const clearance = z.strictObject({
  hazard: z.enum(TRADE_HAZARDS),
  /** Absent in clearances from before it was asked: they clear nothing. */
  as: z.optional(z.enum(TRADES)),
  who: text(120),
  /** Number of the licence, the ticket or the report. */
  licence: z.optional(text(120)),
  on: day,
  photo: z.optional(photoId),
  /** As it was tapped. Absent in clearances from before it was asked: of a survey, that was asked as `ofHere`. */
  says: z.optional(z.enum(PAPER_SAYS)),
  ofHere: z.optional(z.literal(true)),
  /** Every hazard known when it was given: one that is found later opens it again. */
  knew: several(TRADE_HAZARDS),
  /** When it was written down: a hazard that is taken off and comes back is cleared anew. */
  writtenAt: z.optional(instant),
  ...PLACE,
})

/** What a second person says of an item. */
export const SECOND_WHYS = ['stays', 'seen'] as const

/** A second person answers, by name, for one item that is unmet. */
export const secondName = z.strictObject({
  item: text(40),
  by: text(120),
  /** They have an account in the yard, and typed its passphrase: only a server says so. */
  account: z.optional(z.literal(true)),
  /** Without an account: their own telephone, under which they can be asked afterwards. */
  phone: z.optional(text(60)),
  why: z.optional(z.enum(SECOND_WHYS)),
  reason: z.optional(text(500)),
  /** The name as it was drawn, by whoever has no account. */
  path: z.optional(
    z.string().check(z.maxLength(60_000), z.regex(DRAWN, 'must be path data made of M and L')),
  ),
  on: day,
  at: z.optional(time),
  /** What was unmet, in the words it was shown in: it is not signed for anything else. */
  of: text(600),
  ...PLACE,
})

/** What can kill, and is not taken off a sheet without a word. */
export const GRAVE = [
  ...TRADE_HAZARDS,
  'droppings',
  'insulation',
  'water',
  'allergic',
  'children',
  'fierce',
  /** Somebody goes up. */
  'climb',
  /** It is opened, and no swarm that hangs free. */
  'nest',
  /** Of before 1980 in somebody's words, and tapped as built after it. */
  'old',
] as const
export type Grave = (typeof GRAVE)[number]
export const WHY_GONE = ['mistake', 'removed', 'left', 'elsewhere'] as const

/** Who, and when in the yard's time. */
export const moment = z.strictObject({ by: text(120), on: day, at: time })

const LINE = { ...moment.shape, writtenAt: instant }
export const noted = z.union([
  /** It came onto the sheet, or went off it; or it was only written, and the words went. */
  z.strictObject({
    what: z.enum(GRAVE),
    is: z.enum(['found', 'gone', 'written']),
    /** What was written. */
    words: z.optional(text(300)),
    why: z.optional(z.enum(WHY_GONE)),
    ...LINE,
  }),
  /** Words that went before anybody had read them; an address or a telephone that it had when something stood on it. */
  z.strictObject({
    what: z.enum(['note', 'house']),
    is: z.literal('was'),
    words: text(LETTERS['job.told']),
    ...LINE,
  }),
])

/**
 * Why it was begun, or gone on with, although no “go” stood. Said by the server: `sent-later`, of a “go” that it did not see on the
 * day, and `unsaid`, of bees that came after the “go” fell.
 */
export const WITHOUT_GO = ['said-aloud', 'could-not-wait', 'open-already', 'sent-later', 'unsaid'] as const

export const withoutGo = z.strictObject({
  why: z.enum(WITHOUT_GO),
  words: z.optional(text(300)),
  by: text(120),
  on: day,
  at: time,
  /** What was unmet then, in words. */
  unmet: z.array(text(300)).check(z.maxLength(40)),
  /** What was said, in words, where something came to light later, or it was gone on with: who and when stand in `unmet`. */
  more: z.optional(z.array(text(300)).check(z.maxLength(40))),
})

export type Clearance = z.infer<typeof clearance>
export type SecondName = z.infer<typeof secondName>
export type NotedLine = z.infer<typeof noted>
export type Noted = Exclude<NotedLine, { is: 'was' }>
export type WithoutGo = z.infer<typeof withoutGo>
