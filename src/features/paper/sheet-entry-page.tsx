/** A whole round sheet typed in at the desk: a card a box, in the order of the sheet, each read and saved by itself. */

import type { Day } from '../../days.ts'
import {
  type FieldProblem,
  type FormState,
  idOf,
  many,
  one,
  sentenceOf,
  type Typed,
} from '../../forms/index.ts'
import type { StandingEntry } from '../../journal/index.ts'
import { type Frame, Layout, YardChoice } from '../../parts/index.ts'
import { dayWords, entryWords, toDoOf } from '../../words/index.ts'
import { idField } from '../entries/index.ts'
import type { Box } from '../round/index.ts'
import { labelWithUnit, ROW_PREFIXES, rowPrefix, SHEET, type SheetField, sheetLabel } from './sheet.ts'
import { PaperWays } from './ways.tsx'

export interface SheetRow {
  n: number
  /** Null: a row for a box that is not on the sheet. */
  box: Box | null
  /** What the book holds of that box for that day. */
  known: StandingEntry[]
}

export interface SheetEntryProps {
  frame: Frame
  form: FormState
  day: Day
  yard: string | null
  all: boolean
  yards: string[]
  days: { from: Day; to: Day }
  rows: SheetRow[]
  /** Tags of every colony in the yard, for boxes that are not on the sheet. */
  tags: string[]
  /** Boxes saved just now; null when nothing was sent. */
  saved: number | null
}

export const SheetEntryPage = (p: SheetEntryProps) => {
  const refused = new Set(p.form.problems.map((x) => /^r(\d+)\./.exec(x.field)?.[1])).size
  return (
    <Layout frame={p.frame} title="Type in a sheet">
      <h1>Type in a round sheet</h1>
      <PaperWays frame={p.frame} />
      <Choose {...p} />
      {p.saved === null ? null : (
        <div class={refused > 0 ? 'notice notice-late' : 'notice notice-do'} role="status" id="saved">
          <p>{savedWords(p.saved, refused)}</p>
        </div>
      )}
      {p.rows.length === 0 ? null : (
        <form method="post" action="/sheet-entry" id="sheet-form" novalidate>
          {/* Enter in a field moves nothing and sends nothing: a sheet is saved by its button. */}
          <button type="submit" disabled hidden />
          <input type="hidden" name="yard" value={p.yard ?? ''} />
          <input type="hidden" name="day" value={p.day} />
          {p.all ? <input type="hidden" name="all" value="1" /> : null}
          <WalkedBy {...p} />
          {p.rows.map((row) => (
            <Row row={row} view={p} />
          ))}
          <datalist id={TAGS}>
            {p.tags.map((tag) => (
              <option value={tag} />
            ))}
          </datalist>
          <div class="save">
            <button class="button button-do" type="submit">
              Save the sheet
            </button>
            <p class="soft">Boxes left empty are left alone.</p>
          </div>
        </form>
      )}
    </Layout>
  )
}

function savedWords(saved: number, refused: number): string {
  const done =
    saved === 0
      ? 'Nothing new is in the book'
      : saved === 1
        ? '1 box is in the book'
        : `${saved} boxes are in the book`
  if (refused === 0) return `${done}.`
  const left = refused === 1 ? '1 box is not yet' : `${refused} boxes are not yet`
  return `${saved === 0 ? left.replace('not yet', 'not in the book yet') : `${done}; ${left}`}: see what is wrong there, mend it and save again. What is in the book is not sent twice.`
}

const Choose = ({ yard, yards, day, days, all, frame }: SheetEntryProps) => (
  <form class="sheet-choose" method="get" action="/sheet-entry">
    <YardChoice yard={yard} yards={yards} />
    <label>
      Day of the round
      <input type="date" name="day" value={day} min={days.from} max={frame.today} />
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
    <button class="button" type="submit">
      Show
    </button>
  </form>
)

const WalkedBy = ({ frame, form }: SheetEntryProps) =>
  frame.may('sign-for-others') ? (
    <p class="sheet-by">
      <label for="f-by">Walked by</label>
      <input
        id="f-by"
        name="by"
        type="text"
        maxlength={60}
        value={one(form.typed, 'by') || (frame.viewer?.name ?? '')}
        autocomplete="off"
      />
    </p>
  ) : null

const at = (row: SheetRow, name: string): string => rowPrefix(row.n) + name

