/**
 * The round sheet: what is ticked on paper and typed in afterwards, box by box. One list for both, in the order of the
 * form of a visit, with the same field names, so that a row of the sheet is read as a visit is.
 */

import { anyTyped, type Draft, draftOf, one, type Typed } from '../../forms/index.ts'
import { type Choice, type Quantity, type Units, unitOf, type Words, wordsIn } from '../../words/index.ts'
import { CAGE, GIFT_SLOTS, INSIDE, TIES, VISIT_PREFIXES, visitDrafts, WASH } from '../entries/index.ts'

export interface SheetField {
  /** As in the form of a visit; those of a box not reached begin with {@link NOT_REACHED}. */
  name: string
  /** choice: one box to tick. list: any number. number and text: a line to write on. */
  as: 'choice' | 'list' | 'number' | 'text'
  choices?: (w: Words) => Choice[]
  /** For numbers: what is asked for in the yard's units. */
  quantity?: Quantity
}

const NOT_REACHED = 'missed.'
const [GIVEN] = GIFT_SLOTS

type List = keyof Words['choices']

const choice = (name: string, list: List): SheetField => ({
  name,
  as: 'choice',
  choices: (w) => w.choices[list].filter((c) => c.value !== ''),
})
const line = (name: string, as: 'number' | 'text' = 'number'): SheetField => ({ name, as })

/** In the order of the form; the note comes last, where there is room to write. */
export const SHEET: SheetField[] = [
  choice('opened', 'LID'),
  choice('eggs', 'EGGS'),
  choice('open', 'OPEN_BROOD'),
  choice('capped', 'CAPPED_BROOD'),
  choice('onFreshComb', 'FRESH_COMB'),
  choice('cells', 'CELLS'),
  line('cellCount'),
  choice('queen', 'QUEEN_SEEN'),
  choice('searched', 'SEARCHED'),
  line('framesOfBees'),
  line('framesOfBrood'),
  choice('lost', 'LOST'),
  choice('stores', 'STORES'),
  { name: 'signs', as: 'list', choices: (w) => w.choices.SIGN },
  choice('temper', 'TEMPER'),
  choice(`${CAGE}found`, 'CAGE'),
  choice(`${GIVEN}what`, 'GIFT'),
  line(`${GIVEN}frames`),
  line(`${GIVEN}donor`, 'text'),
  {
    name: `${GIVEN}caged`,
    as: 'choice',
    choices: ({ paper }) => [
      { value: 'yes', label: paper.caged },
      { value: 'no', label: paper.notCaged },
    ],
  },
  { ...line(`${GIVEN}litres`), quantity: 'volume' },
  { name: `${TIES}done`, as: 'choice', choices: ({ record }) => [{ value: 'yes', label: record.allOff }] },
  line(`${WASH}bees`),
  line(`${WASH}mites`),
  choice(`${NOT_REACHED}reason`, 'MISSED'),
  line('note', 'text'),
]

/** A field's label. '' for a name the sheet does not know. */
export function sheetLabel(name: string, w: Words): string {
  const labels: Record<string, string> = w.paper.labels
  return labels[name] ?? ''
}

/** The same with its unit. Example: 'Syrup, litres'. */
export const labelWithUnit = ({ name, quantity }: SheetField, units: Units, w: Words): string =>
  quantity === undefined
    ? sheetLabel(name, w)
    : `${sheetLabel(name, w)}, ${unitOf(units, quantity, w).symbol}`

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

const isFilled = (row: Typed, name: string): boolean => one(row, name) !== ''
const filled = (row: Typed): string[] => SHEET.map((f) => f.name).filter((name) => isFilled(row, name))

/** Whether anything of the box was typed: a row left empty is left alone. */
export const isRowFilled = (row: Typed): boolean => filled(row).length > 0

/**
 * The entries a filled row stands for, dated `on`. Whether the lid came off follows from what was seen inside, where
 * nobody ticked it. A box cannot be both seen and not reached: that is said beside the reason.
 */
export function rowDrafts(row: Typed, on: string, units: Units, w: Words = wordsIn('en')): Draft[] {
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
        message: w.paper.entry.both(sheetLabel(seen[0] ?? '', w).toLowerCase()),
      })
    return [draft]
  }
  // What is seen only with the lid off says that the box was opened.
  const inside = INSIDE.some((n) => isFilled(row, n))
  // A box in which nothing lives needs no word on its lid.
  const opened = one(row, 'opened') || (inside ? 'yes' : isFilled(row, 'lost') ? 'no' : '')
  const drafts = visitDrafts({ ...typed, opened: [opened] }, units)
  if (opened !== '') return drafts
  // Only something done, or a note: without a look there is no inspection to make up.
  const acts = drafts.filter((d) => d.kind !== 'inspection')
  const looked = names.filter((n) => ['stores', 'signs', 'temper'].includes(n))
  if (looked.length > 0) return drafts.map((d) => (d.kind === 'inspection' ? withLidProblem(d, w) : d))
  return acts.length > 0
    ? withNote(acts, one(row, 'note'))
    : [draftOf('note', { ...typed, text: [one(row, 'note')] }, units)]
}

const withLidProblem = (d: Draft, w: Words): Draft => ({
  ...d,
  problems: [
    ...d.problems.filter((p) => p.field !== 'opened'),
    { field: 'opened', message: w.paper.entry.noLid },
  ],
})

/** The row's note goes with the first thing done. */
const withNote = ([first, ...rest]: Draft[], note: string): Draft[] =>
  first === undefined ? [] : [note === '' ? first : { ...first, raw: { ...first.raw, note } }, ...rest]
