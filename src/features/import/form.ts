/** What has been said of a spreadsheet, as fields of a form and back. */
import type { DateOrder } from './dates.ts'
import { FIELDS, type Target } from './fields.ts'
import type { Mapping, Said } from './mapping.ts'
import type { HeatUnit } from './measures.ts'
import { NAMED, type Named } from './names-found.ts'
import { DELIMITERS, type Delimiter } from './sheet.ts'
import { WORDED, type Worded } from './words.ts'

/** A form's fields, by name. */
export type Fields = ReadonlyMap<string, string>

export const targetField = (column: number): string => `column-${column}`
export const meaningField = (column: Worded, key: string): string => `word-${column}-${key}`

export const sameField = (column: Named, key: string): string => `same-${column}-${key}`

const TARGETS: readonly string[] = [...FIELDS, 'to-note', 'leave-out']

const among = <T extends string>(text: string | undefined, values: readonly T[]): T | undefined =>
  values.find((v) => v === text)

/** What the fields say; what they don't say is left open. */
export function saidIn(fields: Fields): Said {
  const line = Number(fields.get('headerLine'))
  return {
    delimiter: among(fields.get('delimiter'), Object.keys(DELIMITERS) as Delimiter[]),
    headerLine: Number.isInteger(line) && line > 0 ? line : undefined,
    targets: targetsIn(fields),
    order: among<DateOrder>(fields.get('order'), ['day-first', 'month-first']),
    heat: among<HeatUnit>(fields.get('heat'), ['F', 'C']),
    meanings: Object.fromEntries(WORDED.map((column) => [column, meaningsIn(fields, column)])),
    same: Object.fromEntries(NAMED.map((column) => [column, startingWith(fields, sameField(column, ''))])),
    yard: text(fields, 'yard', 80),
    removalType: text(fields, 'removalType', 40),
    tagPrefix: text(fields, 'tagPrefix', 20),
  }
}

function text(fields: Fields, name: string, most: number): string | undefined {
  const value = (fields.get(name) ?? '').trim().slice(0, most)
  return value === '' ? undefined : value
}

/** By column, without gaps; nothing when no column was asked about. */
function targetsIn(fields: Fields): Target[] | undefined {
  const said: Target[] = []
  for (let column = 0; ; column++) {
    const value = fields.get(targetField(column))
    if (value === undefined) return said.length === 0 ? undefined : said
    said.push(TARGETS.includes(value) ? (value as Target) : 'to-note')
  }
}

/** What is said by fields whose names begin alike, by the rest of the name. */
function startingWith(fields: Fields, start: string): Record<string, string> {
  // Without a prototype: "constructor" is a word like any other.
  const said: Record<string, string> = Object.create(null)
  for (const [name, value] of fields) if (name.startsWith(start)) said[name.slice(start.length)] = value
  return said
}

/** A word left without a meaning is not said. */
function meaningsIn(fields: Fields, column: Worded): Record<string, string> {
  const said = startingWith(fields, meaningField(column, ''))
  for (const [key, meaning] of Object.entries(said)) if (meaning === '') delete said[key]
  return said
}

/** The fields that keep a mapping from one page to the next. */
export function fieldsOf(mapping: Mapping, said: Said): [name: string, value: string][] {
  const fields: [string, string][] = [
    ['delimiter', mapping.sheet.delimiter],
    ['headerLine', String(mapping.sheet.headerLine)],
    ...mapping.targets.map((t, i): [string, string] => [targetField(i), t]),
  ]
  const keep = (name: string, value: string | undefined | null): void => {
    if (value !== undefined && value !== null && value !== '') fields.push([name, value])
  }
  keep('order', said.order)
  keep('heat', said.heat)
  keep('yard', said.yard)
  keep('removalType', said.removalType)
  keep('tagPrefix', said.tagPrefix)
  for (const column of WORDED)
    for (const [key, meaning] of Object.entries(said.meanings?.[column] ?? {}))
      keep(meaningField(column, key), meaning)
  for (const column of NAMED)
    for (const [key, taken] of Object.entries(said.same?.[column] ?? {}))
      fields.push([sameField(column, key), taken])
  return fields
}
