/** Taking back a whole import: what goes, or what was entered on top and keeps it. */

import { Crumb, type Frame, Layout } from '../../parts/index.ts'
import { dayWords, entryWords, instantWords } from '../../words/index.ts'
import { IMPORT, Wrong } from './kept.tsx'
import type { ImportState, OnTop } from './undo.ts'

interface UndoProps {
  frame: Frame
  state: ImportState
  problems: string[]
}

const SHOWN = 40

export const UndoPage = (p: UndoProps) => {
  const { note, standing, onTop } = p.state
  const colonies = new Set(standing.map((s) => s.colony)).size
  return (
    <Layout frame={p.frame} title="Take an import back" ways={false}>
      <Crumb to={IMPORT}>Colonies in and out</Crumb>
      <h1>Take back {note.source}?</h1>
      <Wrong heading="Nothing was taken back" problems={p.problems} />
      <p>
        Taken in {instantWords(note.takenAt, p.frame.zone, p.frame.today)} by {note.takenBy}: {note.colonies}{' '}
        {note.colonies === 1 ? 'colony' : 'colonies'}.
      </p>
      {standing.length === 0 ? (
        <p>All of it has been taken back already.</p>
      ) : onTop.length > 0 ? (
        <Kept {...p} />
      ) : (
        <form method="post" action={`${IMPORT}/undo`}>
          <input type="hidden" name="import" value={note.id} />
          <p>
            {colonies} {colonies === 1 ? 'colony goes' : 'colonies go'} out of the book again:{' '}
            {standing.length} entries are withdrawn, signed by you and dated today. They stay in the history
            of changes.
          </p>
          <div class="save">
            <button class="button button-late" type="submit">
              Take it back
            </button>
            <a class="button button-plain" href={IMPORT}>
              Leave it
            </a>
          </div>
        </form>
      )}
    </Layout>
  )
}

/** What was entered since: taking the colony away would leave it hanging in the air. */
const Kept = ({ state: { onTop }, frame }: UndoProps) => (
  <>
    <div class="notice notice-late">
      <h2>Not as a whole: something was entered on top</h2>
      <p>
        Withdraw these entries first, or leave the import and withdraw single colonies instead (their intake,
        in the colony’s journal).
      </p>
    </div>
    <ul class="journal">
      {onTop.slice(0, SHOWN).map((t) => (
        <OnTopLine of={t} frame={frame} />
      ))}
    </ul>
    {onTop.length > SHOWN ? <p>And {onTop.length - SHOWN} more.</p> : null}
  </>
)

const OnTopLine = ({ of: t, frame }: { of: OnTop; frame: Frame }) => (
  <li class="entry">
    <p class="entry-when">
      <time datetime={t.entry.on}>{dayWords(t.entry.on, frame.today)}</time>
      <span class="soft"> {t.recordedBy}</span>
    </p>
    <p>
      <a href={`/colony/${encodeURIComponent(t.colony)}#e-${t.entry.id}`}>{t.tag}</a>:{' '}
      {entryWords(t.entry, frame.units, frame.today, frame.may('see-private')).title}
    </p>
  </li>
)
