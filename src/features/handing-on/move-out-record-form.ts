/** The fields of a move-out record, each said once: drawn, read and filled again from here. A field's name in the form is its path in the record. */

import {
  type FieldProblem,
  type FieldSpecs,
  fieldsIn,
  spec,
  type Typed,
  typedFields,
} from '../../forms/index.ts'
import { MOST_PERMITS, type MoveRecord } from '../../records/index.ts'
import type { Units } from '../../words/index.ts'

const { day, lines, number, text } = spec

/** One paper: a permit, a certificate, a registration. */
export const PERMIT = {
  what: text('Paper', { maxlength: 120, wide: true }),
  number: text('Number', { maxlength: 80 }),
  issuedBy: text('Issued by', { maxlength: 120 }),
  on: day('On'),
  until: day('Good until'),
} satisfies FieldSpecs

/** What a paper's names begin with. */
export const permitAt = (i: number): string => `permits.${i}.`

const PERMITS: FieldSpecs = Object.fromEntries(
  Array.from({ length: MOST_PERMITS }, (_, i) =>
    Object.entries(PERMIT).map(([path, f]) => [
      permitAt(i) + path,
      { ...f, label: `Paper ${i + 1}, ${f.label}` },
    ]),
  ).flat(),
)

export const RECORD = {
  'buyer.name': text('Name', { maxlength: 120, wide: true }),
  'buyer.phone': text('Telephone', { maxlength: 60, keys: 'tel' }),
  'buyer.email': text('E-mail', { maxlength: 200, keys: 'email' }),
  'buyer.address': text('Address', { maxlength: 300, wide: true }),
  yard: text('Yard it goes to', {
    hint: 'As the authority asks for it: name, place, county. Stands in the yard book.',
    maxlength: 200,
    wide: true,
  }),
  registration: text('Registration of that yard', {
    hint: 'Number, where yards are registered. Stands in the yard book.',
    maxlength: 80,
  }),
  price: number('Price', { max: 1_000_000, maxlength: 12 }),
  wentAlong: text('What went along', { hint: 'Hive, frames, feeder.', maxlength: 300, wide: true }),
  note: lines('Note'),
} satisfies FieldSpecs

const RECORD_FIELDS: FieldSpecs = { ...RECORD, ...PERMITS }

export const recordLabel = (field: string): string => RECORD_FIELDS[field]?.label ?? ''

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
