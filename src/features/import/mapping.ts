/** Everything the operator has said of a sheet; what is not said is guessed. */
import type { Day } from '../../days.ts'
import { COLUMNS } from './colonies-csv.ts'
import { type DateOrder, type OrderFound, orderByDots, orderIn } from './dates.ts'
import { type Field, guessTargets, looksLikeHeading, plainHeading, type Target } from './fields.ts'
import { type HeatUnit, heatUnitIn } from './measures.ts'
import { type Delimiter, type Sheet, sheetOf } from './sheet.ts'
import { guessMeaning, WORDED, type Worded, wordKey } from './words.ts'

/** What was said; every part may be left open. */
export interface Said {
  delimiter?: Delimiter | undefined
  headerLine?: number | undefined
  /** By column. */
  targets?: readonly Target[] | undefined
  order?: DateOrder | undefined
  heat?: HeatUnit | undefined
  /** By column and word ({@link wordKey}). */
  meanings?: Partial<Record<Worded, Readonly<Record<string, string>>>> | undefined
  /** The yard of rows that name none. */
  yard?: string | undefined
  /** Without a column of removal types: that of every row. */
  removalType?: string | undefined
  /** Without a column of tags: the tag is this and the number of the line. */
  tagPrefix?: string | undefined
}

/** A word in the sheet that has to be understood. */
export interface WordFound {
  word: string
  key: string
  /** Rows that have it. */
  rows: number
  /** What was said, else guessed; null: nobody knows yet. */
  meaning: string | null
  /** It was guessed. */
  guessed: boolean
}

export interface Mapping {
  sheet: Sheet
  targets: Target[]
  /** Null: the dates can be read both ways and nobody has said which. */
  order: DateOrder | null
  found: OrderFound
  /** Null: nobody has said. */
  heat: HeatUnit | null
  words: Partial<Record<Worded, WordFound[]>>
  yard: string
  removalType: string
  tagPrefix: string
}

export interface Usual {
  /** Where colonies go that name no yard. */
  yard: string
  /** Removal types this yard has beside the shipped ones. */
  ownTypes: readonly string[]
  /** The unit in which this yard types temperatures. */
  heat: HeatUnit
  today: Day
}

/** The columns of a field, in order: only the note may have several. */
export const columnsOf = (targets: readonly Target[], field: Target): number[] =>
  targets.flatMap((t, i) => (t === field ? [i] : []))

/** Whether the headings are the colonies CSV's own, so that nothing has to be asked. */
export const isOwnFormat = (sheet: Sheet): boolean =>
  sheet.header.every((h) => (COLUMNS as readonly string[]).includes(h.toLowerCase()))

const DATES: readonly Field[] = ['intake_on', 'removed_on', 'outcome_on']

/** Reads the sheet with what was said of it, and guesses the rest. */
export function mappingOf(text: string, said: Said, usual: Usual): Mapping {
  const sheet = sheetOf(text, said, looksLikeHeading)
  const cells = (column: number): string[] =>
    sheet.rows.map((r) => r.fields[column] ?? '').filter((c) => c !== '')
  const guessed = isOwnFormat(sheet)
    ? sheet.header.map((h): Target => h.toLowerCase() as Field)
    : guessTargets(sheet.header, (column) => cells(column).length === 0)
  const targets = guessed.map((g, i) => said.targets?.[i] ?? g)
  const dates = DATES.flatMap((field) => columnsOf(targets, field)).flatMap((column) =>
    sheet.rows.flatMap((r) => {
      const cell = r.fields[column] ?? ''
      return cell === '' ? [] : [{ line: r.line, text: cell }]
    }),
  )
  const found = orderIn(dates)
  return {
    sheet,
    targets,
    found,
    order: orderOf(found, said),
    heat: heatOf(sheet, targets, said, usual, cells),
    words: wordsIn(sheet, targets, said, usual),
    yard: said.yard ?? usual.yard,
    removalType: said.removalType ?? '',
    tagPrefix: said.tagPrefix ?? 'old-',
  }
}

function orderOf(found: OrderFound, said: Said): DateOrder | null {
  if (found.order !== null) return found.order
  if (said.order !== undefined) return said.order
  if (found.mixed) return null
  return found.ambiguous === null ? 'day-first' : orderByDots(found.ambiguous.text)
}

function heatOf(
  sheet: Sheet,
  targets: readonly Target[],
  said: Said,
  usual: Usual,
  cells: (column: number) => string[],
): HeatUnit | null {
  const [column] = columnsOf(targets, 'outdoor_c')
  if (column === undefined) return said.heat ?? usual.heat
  const heading = sheet.header[column] ?? ''
  // The colonies CSV's own heading names its unit.
  if (plainHeading(heading) === 'outdoor c') return 'C'
  return said.heat ?? heatUnitIn(heading, cells(column))
}

/** The words of each column that has them, the most usual first. */
function wordsIn(sheet: Sheet, targets: readonly Target[], said: Said, usual: Usual): Mapping['words'] {
  const words: Mapping['words'] = {}
  const [leftOn] = columnsOf(targets, 'outcome_on')
  for (const column of WORDED) {
    const [at] = columnsOf(targets, column)
    // A day it left without any column of outcomes still needs its word.
    if (at === undefined && (column !== 'outcome' || leftOn === undefined)) continue
    const counts = new Map<string, { word: string; rows: number }>()
    for (const { fields } of sheet.rows) {
      const word = at === undefined ? '' : (fields[at] ?? '')
      // No word and no day it left: it is still here, which nobody has to be asked.
      if (column === 'outcome' && word === '' && (leftOn === undefined || fields[leftOn] === '')) continue
      if (column === 'method' && word === '') continue
      const key = wordKey(word)
      const known = counts.get(key)
      if (known === undefined) counts.set(key, { word, rows: 1 })
      else known.rows++
    }
    words[column] = [...counts]
      .map(([key, { word, rows }]): WordFound => {
        const told = said.meanings?.[column]?.[key]
        const guess = column === 'outcome' && key === '' ? null : guessMeaning(column, word, usual.ownTypes)
        return { word, key, rows, meaning: told ?? guess, guessed: told === undefined && guess !== null }
      })
      .sort((a, b) => b.rows - a.rows || (a.key < b.key ? -1 : 1))
  }
  return words
}
