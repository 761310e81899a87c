/** First step of taking in a spreadsheet: what each of its columns is. */
import type { ColumnProblem } from './ask.ts'
import { FIELDS, type Target } from './fields.ts'
import { targetField } from './form.ts'
import { Go, StepForm, StepPage, type StepProps, Wrong } from './kept.tsx'
import type { Mapping } from './mapping.ts'
import { DELIMITER_WORDS, FIELD_WORDS, TARGET_WORDS } from './page-words.ts'
import { DELIMITERS, type Delimiter } from './sheet.ts'

interface ColumnsProps extends StepProps {
  mapping: Mapping
  problems: ColumnProblem[]
}

/** Values of a column that are shown to recognise it by. */
const SAMPLES = 4

const TARGETS: readonly Target[] = [...FIELDS, 'to-note', 'leave-out']

export const ColumnsPage = (p: ColumnsProps) => {
  const { sheet } = p.mapping
  return (
    <StepPage of={p} step="Columns" title="What is in each column?">
      <Wrong heading="This does not work yet" problems={p.problems.map((x) => problemWords(x, p.mapping))} />
      <p>
        {sheet.rows.length} {sheet.rows.length === 1 ? 'line' : 'lines'} below the headings in line{' '}
        {sheet.headerLine}. The guesses are set; change what is wrong. Needed: the day of the intake or of the
        removal.
      </p>
      <StepForm of={p} shown={(name) => /^(column-|delimiter$|headerLine$)/.test(name)}>
        <ul class="columns">
          {sheet.header.map((_, column) => (
            <Column of={p} column={column} />
          ))}
        </ul>
        <Reading {...p} />
        <div class="save">
          <Go to="words" main>
            Next: words and units
          </Go>
        </div>
      </StepForm>
    </StepPage>
  )
}

const headingAt = ({ sheet }: Mapping, column: number): string =>
  sheet.header[column] || `column ${column + 1}`

const Column = ({ of: p, column }: { of: ColumnsProps; column: number }) => {
  const { sheet, targets } = p.mapping
  const name = targetField(column)
  const values = [...new Set(sheet.rows.map((r) => r.fields[column] ?? '').filter((v) => v !== ''))]
  const wrong = p.problems.some((x) => x.column === column)
  return (
    <li class={wrong ? 'column has-problem' : 'column'}>
      <div>
        <label for={`f-${name}`}>{headingAt(p.mapping, column)}</label>
        <p class="small soft samples">
          {values.length === 0 ? 'nothing in it' : values.slice(0, SAMPLES).join(' · ')}
          {values.length > SAMPLES ? ' …' : ''}
        </p>
      </div>
      <select id={`f-${name}`} name={name} aria-invalid={wrong ? 'true' : undefined}>
        {TARGETS.map((t) => (
          <option value={t} selected={t === targets[column]}>
            {TARGET_WORDS[t]}
          </option>
        ))}
      </select>
    </li>
  )
}

/** How the text was cut into cells, for when the guess was wrong. */
const Reading = ({ mapping: { sheet } }: ColumnsProps) => (
  <details class="caution" open={sheet.columns < 2}>
    <summary>The table was read wrongly?</summary>
    <div class="finder-more">
      <label class="stacked" for="f-delimiter">
        Columns are parted by
        <select id="f-delimiter" name="delimiter">
          {(Object.keys(DELIMITERS) as Delimiter[]).map((d) => (
            <option value={d} selected={d === sheet.delimiter}>
              {DELIMITER_WORDS[d]}
            </option>
          ))}
        </select>
      </label>
      <label class="stacked" for="f-headerLine">
        The headings are in line
        <input id="f-headerLine" type="text" inputmode="numeric" name="headerLine" value={sheet.headerLine} />
      </label>
    </div>
    <p class="buttons">
      <Go to="reread">Read it again</Go>
    </p>
  </details>
)

function problemWords(x: ColumnProblem, mapping: Mapping): string {
  const field = FIELD_WORDS[x.field]
  return x.column === null
    ? 'No column tells the day: choose the one with the day of the intake, or of the removal.'
    : `“${headingAt(mapping, x.column)}” is a second column for “${field}”: choose something else for one of them.`
}
