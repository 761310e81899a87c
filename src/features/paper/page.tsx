/** The round on paper: one block a box, boxes to tick in the order of the visit's form, room for notes. */

import type { Day } from '../../days.ts'
import { inWordsWithYear } from '../../days.ts'
import { type Frame, Layout, YardChoice } from '../../parts/index.ts'
import type { Check } from '../../recovery/index.ts'
import {
  headline,
  lidCautions,
  PHASE_WORDS,
  RULE_WORDS,
  toDoOf,
  type Units,
  windowWords,
} from '../../words/index.ts'
import type { Box } from '../round/index.ts'
import { Front, REASONS_A_PAGE, reasoned } from './front.tsx'
import { labelWithUnit, SHEET, type SheetField } from './sheet.ts'
import { PaperWays } from './ways.tsx'

export const SIZES = ['a4', 'letter'] as const
export type Size = (typeof SIZES)[number]
export const SIZE_WORDS: Record<Size, string> = { a4: 'A4', letter: 'Letter' }

/** As many blocks as fit on either size with room to write (measured in print). */
const BLOCKS_A_PAGE = 3

/** A box on a sheet that is printed. */
export interface PrintedBox extends Box {
  /** Somebody has been there on the day already. */
  seen: boolean
}

export interface PaperProps {
  frame: Frame
  day: Day
  /** Null: every yard, each on its own pages. */
  yard: string | null
  all: boolean
  size: Size
  yards: string[]
  days: { from: Day; to: Day }
  boxes: PrintedBox[]
}

interface Leaf {
  yard: string
  /** A page in front of the yard's blocks: why, and the first of them what to bring and mind. */
  front: 'first' | 'more' | null
  boxes: PrintedBox[]
}

const partsOf = <T,>(all: readonly T[], size: number): T[][] =>
  Array.from({ length: Math.ceil(all.length / size) }, (_, i) => all.slice(i * size, (i + 1) * size))

/** Pages of the sheet: a yard begins on a new one, with its reasons. */
function leavesOf(boxes: readonly PrintedBox[]): Leaf[] {
  const yards = [...new Set(boxes.map((b) => b.yard))]
  return yards.flatMap((yard) => {
    const own = boxes.filter((b) => b.yard === yard)
    return [
      ...partsOf(reasoned(own), REASONS_A_PAGE).map(
        (boxes, i): Leaf => ({ yard, front: i === 0 ? 'first' : 'more', boxes }),
      ),
      ...partsOf(own, BLOCKS_A_PAGE).map((boxes): Leaf => ({ yard, front: null, boxes })),
    ]
  })
}

export const PaperPage = (p: PaperProps) => {
  const leaves = leavesOf(p.boxes)
  return (
    <Layout frame={p.frame} title="Round sheet" scripts={['islands/print.ts']}>
      <div class="no-print">
        <h1>Round sheet on paper</h1>
        <PaperWays frame={p.frame} />
        <Choose {...p} />
        {leaves.length === 0 ? (
          <p>
            No box asks for anything{p.day === p.frame.today ? ' more' : ''} on that day
            {p.yard === null ? '' : ` at ${p.yard}`}: the sheet would be empty.
          </p>
        ) : (
          <p>
            {leaves.length === 1 ? '1 page' : `${leaves.length} pages`}, {SIZE_WORDS[p.size]}. Print it from
            your browser. Afterwards the whole sheet is typed in on one page:{' '}
            <a
              href={`/sheet-entry?${new URLSearchParams({ yard: p.yard ?? '', day: p.day, ...(p.all ? { all: '1' } : {}) })}`}
            >
              type in this sheet
            </a>
            .
          </p>
        )}
      </div>
      <section class={`leaves leaves-${p.size}`} tabindex={0} aria-label="As it is printed">
        {leaves.map((leaf, i) => (
          <section class={leaf.front === null ? 'leaf' : 'leaf leaf-front'}>
            <header class="leaf-head">
              <b>{leaf.yard}</b>
              <span>{inWordsWithYear(p.day)}</span>
              <span class="leaf-who">walked by</span>
              <span>
                page {i + 1} of {leaves.length}
              </span>
            </header>
            {leaf.front === null ? (
              leaf.boxes.map((box) => <Block box={box} units={p.frame.units} />)
            ) : (
              <Front
                all={p.boxes.filter((b) => b.yard === leaf.yard)}
                boxes={leaf.boxes}
                first={leaf.front === 'first'}
                units={p.frame.units}
              />
            )}
          </section>
        ))}
      </section>
    </Layout>
  )
}

