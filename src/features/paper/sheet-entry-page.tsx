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
import { type Choice, entryWords, toDoOf } from '../../words/index.ts'
import { idField } from '../entries/index.ts'
import type { Box } from '../round/index.ts'
import { ChooseBoxes, Show } from './choose.tsx'
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
  const { entry } = p.frame.words.paper
  return (
    <Layout frame={p.frame} title={entry.title}>
      <h1>{entry.heading}</h1>
      <PaperWays frame={p.frame} />
      <Choose {...p} />
      {p.saved === null ? null : (
        <div class={refused > 0 ? 'notice notice-late' : 'notice notice-do'} role="status" id="saved">
          <p>{entry.saved(p.saved, refused)}</p>
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
              {entry.save}
            </button>
            <p class="soft">{entry.leftEmpty}</p>
          </div>
        </form>
      )}
    </Layout>
  )
}

const Choose = ({ yard, yards, day, days, all, frame }: SheetEntryProps) => (
  <form class="sheet-choose" method="get" action="/sheet-entry">
    <YardChoice yard={yard} yards={yards} />
    <label>
      {frame.words.paper.entry.day}
      <input type="date" name="day" value={day} min={days.from} max={frame.today} />
    </label>
    <ChooseBoxes all={all} />
    <Show />
  </form>
)

const WalkedBy = ({ frame, form }: SheetEntryProps) =>
  frame.may('sign-for-others') ? (
    <p class="sheet-by">
      <label for="f-by">{frame.words.paper.entry.walkedBy}</label>
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
  const { words } = frame
  const prefix = rowPrefix(row.n)
  const problems = form.problems.filter((x) => x.field.startsWith(prefix))
  const toDo = row.box === null ? null : toDoOf(row.box.plan, words)
  return (
    <fieldset class={problems.length > 0 ? 'sheet-row has-problem' : 'sheet-row'} id={`row-${row.n}`}>
      <legend>
        {row.box === null ? words.paper.entry.anotherBox : row.box.tag}{' '}
        {row.box?.stand ? <small class="soft">{words.parts.stand(row.box.stand)}</small> : null}{' '}
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
                {sentenceOf(sheetLabel(x.field.slice(prefix.length), words), x.message, words)}
              </a>
            </li>
          ))}
        </ul>
      )}
      <div class="sheet-fields">
        {row.box === null ? (
          <Cell form={form} name={at(row, 'tag')} label={sheetLabel('tag', words)} as="text" tags />
        ) : null}
        <Cell form={form} name={at(row, 'at')} label={sheetLabel('at', words)} as="time" />
        {SHEET.map((field) => (
          <Cell
            form={form}
            name={at(row, field.name)}
            label={labelWithUnit(field, frame.units, words)}
            as={field.as}
            choices={field.choices?.(words)}
            tags={field.name.endsWith('donor')}
            wide={field.name === 'note'}
          />
        ))}
      </div>
    </fieldset>
  )
}

/** Typed in already, by whomever: so that no sheet is typed in twice. */
const Known = ({ row, frame, day }: { row: SheetRow; frame: Frame; day: Day }) => {
  const { dates, paper } = frame.words
  return row.known.length === 0 ? null : (
    <p class="sheet-known">
      {paper.entry.known(dates.day(day, frame.today))}{' '}
      {row.known
        .map((e) => {
          const { title, facts } = entryWords(e, frame.units, frame.today, false, frame.words)
          return paper.entry.signedBy(facts.length === 0 ? title : `${title} (${facts.join(', ')})`, e.by)
        })
        .join('; ')}
      .
    </p>
  )
}

const TAGS = 'sheet-tags'

interface CellProps {
  form: FormState
  name: string
  label: string
  as: SheetField['as'] | 'time'
  choices?: Choice[] | undefined
  /** Tags of the yard are offered. */
  tags?: boolean
  wide?: boolean
}

/** One answer. Menus, not taps: at the desk the first letter chooses and Tab goes on. */
const Cell = ({ form, name, label, as, choices, tags = false, wide = false }: CellProps) => {
  const bad = form.problems.some((x: FieldProblem) => x.field === name)
  const invalid = bad ? { 'aria-invalid': 'true' as const } : {}
  if (as === 'list') return <TickCell form={form.typed} name={name} label={label} choices={choices ?? []} />
  const id = idOf(name)
  const value = one(form.typed, name)
  return (
    <p class={wide ? 'cell cell-wide' : 'cell'}>
      <label for={id}>{label}</label>
      {choices === undefined ? (
        <input
          id={id}
          name={name}
          type={as === 'time' ? 'time' : 'text'}
          value={value}
          inputmode={as === 'number' ? 'decimal' : undefined}
          maxlength={wide ? 2000 : 60}
          autocomplete="off"
          list={tags ? TAGS : undefined}
          {...invalid}
        />
      ) : (
        <select id={id} name={name} {...invalid}>
          <option value="">–</option>
          {choices.map((c) => (
            <option value={c.value} selected={c.value === value}>
              {c.label}
            </option>
          ))}
          {value !== '' && !choices.some((c) => c.value === value) ? (
            <option value={value} selected>
              {value}
            </option>
          ) : null}
        </select>
      )}
    </p>
  )
}

interface TickCellProps {
  form: Typed
  name: string
  label: string
  choices: Choice[]
}

const TickCell = ({ form, name, label, choices }: TickCellProps) => {
  const ticked = many(form, name)
  return (
    <fieldset class="cell cell-wide cell-ticks" id={idOf(name)}>
      <legend>{label}</legend>
      {choices.map((c) => (
        <label>
          <input type="checkbox" name={name} value={c.value} checked={ticked.includes(c.value)} /> {c.label}
        </label>
      ))}
    </fieldset>
  )
}
