/** Everything the operator has said of a sheet; what is not said is guessed. */
import { type Day, daysBetween } from '../../days.ts'
import { sameNames } from '../../words/index.ts'
import { COLUMNS } from './colonies-csv.ts'
import { type DateOrder, dateTyped, type OrderFound, orderByDots, orderIn } from './dates.ts'
import { type Field, guessTargets, looksLikeHeading, plainHeading, type Target } from './fields.ts'
import { type HeatUnit, heatUnitIn } from './measures.ts'
import { type NameFound, namesFound, type SaidSame } from './names-found.ts'
import { type Delimiter, type Sheet, sheetOf } from './sheet.ts'
import { guessMeaning, LONG_BLANK, LONG_STAY, WORDED, type Worded, wordKey } from './words.ts'

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
  /** Of names written in several ways. */
  same?: SaidSame | undefined
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
  /** Lines without an outcome whose colony came long ago. */
  longBlank: ReadonlySet<number>
  /** Yards and people written in several ways. */
  names: NameFound[]
  yard: string
  removalType: string
  tagPrefix: string
}

export interface Usual {
  /** Where colonies go that name no yard. */
  yard: string
  /** Removal types this yard has beside the shipped ones. */
  ownTypes: readonly string[]
  /** Yards and people of the book. */
  yards: readonly string[]
  people: readonly string[]
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
  const order = orderOf(found, said)
  const longBlank = longBlankLines(sheet, targets, order, usual.today)
  return {
    sheet,
    targets,
    found,
    order,
    heat: heatOf(sheet, targets, said, usual, cells),
    words: wordsIn(sheet, targets, { said, usual, longBlank }),
    longBlank,
    names: namesFound(sheet, targets, said.same ?? {}, usual),
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

/** Lines that say neither what became of a colony nor when, and it came longer ago than colonies stay in a holding yard. */
function longBlankLines(
  sheet: Sheet,
  targets: readonly Target[],
  order: DateOrder | null,
  today: Day,
): ReadonlySet<number> {
  const cell = (row: Sheet['rows'][number], field: Field): string => {
    const [at] = columnsOf(targets, field)
    return at === undefined ? '' : (row.fields[at] ?? '')
  }
  const long = (row: Sheet['rows'][number]): boolean => {
    const came = cell(row, 'intake_on') || cell(row, 'removed_on')
    const day = dateTyped(came, order ?? 'day-first')
    const said = cell(row, 'outcome') !== '' || cell(row, 'outcome_on') !== ''
    return !said && day !== null && daysBetween(day, today) > LONG_STAY
  }
  return new Set(sheet.rows.filter(long).map((r) => r.line))
}

interface WordsAsked {
  said: Said
  usual: Usual
  longBlank: ReadonlySet<number>
}

/** The words of each column that has them, the most usual first. */
function wordsIn(sheet: Sheet, targets: readonly Target[], asked: WordsAsked): Mapping['words'] {
  const words: Mapping['words'] = {}
  for (const column of WORDED) {
    const counts = countsOf(column, sheet, targets, asked.longBlank)
    if (counts === null) continue
    words[column] = [...counts]
      .map(([key, { word, rows }]): WordFound => {
        const told = asked.said.meanings?.[column]?.[key]
        const guess = guessMeaning(column, word, asked.usual.ownTypes)
        return { word, key, rows, meaning: told ?? guess, guessed: told === undefined && guess !== null }
      })
      .sort((a, b) => b.rows - a.rows || (a.key < b.key ? -1 : 1))
  }
  oneSpelling(words.removal_type ?? [], asked.usual.ownTypes)
  return words
}

/** How often each word stands in a column; null where there is nothing to understand. */
function countsOf(
  column: Worded,
  sheet: Sheet,
  targets: readonly Target[],
  longBlank: ReadonlySet<number>,
): Map<string, { word: string; rows: number }> | null {
  const [at] = columnsOf(targets, column)
  const [leftOn] = columnsOf(targets, 'outcome_on')
  if (at === undefined && column !== 'outcome') return null
  const counts = new Map<string, { word: string; rows: number }>()
  for (const { fields, line } of sheet.rows) {
    const word = at === undefined ? '' : (fields[at] ?? '')
    if (column === 'method' && word === '') continue
    const undated = leftOn === undefined || fields[leftOn] === ''
    // No word and no day it left: of a colony that came lately it is still here, which nobody has to be asked.
    if (column === 'outcome' && word === '' && undated && !longBlank.has(line)) continue
    const key = column === 'outcome' && longBlank.has(line) ? LONG_BLANK : wordKey(word)
    const known = counts.get(key)
    if (known === undefined) counts.set(key, { word, rows: 1 })
    else known.rows++
  }
  return at === undefined && counts.size === 0 ? null : counts
}

/** Types guessed to be the yard's own are offered in one spelling: 'Hay barn' and 'hay-barn' become one, unless said otherwise. */
function oneSpelling(types: WordFound[], ownTypes: readonly string[]): void {
  const guessed = types.filter((t) => t.guessed)
  const spellings = guessed.flatMap((t) => Array.from({ length: t.rows }, () => t.meaning ?? ''))
  for (const { keep, others } of sameNames(spellings, ownTypes))
    for (const t of guessed) if (t.meaning !== null && others.includes(t.meaning)) t.meaning = keep
}
