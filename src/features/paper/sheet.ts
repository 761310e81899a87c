/**
 * The round sheet: what is ticked on paper and typed in afterwards, box by box. One list for both, in the order of the
 * form of a visit, with the same field names, so that a row of the sheet is read as a visit is.
 */

import { anyTyped, type Draft, draftOf, one, type Typed } from '../../forms/index.ts'
import {
  CAGE as CAGE_FOUND,
  CAPPED_BROOD,
  CELLS,
  type Choice,
  EGGS,
  FRESH_COMB,
  GIFT,
  LID,
  LOST,
  MISSED,
  OPEN_BROOD,
  QUEEN_SEEN,
  type Quantity,
  SEARCHED,
  SIGN,
  STORES,
  TEMPER,
  type Units,
  unitOf,
} from '../../words/index.ts'
import { CAGE, GIFT_SLOTS, TIES, VISIT_PREFIXES, visitDrafts, WASH } from '../entries/index.ts'

export interface SheetField {
  /** As in the form of a visit; those of a box not reached begin with {@link NOT_REACHED}. */
  name: string
  label: string
  /** choice: one box to tick. list: any number. number and text: a line to write on. */
  as: 'choice' | 'list' | 'number' | 'text'
  choices?: Choice[]
  /** For numbers: what is asked for in the yard's units. */
  quantity?: Quantity
}

const NOT_REACHED = 'missed.'
const [GIVEN] = GIFT_SLOTS

const said = (choices: Choice[]): Choice[] => choices.filter((c) => c.value !== '')
const choice = (name: string, label: string, choices: Choice[]): SheetField => ({
  name,
  label,
  as: 'choice',
  choices: said(choices),
})
const line = (name: string, label: string, as: 'number' | 'text' = 'number'): SheetField => ({
  name,
  label,
  as,
})

/** In the order of the form; the note comes last, where there is room to write. */
export const SHEET: SheetField[] = [
  choice('opened', 'Lid', LID),
  choice('eggs', 'Eggs', EGGS),
  choice('open', 'Open brood', OPEN_BROOD),
  choice('capped', 'Capped brood', CAPPED_BROOD),
  choice('onFreshComb', 'That brood', FRESH_COMB),
  choice('cells', 'Queen cells', CELLS),
  line('cellCount', 'How many'),
  choice('queen', 'Queen', QUEEN_SEEN),
  choice('searched', 'Looked', SEARCHED),
  line('framesOfBees', 'Frames of bees'),
  line('framesOfBrood', 'Frames of brood'),
  choice('lost', 'Found', LOST),
  choice('stores', 'Stores', STORES),
  { name: 'signs', label: 'Signs', as: 'list', choices: SIGN },
  choice('temper', 'Temper', TEMPER),
  choice(`${CAGE}found`, 'Queen’s cage', CAGE_FOUND),
  choice(`${GIVEN}what`, 'Given', GIFT),
  line(`${GIVEN}frames`, 'Frames'),
  line(`${GIVEN}donor`, 'From', 'text'),
  choice(`${GIVEN}caged`, 'A queen', [
    { value: 'yes', label: 'Caged' },
    { value: 'no', label: 'Not caged' },
  ]),
  { ...line(`${GIVEN}litres`, 'Syrup'), quantity: 'volume' },
  choice(`${TIES}done`, 'Bands', [{ value: 'yes', label: 'All taken off' }]),
  line(`${WASH}bees`, 'Wash: bees'),
  line(`${WASH}mites`, 'Mites'),
  choice(`${NOT_REACHED}reason`, 'Not reached', MISSED),
  line('note', 'Note', 'text'),
]

/** A field's label with its unit. Example: 'Syrup, litres'. */
export const labelWithUnit = (f: Pick<SheetField, 'label' | 'quantity'>, units: Units): string =>
  f.quantity === undefined ? f.label : `${f.label}, ${unitOf(units, f.quantity).symbol}`

export const sheetLabel = (name: string): string =>
  name === 'tag' ? 'Tag' : name === 'at' ? 'Time' : (SHEET.find((f) => f.name === name)?.label ?? '')

/** Fields of rows begin so: the third row's eggs are 'r2.eggs'. */
export const rowPrefix = (n: number): string => `r${n}.`

/** Prefixes of every entry that a row can become, in the order of their ids. */
export const ROW_PREFIXES: readonly string[] = [...VISIT_PREFIXES, NOT_REACHED]

/** What was typed into one row, by the names of a visit's form. */
export function rowOf(typed: Typed, n: number): Typed {
  const prefix = rowPrefix(n)
  return Object.fromEntries(
    Object.entries(typed).flatMap(([name, values]) =>
      name.startsWith(prefix) ? [[name.slice(prefix.length), values]] : [],
    ),
  )
}

/** What is seen only with the lid off: a row that says it says that the box was opened. */
const INSIDE = [
  'eggs',
  'open',
  'capped',
  'onFreshComb',
  'cells',
  'cellCount',
  'queen',
  'searched',
  'framesOfBees',
  'framesOfBrood',
]
const isFilled = (row: Typed, name: string): boolean => one(row, name) !== ''
const filled = (row: Typed): string[] => SHEET.map((f) => f.name).filter((name) => isFilled(row, name))

/** Whether anything of the box was typed: a row left empty is left alone. */
export const isRowFilled = (row: Typed): boolean => filled(row).length > 0

/**
 * The entries a filled row stands for, dated `on`. Whether the lid came off follows from what was seen inside, where
 * nobody ticked it. A box cannot be both seen and not reached: that is said beside the reason.
 */
export function rowDrafts(row: Typed, on: string, units: Units): Draft[] {
  const typed = { ...row, on: [on] }
  const names = filled(row)
  const missed = anyTyped(row, NOT_REACHED)
  if (missed) {
    const draft = draftOf('missed-visit', typed, units, NOT_REACHED)
    const note = one(row, 'note')
    if (note !== '') draft.raw.note = note
    const seen = names.filter((n) => !n.startsWith(NOT_REACHED) && n !== 'note')
    if (seen.length > 0)
      draft.problems.push({
        field: `${NOT_REACHED}reason`,
        message: `is ticked, but ${sheetLabel(seen[0] ?? '').toLowerCase()} is filled in too: keep one of them`,
      })
    return [draft]
  }
  const inside = INSIDE.some((n) => isFilled(row, n))
  // A box in which nothing lives needs no word on its lid.
  const opened = one(row, 'opened') || (inside ? 'yes' : isFilled(row, 'lost') ? 'no' : '')
  const drafts = visitDrafts({ ...typed, opened: [opened] }, units)
  if (opened !== '') return drafts
  // Only something done, or a note: without a look there is no inspection to make up.
  const acts = drafts.filter((d) => d.kind !== 'inspection')
  const looked = names.filter((n) => ['stores', 'signs', 'temper'].includes(n))
  if (looked.length > 0) return drafts.map((d) => (d.kind === 'inspection' ? withLidProblem(d) : d))
  return acts.length > 0
    ? withNote(acts, one(row, 'note'))
    : [draftOf('note', { ...typed, text: [one(row, 'note')] }, units)]
}

const withLidProblem = (d: Draft): Draft => ({
  ...d,
  problems: [
    ...d.problems.filter((p) => p.field !== 'opened'),
    { field: 'opened', message: 'is missing: opened, or lid on?' },
  ],
})

/** The row's note goes with the first thing done. */
const withNote = ([first, ...rest]: Draft[], note: string): Draft[] =>
  first === undefined ? [] : [note === '' ? first : { ...first, raw: { ...first.raw, note } }, ...rest]
