/** Entries by the tag of their colony, in the order given. */
import type { Entry } from '../../src/journal/entry.ts'

export function byColony(entries: readonly Entry[]): Map<string, Entry[]> {
  const colonies = new Map<string, Entry[]>()
  for (const e of entries) {
    const own = colonies.get(e.colony)
    if (own === undefined) colonies.set(e.colony, [e])
    else own.push(e)
  }
  return colonies
}

/** A leap day, days on which clocks change in Europe and North America, the turn of the year, an ordinary day. */
export const AWKWARD_DAYS = [
  '2028-02-29',
  '2026-03-29',
  '2026-03-08',
  '2026-10-25',
  '2026-11-01',
  '2026-12-31',
  '2027-01-01',
  '2026-06-10',
] as const
