/** The journal of a colony: newest first, what was corrected or taken back struck out, each line signed and dated. */

import type { Day } from '../days.ts'
import { Photos, useWords } from '../forms/index.ts'
import type { Entry } from '../journal/index.ts'
import { ACTION_OF_KIND } from '../people/index.ts'
import type { Joined } from '../store/index.ts'
import { entryWords, type Words } from '../words/index.ts'
import type { Frame } from './layout.tsx'

export interface JournalLine {
  entry: Entry
  /** Who entered it, and on which day. */
  recordedBy: string
  recordedOn: Day
  /** What took this entry's place: a correction, or a withdrawal. */
  superseded: { by: string; on: Day; withdrawn: boolean; reason: string | null } | null
}

interface JournalProps {
  lines: JournalLine[]
  /** Colonies that were united into this one: from their journals, and not to be corrected here. */
  joined: Joined[]
  frame: Frame
  /** Of the colony's page. */
  path: string
}

/** So many entries stand open; older ones are folded (judgement: what one asks at the box is the last visit). */
const SHOWN = 3

export const Journal = ({ lines, joined, frame, path }: JournalProps) => {
  const said = useWords().colony.journal
  const all = byDay(lines, joined)
  const older = all.slice(SHOWN)
  return (
    <section class="section" id="journal">
      <h2>{said.title}</h2>
      <Lines of={all.slice(0, SHOWN)} frame={frame} path={path} />
      {older.length === 0 ? null : (
        <details class="fold">
          <summary>
            <h3>{said.older(older.length)}</h3>
          </summary>
          <Lines of={older} frame={frame} path={path} />
        </details>
      )}
    </section>
  )
}

const Lines = ({
  of,
  frame,
  path,
}: { of: (JournalLine | Joined)[] } & Pick<JournalProps, 'frame' | 'path'>) => (
  <ol class="journal">
    {of.map((x) =>
      'entry' in x ? <Line line={x} frame={frame} path={path} /> : <JoinedLine joined={x} frame={frame} />,
    )}
  </ol>
)

/** Newest day first; what was united stands above what was written down at the box on that day. */
const byDay = (lines: JournalLine[], joined: Joined[]): (JournalLine | Joined)[] =>
  [...joined, ...lines]
    .map((x) => ({ x, on: 'entry' in x ? x.entry.on : x.on }))
    .sort((a, b) => b.on.localeCompare(a.on))
    .map(({ x }) => x)

const JoinedLine = ({ joined: j, frame }: { joined: Joined; frame: Frame }) => {
  const { colony, dates } = useWords()
  const said = colony.journal
  return (
    <li class="entry">
      <p class="entry-when">
        <time datetime={j.on}>{dates.day(j.on, frame.today)}</time>
        <span class="soft"> {j.by}</span>
      </p>
      <div class="entry-said">
        <p>
          <strong>{said.joined(j.tag)}</strong>
          {said.as}
          <a href={`/colony/${j.colony}`}>{said.journalOf(j.tag)}</a>
          {said.tells}
        </p>
      </div>
    </li>
  )
}

/** One's own entries, or anybody's; an intake or outcome only where one may make such. */
const mayCorrect = ({ entry, recordedBy }: JournalLine, frame: Frame): boolean =>
  frame.may('correct-any') || (recordedBy === frame.viewer?.name && frame.may(ACTION_OF_KIND[entry.kind]))

/** Who was at the box stands first; who entered it, and when, only where that was somebody else or on another day. */
function enteredWords({ entry, recordedBy, recordedOn }: JournalLine, today: Day, w: Words): string {
  const by = recordedBy === entry.by ? null : recordedBy
  const on = recordedOn === entry.on ? null : w.dates.day(recordedOn, today)
  return by === null && on === null ? '' : `, ${w.colony.journal.entered(by, on)}`
}

const Line = ({ line, frame, path }: { line: JournalLine } & Pick<JournalProps, 'frame' | 'path'>) => {
  const { entry: e, superseded } = line
  const unsent = frame.phone?.unsent.includes(e.id) ?? false
  const w = useWords()
  const said = w.colony.journal
  const day = w.dates.day(e.on, frame.today)
  const words = entryWords(e, frame.units, frame.today, frame.may('see-private'), w)
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
          {day}
          {e.at === undefined ? '' : ` ${e.at}`}
        </time>
        <span class="soft">
          {' '}
          {e.by}
          {enteredWords(line, frame.today, w)}
        </span>
      </p>
      <div class="entry-said">
        <p>{superseded === null ? text : <del>{text}</del>}</p>
        {e.replaces === undefined || e.kind === 'withdrawal' ? null : <p class="fine">{said.correction}</p>}
        {'photos' in e && e.photos !== undefined ? <Photos ids={e.photos} path={path} /> : null}
        {unsent ? (
          <p class="small">
            <a href={`/outbox#o-${e.id}`}>{said.waits}</a>
          </p>
        ) : null}
        {superseded === null ? null : (
          <p class="small">
            {superseded.withdrawn
              ? said.takenBack(superseded.by, w.dates.day(superseded.on, frame.today), superseded.reason)
              : said.corrected(superseded.by, w.dates.day(superseded.on, frame.today))}
          </p>
        )}
      </div>
      {superseded !== null || e.kind === 'withdrawal' || unsent || !mayCorrect(line, frame) ? null : (
        <p class="entry-ways">
          <a href={`/entry/${e.id}/correct`}>
            {said.correct}
            <span class="unseen">{said.which(words.title, day)}</span>
          </a>
          <a href={`/entry/${e.id}/withdraw`}>
            {said.takeBack}
            <span class="unseen">{said.which(words.title, day)}</span>
          </a>
        </p>
      )}
    </li>
  )
}