const Choose = ({ frame, yard, yards, day, days, all, size }: PaperProps) => (
  <form class="sheet-choose" method="get" action="/paper">
    <YardChoice yard={yard} yards={yards} />
    <label>
      Day
      <input type="date" name="day" value={day} min={frame.today} max={days.to} />
    </label>
    <label>
      Boxes
      <select name="all">
        <option value="">on the round</option>
        <option value="1" selected={all}>
          all
        </option>
      </select>
    </label>
    <label>
      Paper
      <select name="size">
        {SIZES.map((s) => (
          <option value={s} selected={s === size}>
            {SIZE_WORDS[s]}
          </option>
        ))}
      </select>
    </label>
    <button class="button" type="submit">
      Show
    </button>
    <button class="button button-do" type="button" id="print" hidden>
      Print
    </button>
  </form>
)

const Block = ({ box, units }: { box: PrintedBox; units: Units }) => {
  const { plan, history } = box
  const toDo = toDoOf(plan)
  const [caution] = lidCautions(plan, history)
  return (
    <article class="block">
      <header class="block-head">
        <b class="block-tag">{box.tag}</b>
        {box.stand === null ? null : <span>stand {box.stand}</span>}
        <span>day {plan.day}</span>
        {box.seen ? <b>seen today</b> : null}
        <span class="block-phase">{toDo === null ? headline(plan, null) : PHASE_WORDS[plan.phase]}</span>
        <span class="block-time">time</span>
      </header>
      {toDo === null ? null : (
        <p class="block-ask">
          <b>
            {toDo.title}
            {toDo.lidOn ? ', lid on' : ''}
            {toDo.question === null ? '.' : ':'}
          </b>{' '}
          {toDo.question} {toDo.check === null ? '' : `(${whenWords(toDo.check, plan.asOf)})`}
          {toDo.also.length === 0
            ? ''
            : ` Also: ${toDo.also.map((c) => RULE_WORDS[c.rule].name.toLowerCase()).join('; ')}.`}
          {caution === undefined ? '' : ` Mind: ${caution}`}
        </p>
      )}
      <div class="ticks">
        <div class="ticks-brood">
          {BROOD.map((fields) => (
            <Line fields={fields} units={units} />
          ))}
        </div>
        {REST.map((fields) => (
          <Line fields={fields} units={units} />
        ))}
      </div>
    </article>
  )
}

/** The window, with the word that a mark says on the screen. */
const whenWords = (check: Check, day: Day): string =>
  `${check.status === 'overdue' ? 'late ' : ''}${windowWords(check, day)}`

const named = (name: string): SheetField => {
  const field = SHEET.find((f) => f.name === name)
  if (field === undefined) throw new RangeError(`no field ${name} on the sheet`)
  return field
}

/** Brood and queen, down one column and then the other. */
const BROOD = [
  ['opened'],
  ['eggs'],
  ['open'],
  ['capped'],
  ['onFreshComb'],
  ['cells'],
  ['cellCount', 'queen'],
  ['searched', 'framesOfBees'],
  ['framesOfBrood', 'lost'],
  ['stores'],
].map((names) => names.map(named))

/** The rest, each line across the whole block. */
const REST = [
  ['signs'],
  ['temper', 'cage.found'],
  ['given1.what'],
  ['given1.frames', 'given1.donor', 'given1.caged', 'given1.litres'],
  ['ties.done', 'wash.bees', 'wash.mites'],
  ['missed.reason'],
  ['note'],
].map((names) => names.map(named))

const Line = ({ fields, units }: { fields: SheetField[]; units: Units }) => (
  <p class="tick-row">
    {fields.map((field) => (
      <Field field={field} units={units} />
    ))}
  </p>
)

/** Shorter on paper, where a line is a line. */
const PAPER_WORDS: Record<string, string> = {
  other: 'other',
  'torn-down': 'torn',
  'brood-disease-suspected': 'brood disease?',
  'mated-queen': 'mated queen',
  treatment: 'treatment',
  'not-found': 'not found',
  'in-haste': 'glanced',
  thoroughly: 'every frame',
  released: 'out',
  'still-caged': 'still in it',
}

const Field = ({ field, units }: { field: SheetField; units: Units }) => (
  <span class={`on-paper on-paper-${field.as}`} data-field={field.name}>
    <span class="on-paper-label">{labelWithUnit(field, units)}</span>
    {field.choices === undefined ? (
      <span class="write-on" />
    ) : (
      <span class="on-paper-choices">
        {field.choices.map((c) => (
          <span class="tick">
            <i />
            {PAPER_WORDS[c.value] ?? c.label.toLowerCase()}
          </span>
        ))}
      </span>
    )}
  </span>
)
