/** The fields of a move-out record, read both ways. A field's name in the form is its path in the record. */

import { type FieldProblem, type FieldSpec, fieldsIn, type Typed, typedFields } from '../../forms/index.ts'
import { MOST_PERMITS, type MoveRecord } from '../../records/index.ts'
import type { Units } from '../../words/index.ts'

const text = (path: string, label: string): FieldSpec => ({ path, as: 'text', label })

const PERMIT = [
  text('what', 'Paper'),
  text('number', 'Number'),
  text('issuedBy', 'Issued by'),
  text('on', 'On'),
  text('until', 'Good until'),
]

export const RECORD_FIELDS: FieldSpec[] = [
  text('buyer.name', 'Name'),
  text('buyer.phone', 'Telephone'),
  text('buyer.email', 'E-mail'),
  text('buyer.address', 'Address'),
  text('yard', 'Yard it goes to'),
  text('registration', 'Registration of that yard'),
  ...Array.from({ length: MOST_PERMITS }, (_, i) =>
    PERMIT.map((f) => ({ ...f, path: `permits.${i}.${f.path}`, label: `Paper ${i + 1}, ${f.label}` })),
  ).flat(),
  { path: 'price', as: 'number', label: 'Price', min: 0, max: 1_000_000 },
  text('wentAlong', 'What went along'),
  text('note', 'Note'),
]

export const recordLabel = (field: string): string => RECORD_FIELDS.find((f) => f.path === field)?.label ?? ''

/** Rows of papers that were filled in, by the row they were typed in. */
export interface RecordDraft {
  raw: Record<string, unknown>
  problems: FieldProblem[]
  /** The row of the form each paper stands in. */
  rows: number[]
}

/** Reads the form. Empty rows of papers are left out. */
export function recordDraft(typed: Typed, units: Units): RecordDraft {
  const { raw, problems } = fieldsIn(RECORD_FIELDS, typed, units)
  const { permits, ...rest } = raw
  const rows = Object.keys((permits ?? {}) as object).map(Number)
  const papers = Object.values((permits ?? {}) as object)
  return { raw: { ...rest, ...(papers.length > 0 ? { permits: papers } : {}) }, problems, rows }
}

/** A problem the schema found, beside the row in which its paper was typed. */
export const atRow = (problem: FieldProblem, rows: readonly number[]): FieldProblem => ({
  ...problem,
  field: problem.field.replace(/^permits\.(\d+)/, (_all, i: string) => `permits.${rows[Number(i)] ?? i}`),
})

export const typedRecord = (record: MoveRecord, units: Units): Typed =>
  typedFields(RECORD_FIELDS, record, units)
