/** What the day of an entry is called, beside its field and in a problem's sentence alike. */
import type { EntryKind } from '../journal/index.ts'

const OWN: Partial<Record<EntryKind, string>> = {
  intake: 'Day it came',
  inspection: 'Day of the visit',
  'disease-cleared': 'Day it was found clear',
  move: 'Day of the move',
  outcome: 'Day it left',
  'missed-visit': 'Day it was not reached',
}

/** Example: dayLabel('intake') = 'Day it came'; 'Day' where nothing more need be said. */
export const dayLabel = (kind: EntryKind): string => OWN[kind] ?? 'Day'
