/** The beekeeper's list of what phones could not hand in: what was seen, why it is not in the book, whom to ask. */
import { labelOf, sentenceOf } from '../../forms/index.ts'
import { entry as entrySchema } from '../../journal/index.ts'
import { type Frame, Layout } from '../../parts/index.ts'
import type { RefusedEntry } from '../../store/index.ts'
import { dayWords, entryWords, instantWords, problemWords } from '../../words/index.ts'

interface RefusedProps {
  frame: Frame
  entries: (RefusedEntry & { path: string | null; closed: boolean })[]
  /** Just tried again, and refused again. */
  again: string | null
  /** Just dealt with. */
  done: 'taken' | 'settled' | null
}

export const RefusedPage = ({ frame, entries, again, done }: RefusedProps) => (
  <Layout frame={frame} title="Not in the book">
    <h1>Not in the book yet</h1>
    {done === null ? null : (
      <div class="notice notice-do" role="status">
        <p>{done === 'taken' ? 'It is in the book.' : 'It is off the list; the book is as it was.'}</p>
      </div>
    )}
    <p class="soft">
      {entries.length === 0
        ? 'Everything that phones have sent is in the book.'
        : 'Seen at a box and written down, but not in the book: ask the person, take it in, or settle it. What is accepted meanwhile leaves this list by itself.'}
    </p>
    <ol class="lines">
      {entries.map((e) => (
        <li class="line line-late" id={`r-${e.id}`}>
          <div class="line-margin">
            {e.path === null ? (
              <span class="tag">{e.tag}</span>
            ) : (
              <a class="tag" href={e.path}>
                {e.tag}
              </a>
            )}
          </div>
          <div class="line-body">
            <Said e={e} frame={frame} />
            <p>
              <b>Ask {e.person}.</b> <Why e={e} frame={frame} closed={e.closed} />
            </p>
            {again === e.id ? <p class="problem">Still not accepted.</p> : null}
            <p class="fine">
              Came {instantWords(e.receivedAt, frame.zone, frame.today)}
              {e.sentBy === e.person ? '' : `, from a phone on which ${e.sentBy} was signed in`}.
            </p>
            <div class="buttons">
              <form method="post" action={`/refused/${e.id}/take`}>
                <button class="button button-do" type="submit">
                  Take it in as it is<span class="unseen">: {e.tag}</span>
                </button>
              </form>
              <form method="post" action={`/refused/${e.id}/settle`}>
                <button class="button" type="submit">
                  Settled otherwise<span class="unseen">: {e.tag}</span>
                </button>
              </form>
            </div>
          </div>
        </li>
      ))}
    </ol>
  </Layout>
)

/** What was seen, in words; where no schema fits, as it came. */
const Said = ({ e, frame }: { e: RefusedEntry; frame: Frame }) => {
  const parsed = entrySchema.safeParse(withoutTag(e.entry))
  if (!parsed.success) return <p class="entry-note">{JSON.stringify(e.entry).slice(0, 600)}</p>
  const { title, facts, note } = entryWords(parsed.data, frame.units, frame.today, true)
  return (
    <>
      <p class="line-what">
        {dayWords(parsed.data.on, frame.today)}: <strong>{title}</strong>
        {facts.length === 0 ? '' : `: ${facts.join('; ')}`}
      </p>
      {note === null ? null : <p class="entry-note">{note}</p>}
    </>
  )
}

const Why = ({ e, frame, closed }: { e: RefusedEntry; frame: Frame; closed: boolean }) => {
  const parsed = entrySchema.safeParse(withoutTag(e.entry))
  const kind = parsed.success ? parsed.data.kind : null
  return (
    <>
      {e.problems.length === 0
        ? `It waits on a phone for ${e.person} to sign in again.`
        : e.problems
            .map((p) => {
              const label = kind === null || p.field === '' ? 'It' : labelOf(kind, p.field) || 'It'
              return `${sentenceOf(label, problemWords(p.message, frame.today))}.`
            })
            .join(' ')}
      {closed ? ` ${e.tag} has left the yard: take back how it left first if that was wrong.` : ''}
    </>
  )
}

/** A phone sends the tag along, which is no field of an entry. */
export function withoutTag(entry: unknown): unknown {
  if (typeof entry !== 'object' || entry === null) return entry
  const { tag: _tag, keptAt: _keptAt, ...rest } = entry as Record<string, unknown>
  return rest
}
