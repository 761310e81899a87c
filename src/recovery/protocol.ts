/**
 * The protocol: where operators differ. Every value has a default (common practice unless a source is named) and the
 * yard may set its own. Biology is not here: published constants live in src/biology.
 */
import * as z from 'zod/mini'
import type { Day } from '../days.ts'
import { eachRule, RULES, type Rule } from './rules.ts'

/** Days after the anchor on which a check opens, is due and closes. */
export interface Window {
  opens: number
  due: number
  closes: number
}

const windowSchema = z
  .strictObject({
    opens: z.int().check(z.minimum(0), z.maximum(120)),
    due: z.int().check(z.minimum(0), z.maximum(120)),
    closes: z.int().check(z.minimum(0), z.maximum(120)),
  })
  .check(z.refine((w) => w.opens <= w.due && w.due <= w.closes, 'must have opens <= due <= closes'))

const DEFAULT_WINDOWS: Record<Rule, Window> = eachRule((f) => f.window)

const windows = z.strictObject(
  Object.fromEntries(RULES.map((rule) => [rule, z.optional(windowSchema)])) as Record<
    Rule,
    z.ZodMiniOptional<typeof windowSchema>
  >,
)

export const MONTHS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10', '11', '12'] as const
export type Month = (typeof MONTHS)[number]

/** What a yard may override; anything left out keeps its default. An unknown field is an error. */
export const protocolOverrides = z.strictObject({
  /** Days a colony stays at least. Default 30. */
  holdDays: z.optional(z.int().check(z.minimum(7), z.maximum(120))),
  /** Fewer frames of bees than this: unite or boost, and not ready to move. Default 3 (common practice: 3-5). */
  minFramesOfBees: z.optional(z.number().check(z.minimum(0.5), z.maximum(20))),
  /** Mites per 100 bees from which a colony is not ready. Default 3 (USDA-ARS: 3 per 100 by wash). */
  miteThreshold: z.optional(z.number().check(z.minimum(0.1), z.maximum(20))),
  /**
   * The same by the month of the wash ('1' to '12'), where a yard is stricter or milder in some seasons. A month left out
   * goes by `miteThreshold`. Sources differ: 1-2 in the dormant season, 2-3 while brood is reared.
   */
  miteThresholdByMonth: z.optional(
    z.partialRecord(z.enum(MONTHS), z.number().check(z.minimum(0.1), z.maximum(20))),
  ),
  /**
   * Months ('1' to '12') in which virgins mate where the yard is: warm, calm days, and drones about. A queen that would fly
   * in another month is not raised but bought. Default: none said, so that the calendar rules nothing out.
   */
  matingMonths: z.optional(z.array(z.enum(MONTHS)).check(z.minLength(1), z.maxLength(12))),
  /** A mite wash counts this many days. Default 14. */
  miteWashValidDays: z.optional(z.int().check(z.minimum(1), z.maximum(60))),
  /** A disease look counts this many days. Default 7. */
  diseaseLookValidDays: z.optional(z.int().check(z.minimum(1), z.maximum(60))),
  /** Do not cut out above this outdoor temperature, °C. Default 29.4 (85 °F, common practice). */
  heatLimitC: z.optional(z.number().check(z.minimum(15), z.maximum(45))),
  /** How far a cut may go beyond the sheathing, mm. Default 3.175 (1/8 inch, common practice). */
  cutMarginMm: z.optional(z.number().check(z.minimum(0), z.maximum(25))),
  /**
   * What ends a suspicion of brood disease. Default 'clean-look': a later look without it, for histories from elsewhere.
   * A yard's own book always asks for 'recorded': somebody says who cleared it (entry kind disease-cleared).
   */
  clearance: z.optional(z.enum(['clean-look', 'recorded'])),
  /** A salvaged queen's cage: window after caging. Default +2/+3/+5. */
  salvagedQueenRelease: z.optional(windowSchema),
  windows: z.optional(windows),
})
export type ProtocolOverrides = z.infer<typeof protocolOverrides>

export interface Protocol {
  holdDays: number
  minFramesOfBees: number
  miteThreshold: number
  miteThresholdByMonth: Partial<Record<Month, number>>
  /** Empty: not said. */
  matingMonths: readonly Month[]
  miteWashValidDays: number
  diseaseLookValidDays: number
  heatLimitC: number
  cutMarginMm: number
  clearance: 'clean-look' | 'recorded'
  salvagedQueenRelease: Window
  windows: Record<Rule, Window>
}

export const DEFAULT_PROTOCOL: Protocol = {
  holdDays: 30,
  minFramesOfBees: 3,
  miteThreshold: 3,
  miteThresholdByMonth: {},
  matingMonths: [],
  miteWashValidDays: 14,
  diseaseLookValidDays: 7,
  heatLimitC: 29.4,
  cutMarginMm: 3.175,
  clearance: 'clean-look',
  salvagedQueenRelease: { opens: 2, due: 3, closes: 5 },
  windows: DEFAULT_WINDOWS,
}

/** The defaults with a yard's own values laid over them. */
export function protocolWith(overrides: ProtocolOverrides = {}): Protocol {
  const { windows: own, ...rest } = overrides
  const defined = Object.fromEntries(Object.entries(rest).filter(([, v]) => v !== undefined))
  const holdDays = overrides.holdDays ?? DEFAULT_PROTOCOL.holdDays
  const washes = DEFAULT_WINDOWS['mite-wash']
  return {
    ...DEFAULT_PROTOCOL,
    ...defined,
    windows: {
      ...DEFAULT_WINDOWS,
      // The mite wash closes on the last day of the hold, so it moves with it.
      'mite-wash': { ...washes, closes: Math.max(washes.due, holdDays) },
      ...(Object.fromEntries(Object.entries(own ?? {}).filter(([, v]) => v !== undefined)) as Partial<
        Record<Rule, Window>
      >),
    },
  }
}

/** A yard's own protocol: a suspicion of brood disease holds until its clearance is recorded, whatever else it chose. */
export const yardProtocol = (overrides: ProtocolOverrides = {}): Protocol =>
  protocolWith({ ...overrides, clearance: 'recorded' })

const monthOf = (day: Day): Month => String(Number(day.slice(5, 7))) as Month

/** Whether a virgin that flies about that day can mate, as far as the yard has said. */
export const matesOn = (protocol: Protocol, day: Day): boolean => matesIn(protocol.matingMonths, day)

/** The same of a list of months; an empty one rules nothing out. */
export const matesIn = (months: readonly Month[], day: Day): boolean =>
  months.length === 0 || months.includes(monthOf(day))

/** Mites per 100 bees from which a wash on that day is too many. */
export const miteThresholdOn = (protocol: Protocol, day: Day): number =>
  protocol.miteThresholdByMonth[monthOf(day)] ?? protocol.miteThreshold
