/** The round on paper: one block a box, boxes to tick in the order of the visit's form, room for notes. */

import type { Day } from '../../days.ts'
import { useWords } from '../../forms/index.ts'
import { type Frame, Layout, YardChoice } from '../../parts/index.ts'
import type { Check } from '../../recovery/index.ts'
import { headline, lidCautions, toDoOf, type Units, type Words } from '../../words/index.ts'
import type { Box } from '../round/index.ts'
import { ChooseBoxes, ChooseSize, Show } from './choose.tsx'
import { Front, frontPages } from './front.tsx'
import { labelWithUnit, SHEET, type SheetField } from './sheet.ts'
import type { Size } from './sizes.ts'
import { PaperWays } from './ways.tsx'

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
function leavesOf(boxes: readonly PrintedBox[], { units, words }: Frame): Leaf[] {
  const yards = [...new Set(boxes.map((b) => b.yard))]
  return yards.flatMap((yard) => {
    const own = boxes.filter((b) => b.yard === yard)
    return [
      ...frontPages(own, units, words).map(
        (boxes, i): Leaf => ({ yard, front: i === 0 ? 'first' : 'more', boxes }),
      ),
      ...partsOf(own, BLOCKS_A_PAGE).map((boxes): Leaf => ({ yard, front: null, boxes })),
    ]
  })
}

export const PaperPage = (p: PaperProps) => {
  const leaves = leavesOf(p.boxes, p.frame)
  const { words } = p.frame
  const { paper } = words
  return (
    <Layout frame={p.frame} title={paper.sheet.title} scripts={['islands/print.ts']}>
      <div class="no-print">
        <h1>{paper.sheet.heading}</h1>
        <PaperWays frame={p.frame} />
        <Choose {...p} />
        {leaves.length === 0 ? (
          <p>{paper.sheet.empty(p.yard, p.day === p.frame.today)}</p>
        ) : (
          <p>
            {paper.sheet.pages(leaves.length, paper.sizes[p.size])}
            <a
              href={`/sheet-entry?${new URLSearchParams({ yard: p.yard ?? '', day: p.day, ...(p.all ? { all: '1' } : {}) })}`}
            >
              {paper.sheet.typeIn}
            </a>
            .
          </p>
        )}
      </div>
      <section class={`leaves leaves-${p.size}`} tabindex={0} aria-label={paper.asPrinted}>
        {leaves.map((leaf, i) => (
          <section class={leaf.front === null ? 'leaf' : 'leaf leaf-front'}>
            <header class="leaf-head">
              <b>{leaf.yard}</b>
              <span>{words.dates.dayWithYear(p.day)}</span>
              <span class="leaf-who">{paper.sheet.walkedBy}</span>
              <span>{paper.sheet.page(i + 1, leaves.length)}</span>
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
      {frame.words.paper.sheet.day}
      <input type="date" name="day" value={day} min={frame.today} max={days.to} />
    </label>
    <ChooseBoxes all={all} />
    <ChooseSize size={size} />
    <Show print />
  </form>
)

const Block = ({ box, units }: { box: PrintedBox; units: Units }) => {
  const { plan, history } = box
  const words = useWords()
  const { paper, parts, trade } = words
  const toDo = toDoOf(plan, words)
  const [caution] = lidCautions(plan, history, words)
  return (
    <article class="block">
      <header class="block-head">
        <b class="block-tag">{box.tag}</b>
        {box.stand === null ? null : <span>{parts.stand(box.stand)}</span>}
        <span>{paper.sheet.ofStay(plan.day)}</span>
        {box.seen ? <b>{paper.sheet.seenToday}</b> : null}
        <span class="block-phase">
          {toDo === null ? headline(plan, null, words) : trade.phases[plan.phase]}
        </span>
        <span class="block-time">{paper.sheet.time}</span>
      </header>
      {toDo === null ? null : (
        <p class="block-ask">
          <b>
            {toDo.title}
            {toDo.lidOn ? paper.sheet.lidOn : ''}
            {toDo.question === null ? '.' : ':'}
          </b>{' '}
          {toDo.question} {toDo.check === null ? '' : `(${whenWords(toDo.check, plan.asOf, words)})`}
          {toDo.also.length === 0
            ? ''
            : paper.sheet.also(toDo.also.map((c) => trade.rules[c.rule].name.toLowerCase()).join('; '))}
          {caution === undefined ? '' : paper.sheet.mind(caution)}
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
function whenWords(check: Check, day: Day, { dates, paper }: Words): string {
  const window = dates.window(check, day)
  return check.status === 'overdue' ? paper.sheet.late(window) : window
}

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

const Field = ({ field, units }: { field: SheetField; units: Units }) => {
  const words = useWords()
  const { short } = words.paper
  return (
    <span class={`on-paper on-paper-${field.as}`} data-field={field.name}>
      <span class="on-paper-label">{labelWithUnit(field, units, words)}</span>
      {field.choices === undefined ? (
        <span class="write-on" />
      ) : (
        <span class="on-paper-choices">
          {field.choices(words).map((c) => (
            <span class="tick">
              <i />
              {short[`${field.name} ${c.value}`] ?? short[c.value] ?? c.label.toLowerCase()}
            </span>
          ))}
        </span>
      )}
    </span>
  )
}
