/** The journal of a colony: newest first, what was corrected or taken back struck out, each line signed and dated. */
import type { Entry } from '../../src/journal/entry.ts'
import { ACTION_OF_KIND } from '../../src/people/permissions.ts'
import { dayWords } from '../words/dates.ts'
import { entryWords } from '../words/entries.ts'
import type { Frame } from './layout.tsx'
import { Photos } from './photo-field.tsx'

export interface JournalLine {
  entry: Entry
  recordedBy: string
  /** What took this entry's place: a correction, or a withdrawal. */
  superseded: { by: string; on: string; withdrawn: boolean; reason: string | null } | null
}

interface JournalProps {
  lines: JournalLine[]
  frame: Frame
  /** Of the colony's page. */
  path: string
}

export const Journal = ({ lines, frame, path }: JournalProps) => (
  <section class="section">
    <h2>Journal</h2>
    <ol class="journal">
      {lines.map((line) => (
        <Line line={line} frame={frame} path={path} />
      ))}
    </ol>
  </section>
)

/** One's own entries, or anybody's; an intake or outcome only where one may make such. */
const mayCorrect = ({ entry, recordedBy }: JournalLine, frame: Frame): boolean =>
  frame.may('correct-any') || (recordedBy === frame.viewer?.name && frame.may(ACTION_OF_KIND[entry.kind]))

const Line = ({ line, frame, path }: { line: JournalLine } & Pick<JournalProps, 'frame' | 'path'>) => {
  const { entry: e, superseded } = line
  const unsent = frame.phone?.unsent.includes(e.id) ?? false
  const words = entryWords(e, frame.units, frame.today, frame.may('see-private'))
  const text = (
    <>
      <strong>{words.title}</strong>
      {words.facts.length === 0 ? null : <>: {words.facts.join('; ')}</>}
      {words.note === null ? null : <span class="entry-note">{words.note}</span>}
    </>
  )
  return (
    <li class={superseded === null ? 'entry' : 'entry entry-struck'} id={`e-${e.id}`}>
      <p class="entry-when">
        <time datetime={e.at === undefined ? e.on : `${e.on}T${e.at}`}>
          {dayWords(e.on, frame.today)}
          {e.at === undefined ? '' : ` ${e.at}`}
        </time>
        <span class="soft"> {line.recordedBy}</span>
      </p>
      <div class="entry-said">
        <p>{superseded === null ? text : <del>{text}</del>}</p>
        {e.replaces === undefined || e.kind === 'withdrawal' ? null : <p class="fine">a correction</p>}
        {'photos' in e && e.photos !== undefined ? <Photos ids={e.photos} path={path} /> : null}
        {unsent ? (
          <p class="small">
            <a href={`/outbox#o-${e.id}`}>Waits on this phone to be sent</a>
          </p>
        ) : null}
        {superseded === null ? null : (
          <p class="small">
            {superseded.withdrawn ? 'Taken back' : 'Corrected'} by {superseded.by}, {superseded.on}
            {superseded.reason === null ? '' : `: ${superseded.reason}`}
          </p>
        )}
      </div>
      {superseded !== null || e.kind === 'withdrawal' || unsent || !mayCorrect(line, frame) ? null : (
        <p class="entry-ways">
          <a href={`/entry/${e.id}/correct`}>
            Correct
            <span class="unseen">
              {' '}
              {words.title} of {dayWords(e.on, frame.today)}
            </span>
          </a>
          <a href={`/entry/${e.id}/withdraw`}>
            Take back
            <span class="unseen">
              {' '}
              {words.title} of {dayWords(e.on, frame.today)}
            </span>
          </a>
        </p>
      )}
    </li>
  )
}
