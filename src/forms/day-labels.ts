/** What the day of an entry is called, beside its field and in a problem's sentence alike. */
import { type EntryKind, KIND_TABLE } from '../journal/index.ts'

/** Example: dayLabel('intake') = 'Day it came'. */
export const dayLabel = (kind: EntryKind): string => KIND_TABLE[kind].day
