/** The history of changes: who entered, corrected and withdrew what, newest first. */

import { Crumb, type Frame, Layout } from '../../parts/index.ts'
import { dayWords, entryWords, instantWords } from '../../words/index.ts'
import type { Change } from './changes.ts'

interface ChangesProps {
  frame: Frame
  /** The colony whose changes these are; null: the whole yard's. */
  colony: { tag: string; id: string; path: string } | null
  changes: (Change & { path: string })[]
  /** Where the next page begins. */
  next: number | null
}

const DID: Record<Change['did'], string> = {
  entered: 'entered',
  corrected: 'corrected',
  withdrew: 'took back',
}

export const ChangesPage = ({ frame, colony, changes, next }: ChangesProps) => {
  const csv = colony === null ? '/changes/csv' : `/changes/csv?colony=${encodeURIComponent(colony.id)}`
  const here = colony === null ? '/changes' : `${colony.path}/changes`
  return (
    <Layout frame={frame} title="History of changes">
      {colony === null ? null : <Crumb to={colony.path}>{colony.tag}</Crumb>}
      <h1>History of changes{colony === null ? '' : ` of ${colony.tag}`}</h1>
      <p>
        What was written down, by whom and when. Nothing is ever overwritten: a correction is a new entry
        beside the old one.
      </p>
      {frame.mayOpen('/changes') ? (
        <p class="buttons">
          <a class="button" href={csv}>
            All of it as CSV
          </a>
          {colony === null ? null : (
            <a class="button" href="/changes">
              The whole yard
            </a>
          )}
        </p>
      ) : null}
      {changes.length === 0 ? <p>Nothing yet.</p> : null}
      <ol class="journal">
        {changes.map((c) => (
          <Line change={c} frame={frame} />
        ))}
      </ol>
      {next === null ? null : (
        <p class="buttons">
          <a class="button" href={`${here}?before=${next}`}>
            Older
          </a>
        </p>
      )}
    </Layout>
  )
}

const Line = ({ change: c, frame }: { change: ChangesProps['changes'][number]; frame: Frame }) => {
  const subject = c.did === 'withdrew' && c.before !== null ? c.before : c.entry
  const words = entryWords(subject, frame.units, frame.today, frame.may('see-private'))
  return (
    <li class="entry">
      <p class="entry-when">
        <time datetime={c.at}>{instantWords(c.at, frame.zone, frame.today)}</time>
        <span class="soft"> {c.by}</span>
      </p>
      <div class="entry-said">
        <p>
          {DID[c.did]} <strong>{words.title}</strong> of {dayWords(subject.on, frame.today)},{' '}
          <a class="nowrap" href={`${c.path}#e-${c.entry.id}`}>
            {c.tag}
          </a>
          {c.entry.by === c.by ? '' : `, signed ${c.entry.by}`}
        </p>
        {c.did === 'corrected' ? (
          <ul class="small">
            {c.fields.length === 0 ? <li>nothing but who and when</li> : null}
            {c.fields.map((f) => (
              <li>
                {f.path}: <del>{shown(f.from)}</del> <ins>{shown(f.to)}</ins>
              </li>
            ))}
          </ul>
        ) : (
          <p class="small">
            {[...words.facts, ...(words.note === null ? [] : [words.note])].join('; ')}
            {c.entry.kind === 'withdrawal' ? ` (reason: ${c.entry.reason})` : ''}
          </p>
        )}
      </div>
    </li>
  )
}

const shown = (value: unknown): string =>
  value === undefined ? 'nothing' : typeof value === 'string' ? value : JSON.stringify(value)