const Row = ({ row, view }: { row: SheetRow; view: SheetEntryProps }) => {
  const { form, frame } = view
  const prefix = rowPrefix(row.n)
  const problems = form.problems.filter((x) => x.field.startsWith(prefix))
  const toDo = row.box === null ? null : toDoOf(row.box.plan)
  return (
    <fieldset class={problems.length > 0 ? 'sheet-row has-problem' : 'sheet-row'} id={`row-${row.n}`}>
      <legend>
        {row.box === null ? 'Another box' : row.box.tag}{' '}
        {row.box?.stand ? <small class="soft">stand {row.box.stand}</small> : null}{' '}
        {toDo === null ? null : <small class="soft">{toDo.title}</small>}
      </legend>
      {row.box === null ? null : <input type="hidden" name={at(row, 'colony')} value={row.box.id} />}
      {ROW_PREFIXES.map((p) => (
        <input type="hidden" name={at(row, idField(p))} value={one(form.typed, at(row, idField(p)))} />
      ))}
      <Known row={row} frame={frame} day={view.day} />
      {problems.length === 0 ? null : (
        <ul class="problem-list">
          {problems.map((x) => (
            <li class="problem">
              <a href={`#${idOf(x.field)}`}>
                {sentenceOf(sheetLabel(x.field.slice(prefix.length)), x.message)}
              </a>
            </li>
          ))}
        </ul>
      )}
      <div class="sheet-fields">
        {row.box === null ? (
          <Cell form={form} name={at(row, 'tag')} field={{ name: 'tag', label: 'Tag', as: 'text' }} tags />
        ) : null}
        <Cell form={form} name={at(row, 'at')} field={{ name: 'at', label: 'Time', as: 'time' }} />
        {SHEET.map((field) => (
          <Cell
            form={form}
            name={at(row, field.name)}
            field={{ ...field, label: labelWithUnit(field, frame.units) }}
            tags={field.name.endsWith('donor')}
          />
        ))}
      </div>
    </fieldset>
  )
}

/** Typed in already, by whomever: so that no sheet is typed in twice. */
const Known = ({ row, frame, day }: { row: SheetRow; frame: Frame; day: Day }) =>
  row.known.length === 0 ? null : (
    <p class="sheet-known">
      In the book for {dayWords(day, frame.today)}:{' '}
      {row.known
        .map((e) => {
          const { title, facts } = entryWords(e, frame.units, frame.today)
          return `${facts.length === 0 ? title : `${title} (${facts.join(', ')})`}, signed ${e.by}`
        })
        .join('; ')}
      .
    </p>
  )

const TAGS = 'sheet-tags'

interface CellProps {
  form: FormState
  name: string
  field: Omit<SheetField, 'as'> & { as: SheetField['as'] | 'time' }
  /** Tags of the yard are offered. */
  tags?: boolean
}

/** One answer. Menus, not taps: at the desk the first letter chooses and Tab goes on. */
const Cell = ({ form, name, field, tags }: CellProps) => {
  const bad = form.problems.some((x: FieldProblem) => x.field === name)
  const invalid = bad ? { 'aria-invalid': 'true' as const } : {}
  if (field.as === 'list') return <TickCell form={form.typed} name={name} field={field} />
  const id = idOf(name)
  const value = one(form.typed, name)
  const wide = field.name === 'note'
  return (
    <p class={wide ? 'cell cell-wide' : 'cell'}>
      <label for={id}>{field.label}</label>
      {field.choices === undefined ? (
        <input
          id={id}
          name={name}
          type={field.as === 'time' ? 'time' : 'text'}
          value={value}
          inputmode={field.as === 'number' ? 'decimal' : undefined}
          maxlength={wide ? 2000 : 60}
          autocomplete="off"
          list={tags ? TAGS : undefined}
          {...invalid}
        />
      ) : (
        <select id={id} name={name} {...invalid}>
          <option value="">–</option>
          {field.choices.map((c) => (
            <option value={c.value} selected={c.value === value}>
              {c.label}
            </option>
          ))}
          {value !== '' && !field.choices.some((c) => c.value === value) ? (
            <option value={value} selected>
              {value}
            </option>
          ) : null}
        </select>
      )}
    </p>
  )
}

const TickCell = ({ form, name, field }: { form: Typed; name: string; field: CellProps['field'] }) => {
  const ticked = many(form, name)
  return (
    <fieldset class="cell cell-wide cell-ticks" id={idOf(name)}>
      <legend>{field.label}</legend>
      {(field.choices ?? []).map((c) => (
        <label>
          <input type="checkbox" name={name} value={c.value} checked={ticked.includes(c.value)} /> {c.label}
        </label>
      ))}
    </fieldset>
  )
}
