/** Colonies in and out: an old spreadsheet taken in, the colonies as CSV, and imports taken back. */

import { type Frame, Layout } from '../../parts/index.ts'
import type { ImportNote } from '../../store/index.ts'
import { instantWords } from '../../words/index.ts'
import { COLUMNS, REQUIRED } from './colonies-csv.ts'
import { IMPORT, Wrong } from './kept.tsx'

export interface ImportRowShown extends ImportNote {
  /** Colonies of it that are in the book now. */
  left: number
}

interface StartProps {
  frame: Frame
  imports: ImportRowShown[]
  /** The import just made. */
  taken: ImportNote | null
  /** The import just taken back. */
  undone: ImportNote | null
  problems: string[]
  /** What was pasted, kept when it could not be read. */
  pasted: string
}

export const ColoniesPage = (p: StartProps) => (
  <Layout frame={p.frame} title="Colonies in and out">
    <h1>Colonies in and out</h1>
    {p.taken === null ? null : <Taken note={p.taken} />}
    {p.undone === null ? null : (
      <div class="notice notice-do" role="status">
        <p>
          Taken back: {p.undone.source}. Its entries stay in the history of changes, struck out, with who took
          them back and when.
        </p>
      </div>
    )}
    <Wrong heading="Nothing was read" problems={p.problems} />
    <section class="section">
      <h2>Take in an old spreadsheet</h2>
      <p>
        One line a colony, any headings, any order of columns. You say what each column is and what its words
        mean, and see what will be made before anything is written. A whole import can be taken back.
      </p>
      <form method="post" action={IMPORT} enctype="multipart/form-data" class="form-alone">
        <div class="field">
          <label for="f-file">A file of text: CSV, or with semicolons or tabs</label>
          <span class="control">
            <input id="f-file" type="file" name="file" accept=".csv,.tsv,.txt,text/csv,text/plain" />
          </span>
        </div>
        <div class="field">
          <label for="f-pasted">
            Or copy the cells in your spreadsheet, headings too, and paste them here
          </label>
          <textarea id="f-pasted" name="pasted" rows={5} spellcheck={false}>
            {p.pasted}
          </textarea>
        </div>
        <div class="save">
          <button class="button button-do" type="submit" name="go" value="read">
            Read it
          </button>
        </div>
      </form>
      <details class="caution">
        <summary>Headings that need no questions</summary>
        <p class="small copyable">{COLUMNS.join(',')}</p>
        <p class="small">
          Needed: {REQUIRED.join(', ')}. Days as 2024-05-31, temperatures in °C, frames in quarters; no
          outcome: still in the yard.
        </p>
        <p class="buttons">
          <a class="button button-plain" href={`${IMPORT}/empty.csv`} download>
            An empty sheet with these headings
          </a>
        </p>
      </details>
    </section>
    <section class="section">
      <h2>All colonies as CSV</h2>
      <p>
        One line a colony: where from, its queen and brood at intake, and what became of it. Without
        customers.
      </p>
      <p class="buttons">
        <a class="button" href={`${IMPORT}/colonies.csv`} download>
          Colonies as CSV
        </a>
      </p>
    </section>
    {p.imports.length === 0 ? null : <Imports {...p} />}
  </Layout>
)

const colonies = (n: number): string => (n === 1 ? '1 colony' : `${n} colonies`)

const Taken = ({ note }: { note: ImportNote }) => (
  <div class="notice notice-do" role="status">
    <h2>
      {colonies(note.colonies)} taken in from {note.source}
    </h2>
    <p class="buttons">
      <a class="button" href="/review">
        What they say: Review
      </a>
      <a class="button" href="/yard?show=all&amp;sort=tag">
        See them in the yard
      </a>
      <a class="button button-plain" href={`${IMPORT}/undo?import=${note.id}`}>
        Take it all back
      </a>
    </p>
  </div>
)

const Imports = ({ imports, frame }: StartProps) => (
  <section class="section">
    <h2>Imports</h2>
    <ul class="imports">
      {imports.map((i) => (
        <li class="import">
          <div>
            <b>{i.source}</b>
            <p class="small soft">
              {colonies(i.colonies)}, {instantWords(i.takenAt, frame.zone, frame.today)}, by {i.takenBy}
              {i.left === 0 ? '; taken back' : i.left < i.colonies ? `; ${i.left} still in the book` : ''}
            </p>
          </div>
          {i.left === 0 ? null : (
            <a class="button button-plain" href={`${IMPORT}/undo?import=${i.id}`}>
              Take it back
            </a>
          )}
        </li>
      ))}
    </ul>
  </section>
)
