/** An entry that waits: what it says, why it does not go, and what can be done about it. */

import type { Child } from 'hono/jsx'
import { labelOf, Photos, sentenceOf } from '../../forms/index.ts'
import type { Entry } from '../../journal/index.ts'
import type { Frame } from '../../parts/index.ts'
import { capital, problemWords, type Words } from '../../words/index.ts'
import { type OutboxItem, type OwnItem, photosOf, type TheirItem, wordsOf } from './outbox-items.ts'

interface LineProps<Item extends OutboxItem> {
  frame: Frame
  item: Item
}

const Line = ({ item, frame, children }: LineProps<OutboxItem> & { children: Child }) => (
  <li class={item.state === 'refused' ? 'line line-late' : 'line'} id={`o-${item.id}`}>
    <div class="line-margin">
      <span class="tag">{item.tag}</span>
      <span class="stand">{frame.words.dates.day(item.on, frame.today)}</span>
    </div>
    <div class="line-body">{children}</div>
  </li>
)

export const TheirLine = ({ item, frame }: LineProps<TheirItem>) => (
  <Line item={item} frame={frame}>
    <p class="line-what">
      <strong>{capital(frame.words.entries.kinds[item.kind])}</strong>
    </p>
    <p class="fine">{frame.words.outbox[item.stuck ? 'stuck' : 'theirs'](item.owner)}</p>
  </Line>
)

export const OwnLine = ({ item, frame }: LineProps<OwnItem>) => {
  const { entry: e } = item
  const words = wordsOf(item, frame)
  const { outbox, dates } = frame.words
  return (
    <Line item={item} frame={frame}>
      <p class="line-what">
        <strong>{words.title}</strong>
        {words.facts.length === 0 ? null : <>: {words.facts.join('; ')}</>}
      </p>
      {words.note === null ? null : <p class="entry-note">{words.note}</p>}
      <Photos ids={photosOf(item)} />
      <DayInDoubt item={item} frame={frame} />
      {item.state === 'refused' ? (
        <Refused
          frame={frame}
          why={item.problems.map((p) =>
            sentenceOf(
              p.field === '' ? outbox.it : fieldName(e, p.field, frame.words),
              problemWords(p.message, frame.today),
              frame.words,
            ),
          )}
        />
      ) : null}
      <p class="fine">
        {outbox.kept(dates.instant(item.keptAt, frame.zone, frame.today), e.by)}{' '}
        {item.state === 'resting' ? outbox.resting : null}
      </p>
      <Ways item={item} words={frame.words} />
    </Line>
  )
}

/** Why it was not accepted, a line each. */
export const Refused = ({ frame, why }: { frame: Frame; why: string[] }) => (
  <div class="outbox-refused">
    <p>
      <b>{frame.words.outbox.notAccepted}.</b>
    </p>
    <ul>
      {why.map((line) => (
        <li>{line}</li>
      ))}
    </ul>
  </div>
)

/** Kept on a phone whose clock was off: nothing goes before somebody has looked at its day. */
const DayInDoubt = ({ item, frame }: LineProps<OwnItem>) =>
  item.state !== 'day' || item.clock === null ? null : (
    <div class="outbox-refused">
      <p>
        <b>{frame.words.outbox.doubt.asks(frame.words.dates.dayAlone(item.on))}</b>{' '}
        {frame.words.outbox.doubt.says(
          frame.words.dates.dayAlone(item.clock.phone),
          frame.words.dates.dayAlone(item.clock.yard),
        )}
      </p>
      <form method="post" action={`/outbox/${item.n}/day-right`}>
        <button class="button button-do" type="submit">
          {frame.words.outbox.doubt.yes(frame.words.dates.day(item.on, frame.today))}
          <span class="unseen">{frame.words.outbox.doubt.of(item.tag)}</span>
        </button>
      </form>
    </div>
  )

const fieldName = (e: Entry, field: string, words: Words): string =>
  field === 'colony'
    ? words.outbox[e.kind === 'intake' ? 'tag' : 'colony']
    : labelOf(e.kind, field, words) || words.outbox.it

const Ways = ({ item, words: { outbox, entries } }: { item: OwnItem; words: Words }) => (
  <div class="buttons">
    {item.change === null ? null : (
      <a class={item.state === 'refused' ? 'button button-do' : 'button'} href={item.change}>
        {item.state === 'refused' ? outbox.mend : outbox.change}
        <span class="unseen">
          {' '}
          ({item.tag}, {entries.kinds[item.entry.kind]})
        </span>
      </a>
    )}
    {item.state === 'refused' ? (
      <form method="post" action={`/outbox/${item.n}/again`}>
        <button class="button" type="submit">
          {outbox.again}
        </button>
      </form>
    ) : null}
    {item.removable ? (
      <a class="button button-plain" href={`/outbox/${item.n}/take-out`}>
        {outbox.takeOut}
      </a>
    ) : null}
    {item.back === null ? null : (
      <a class="button button-plain" href={item.back}>
        {outbox.takeBack}
      </a>
    )}
  </div>
)
