/** What a column of a spreadsheet can be, and which of these a heading looks like. */
import type { ColumnName } from './colonies-csv.ts'

/** The columns of the colonies CSV, and what an intake holds besides. */
export const FIELDS = [
  'tag',
  'removal_type',
  'intake_on',
  'removed_on',
  'queen_at_intake',
  'yard',
  'stand',
  'outcome',
  'outcome_on',
  'into',
  'removed_by',
  'site',
  'outdoor_c',
  'hours_open_to_boxed',
  'method',
  'egg_frames',
  'open_frames',
  'capped_frames',
  'note',
] as const satisfies readonly (ColumnName | 'stand' | 'removed_by' | 'site')[]
export type Field = (typeof FIELDS)[number]

/** What becomes of a column: a field, part of the note (with its heading), or nothing. */
export type Target = Field | 'to-note' | 'leave-out'

/**
 * Headings by field, in small letters without marks; those that say it best first. Common practice of people who keep
 * such sheets; from memory.
 */
const HEADINGS: Record<Field, readonly string[]> = {
  tag: [
    'tag',
    'colony',
    'colony id',
    'hive',
    'hive id',
    'box',
    'hive no',
    'hive number',
    'colony no',
    'colony number',
    'box no',
    'box number',
    'id',
    'no',
    'nr',
    'number',
    'name',
    'code',
  ],
  removal_type: [
    'removal type',
    'type',
    'type of removal',
    'kind',
    'structure',
    'location type',
    'job type',
    'job',
    'removed from',
    'source',
    'where from',
    'found in',
    'location',
  ],
  intake_on: [
    'intake on',
    'intake',
    'intake date',
    'date in',
    'arrived',
    'arrival',
    'received',
    'came in',
    'in yard since',
    'brought in',
    'hived',
    'hived on',
    'start',
    'start date',
    'date',
  ],
  removed_on: [
    'removed on',
    'removal date',
    'date removed',
    'removed',
    'cut out',
    'cutout date',
    'cut out date',
    'job date',
    'date of removal',
  ],
  queen_at_intake: [
    'queen at intake',
    'queen',
    'queen found',
    'queen status',
    'queen seen',
    'queen caught',
    'q',
  ],
  yard: ['yard', 'apiary', 'holding yard', 'bee yard', 'placed in', 'kept at'],
  stand: ['stand', 'stand no', 'position', 'slot', 'place', 'spot', 'row'],
  outcome: [
    'outcome',
    'result',
    'fate',
    'status',
    'what became',
    'end',
    'ending',
    'survived',
    'how it ended',
    'state',
  ],
  outcome_on: [
    'outcome on',
    'outcome date',
    'date out',
    'left on',
    'end date',
    'out',
    'left',
    'date of outcome',
    'ended',
    'ended on',
    'died on',
    'moved on',
    'date died',
    'date moved',
    'date left',
    'closed',
  ],
  into: [
    'into',
    'united with',
    'combined with',
    'united into',
    'merged with',
    'merged into',
    'combined into',
  ],
  removed_by: [
    'removed by',
    'by',
    'who',
    'beekeeper',
    'crew',
    'remover',
    'done by',
    'worker',
    'person',
    'technician',
    'tech',
  ],
  site: [
    'site',
    'address',
    'customer',
    'client',
    'owner',
    'property',
    'customer address',
    'street',
    'contact',
    'homeowner',
    'job address',
  ],
  outdoor_c: [
    'outdoor c',
    'temperature',
    'temp',
    'outdoor temp',
    'outdoor temperature',
    'outside temp',
    'air temp',
    'heat',
    'high',
    'degrees',
    'deg',
  ],
  hours_open_to_boxed: [
    'hours open to boxed',
    'hours',
    'hrs',
    'hours open',
    'duration',
    'time taken',
    'job hours',
    'time',
  ],
  method: ['method', 'how', 'technique', 'vac', 'vacuum', 'how removed'],
  egg_frames: ['egg frames', 'eggs', 'frames of eggs', 'frames eggs'],
  open_frames: ['open frames', 'open brood', 'larvae', 'open brood frames', 'frames open brood', 'uncapped'],
  capped_frames: [
    'capped frames',
    'capped brood',
    'capped',
    'sealed brood',
    'capped brood frames',
    'frames capped',
  ],
  note: ['note', 'notes', 'comment', 'comments', 'remarks', 'remark', 'memo'],
}

/** A heading as it is compared. Example: plainHeading('Temp. (°F)') = 'temp'. */
export function plainHeading(text: string): string {
  return text
    .toLowerCase()
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/\([^)]*\)|\[[^\]]*\]/g, ' ')
    .replaceAll(/[°º]\s*[cf]?\b/g, ' ')
    .replaceAll(/[^a-z0-9]+/g, ' ')
    .trim()
}

const EXACT: ReadonlyMap<string, Field> = new Map(
  FIELDS.flatMap((field) => HEADINGS[field].map((heading): [string, Field] => [heading, field])),
)

export const looksLikeHeading = (cell: string): boolean => EXACT.has(plainHeading(cell))

/** How well a heading fits a field: its place in the list counts, a heading with more words counts less; 0: not at all. */
function likeness(heading: string, field: Field): number {
  const plain = plainHeading(heading)
  if (plain === '') return 0
  const at = HEADINGS[field].indexOf(plain)
  if (at >= 0) return 100 - at
  const words = plain.split(' ')
  const within = HEADINGS[field].findIndex((h) => {
    const parts = h.split(' ')
    return h.length > 2 && parts.every((p) => words.includes(p))
  })
  return within < 0 ? 0 : 50 - within - words.length
}

/**
 * A target for each heading: the best fit, each field once. What looks like nothing goes into the note, so that nothing
 * is lost unsaid; a column without a heading and without cells is left out.
 */
export function guessTargets(header: readonly string[], isEmpty: (column: number) => boolean): Target[] {
  const fits = header
    .flatMap((heading, column) => FIELDS.map((field) => ({ column, field, score: likeness(heading, field) })))
    .filter((f) => f.score > 0)
    .sort((a, b) => b.score - a.score || a.column - b.column)
  const targets = header.map((_, column): Target => (isEmpty(column) ? 'leave-out' : 'to-note'))
  const taken = new Set<Field>()
  const placed = new Set<number>()
  for (const { column, field } of fits) {
    if (taken.has(field) || placed.has(column) || isEmpty(column)) continue
    targets[column] = field
    taken.add(field)
    placed.add(column)
  }
  return targets
}
