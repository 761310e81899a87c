/**
 * Ids as a phone would make them (UUIDv7, RFC 9562: the first 48 bits are the moment in milliseconds), but the same on
 * every run: the rest is drawn from what the entry is about instead of from chance.
 */
import { v7 } from 'uuid'
import { type Day, dayNumber, dayOf } from '../src/days.ts'
import { seeded } from './seeded.ts'

const MS_PER_DAY = 86_400_000
const MS_PER_MINUTE = 60_000

/** The id of an entry typed in on `day` at `time` ('HH:MM'); `about` must differ between entries of one moment. */
export function idMadeAt(day: Day, time: string, about: string): string {
  const [hours, minutes] = time.split(':').map(Number)
  const msecs = dayNumber(day) * MS_PER_DAY + ((hours ?? 0) * 60 + (minutes ?? 0)) * MS_PER_MINUTE
  const draw = seeded(about)
  return v7({ msecs, random: Uint8Array.from({ length: 16 }, () => Math.floor(draw() * 256)) })
}

/** The moment an id was made, in milliseconds since 1970 (UTC). */
export const momentOf = (id: string): number => Number.parseInt(id.replaceAll('-', '').slice(0, 12), 16)

/** The day on which the entry with that id was typed in: later than its `on` when it is a correction. */
export const dayMade = (id: string): Day => dayOf(Math.floor(momentOf(id) / MS_PER_DAY))
