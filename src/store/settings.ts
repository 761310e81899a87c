/**
 * The yard's choices. One line in SETTINGS makes a new one: its schema and the value it has until somebody chooses.
 *
 * Some of them change plans (PLANNED_BY in planner.ts): then the store makes every plan again in the same transaction, or, by
 * `Protocols`, in slices afterwards.
 */

import { eq, sql } from 'drizzle-orm'
import * as z from 'zod/mini'
import { isZone } from '../days.ts'
import { COST_NAMES } from '../decision/index.ts'
import { RATE_NAMES } from '../forecast/index.ts'
import { day, type Problem, problemsOf } from '../journal/index.ts'
import { DEFAULT_TERMS, TERMS_LIMIT } from '../records/index.ts'
import { protocolOverrides } from '../recovery/index.ts'
import type { Connection } from './connection.ts'
import { setting } from './schema.ts'

const timeZone = z.string().check(z.refine(isZone, 'must be a time zone such as "America/Phoenix"'))

const ownRates = z.object({
  values: z.partialRecord(z.enum(RATE_NAMES), z.number().check(z.minimum(0), z.maximum(1))),
  colonies: z.int().check(z.minimum(0)),
  on: day,
})
export type OwnRates = z.infer<typeof ownRates>

/** A change of many entries at once, as it can be taken back. */
const tidied = z.object({
  /** UUIDv7; ids of its entries are made of it. */
  id: z.uuid(),
  what: z.enum(['removalType', 'yard', 'person', 'long-gone']),
  /** Names that were changed, and into which. Of a closing: empty, and the outcome. */
  from: z.array(z.string()),
  to: z.string(),
  entries: z.int().check(z.minimum(0)),
  /** UTC, ISO. */
  at: z.string(),
  by: z.string(),
  /** Stands the yards had that are no longer named. */
  stands: z.optional(z.record(z.string(), z.number())),
  /** UTC, ISO. */
  takenBack: z.optional(z.string()),
})
export type Tidied = z.infer<typeof tidied>
/** In the yard's money; what is not said goes by the default. */
const costs = z.partialRecord(z.enum(COST_NAMES), z.number().check(z.minimum(0), z.maximum(100_000)))

/** What is at hand, and how long a queen takes that is ordered today; what is not said goes by the default. */
const supplies = z.strictObject({
  queensInHand: z.optional(z.int().check(z.minimum(0), z.maximum(500))),
  daysUntilQueens: z.optional(z.int().check(z.minimum(0), z.maximum(60))),
  eggFrames: z.optional(z.int().check(z.minimum(0), z.maximum(500))),
})

const define = <T>(schema: z.ZodMiniType<T>, fallback: T) => ({ schema, fallback })

export const SETTINGS = {
  /** IANA name; decides which day is today. Null: the machine's own. */
  timeZone: define<string | null>(z.nullable(timeZone), null),
  temperature: define<'C' | 'F'>(z.enum(['C', 'F']), 'F'),
  weight: define<'kg' | 'lb'>(z.enum(['kg', 'lb']), 'lb'),
  yardName: define<string>(z.string().check(z.trim(), z.maxLength(80)), ''),
  /** Removal types this yard added to the built-in ones. */
  removalTypes: define<string[]>(
    z.array(z.string().check(z.trim(), z.minLength(1), z.maxLength(40))).check(z.maxLength(100)),
    [],
  ),
  /** Template of the agreement with customers (src/records/agreement.ts). */
  agreementTerms: define<string>(
    z.string().check(z.trim(), z.minLength(1), z.maxLength(TERMS_LIMIT)),
    DEFAULT_TERMS,
  ),
  /** Sign before amounts of money on agreements. */
  currency: define<string>(z.string().check(z.trim(), z.maxLength(5)), '$'),
  /** The apiary inspector to call: name, telephone. Everybody in the yard sees it. */
  inspector: define<string>(z.string().check(z.trim(), z.maxLength(200)), ''),
  /** The yard's own rates for the odds, as learned on that day from so many closed colonies; null: the defaults. */
  ownRates: define<OwnRates | null>(z.nullable(ownRates), null),
  /** How many stands each yard has, by its name; a yard that is not named has said nothing. */
  stands: define<Record<string, number>>(
    z.record(
      z.string().check(z.trim(), z.minLength(1), z.maxLength(80)),
      z.int().check(z.minimum(0), z.maximum(10_000)),
    ),
    {},
  ),
  /** Names merged and colonies closed many at once, the latest last. */
  tidied: define<Tidied[]>(z.array(tidied), []),
  /** When the book was last put back to a backup: UTC, ISO. */
  setBack: define<string | null>(z.nullable(z.iso.datetime('must be a moment in UTC')), null),
  /** What a colony, a queen, a frame, an opening and a day are worth here, where it is not the default. */
  costs: define<z.infer<typeof costs>>(costs, {}),
  supplies: define<z.infer<typeof supplies>>(supplies, {}),
  /** What this yard does otherwise than the default protocol. */
  protocol: define<z.infer<typeof protocolOverrides>>(protocolOverrides, {}),
}

export type SettingKey = keyof typeof SETTINGS
export type SettingValue<K extends SettingKey> = (typeof SETTINGS)[K]['fallback']

export interface Settings {
  /** The value chosen, or the default; a stored value that no longer fits counts as not chosen (verify reports it). */
  get<K extends SettingKey>(key: K): SettingValue<K>
  /** Problems with the value, none when it was stored. */
  set<K extends SettingKey>(key: K, value: SettingValue<K>): Problem[]
}

/** Reads and writes settings; `changed` runs in the transaction of the write. */
export function settingsOf(connection: Connection, changed: (key: SettingKey) => void): Settings {
  const { db } = connection
  const read = db
    .select({ value: setting.value })
    .from(setting)
    .where(eq(setting.key, sql.placeholder('key')))
    .prepare()
  const write = db
    .insert(setting)
    .values({ key: sql.placeholder('key'), value: sql.placeholder('value') })
    .onConflictDoUpdate({ target: setting.key, set: { value: sql`excluded.value` } })
    .prepare()
  return {
    get<K extends SettingKey>(key: K): SettingValue<K> {
      const { schema, fallback } = SETTINGS[key]
      const stored = parsed(read.get({ key })?.value)
      const result = schema.safeParse(stored)
      return (result.success ? result.data : fallback) as SettingValue<K>
    },
    set(key, value) {
      const result = SETTINGS[key].schema.safeParse(value)
      if (!result.success) return problemsOf(result.error, value).map((p) => inSetting(key, p))
      connection.write(() => {
        write.run({ key, value: JSON.stringify(result.data) })
        changed(key)
      })
      return []
    },
  }
}

const inSetting = (key: SettingKey, p: Problem): Problem => ({
  ...p,
  field: p.field === '' ? key : `${key}.${p.field}`,
})

/** JSON, or undefined where there is none. */
function parsed(text: string | undefined): unknown {
  try {
    return text === undefined ? undefined : JSON.parse(text)
  } catch {
    return undefined
  }
}

/** Settings in the table that this version does not know or cannot read, a sentence each. */
export function settingProblems(connection: Connection): string[] {
  return connection.db
    .select()
    .from(setting)
    .all()
    .flatMap(({ key, value }) => {
      const known = Object.hasOwn(SETTINGS, key) ? SETTINGS[key as SettingKey] : undefined
      if (known === undefined) return [`setting "${key}" is not one this version knows`]
      return known.schema.safeParse(parsed(value)).success
        ? []
        : [`setting "${key}" cannot be read: ${value}`]
    })
}
