/** An entry that waits: what it says, why it does not go, and what can be done about it. */

import type { Child } from 'hono/jsx'
import { inWords } from '../../days.ts'
import { labelOf, sentenceOf } from '../../forms/index.ts'
import type { Entry } from '../../journal/index.ts'
import type { Frame } from '../../parts/index.ts'
import { dayWords, instantWords, KIND_WORDS, problemWords } from '../../words/index.ts'
import { type OutboxItem, type OwnItem, type TheirItem, wordsOf } from './outbox-items.ts'

interface LineProps<Item extends OutboxItem> {
  frame: Frame
  item: Item
}

const Line = ({ item, frame, children }: LineProps<OutboxItem> & { children: Child }) => (
  <li class={item.state === 'refused' ? 'line line-late' : 'line'} id={`o-${item.id}`}>
    <div class="line-margin">
      <span class="tag">{item.tag}</span>
      <span class="stand">{dayWords(item.on, frame.today)}</span>
    </div>
    <div class="line-body">{children}</div>
  </li>
)

export const TheirLine = ({ item, frame }: LineProps<TheirItem>) => {
  const kind = KIND_WORDS[item.kind]
  return (
    <Line item={item} frame={frame}>
      <p class="line-what">
        <strong>{kind.charAt(0).toUpperCase() + kind.slice(1)}</strong>
      </p>
      <p class="fine">Goes when {item.owner} signs in on this phone.</p>
    </Line>
  )
}

export const OwnLine = ({ item, frame }: LineProps<OwnItem>) => {
  const { entry: e } = item
  const words = wordsOf(item, frame)
  return (
    <Line item={item} frame={frame}>
      <p class="line-what">
        <strong>{words.title}</strong>
        {words.facts.length === 0 ? null : <>: {words.facts.join('; ')}</>}
      </p>
      {words.note === null ? null : <p class="entry-note">{words.note}</p>}
      <DayInDoubt item={item} frame={frame} />
      {item.state === 'refused' ? (
        <div class="outbox-refused">
          <p>
            <b>Not accepted.</b>
          </p>
          <ul>
            {item.problems.map((p) => (
              <li>
                {sentenceOf(
                  p.field === '' ? 'It' : fieldName(e, p.field),
                  problemWords(p.message, frame.today),
                )}
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      <p class="fine">
        Kept {instantWords(item.keptAt, frame.zone, frame.today)}, signed {e.by}.{' '}
        {item.state === 'resting' ? 'Goes after the one it rests on has been mended.' : null}
      </p>
      <Ways item={item} />
    </Line>
  )
}

/** Kept on a phone whose clock was off: nothing goes before somebody has looked at its day. */
const DayInDoubt = ({ item, frame }: LineProps<OwnItem>) =>
  item.state !== 'day' || item.clock === null ? null : (
    <div class="outbox-refused">
      <p>
        <b>Was it {inWords(item.on)}?</b> This phone said {inWords(item.clock.phone)} when it was{' '}
        {inWords(item.clock.yard)} in the yard. It goes once you have said so.
      </p>
      <form method="post" action={`/outbox/${item.n}/day-right`}>
        <button class="button button-do" type="submit">
          Yes, {dayWords(item.on, frame.today)}
          <span class="unseen">, of {item.tag}</span>
        </button>
      </form>
    </div>
  )

const fieldName = (e: Entry, field: string): string =>
  field === 'colony' ? (e.kind === 'intake' ? 'Tag' : 'Colony') : labelOf(e.kind, field) || 'It'

const Ways = ({ item }: { item: OwnItem }) => (
  <div class="buttons">
    {item.change === null ? null : (
      <a class={item.state === 'refused' ? 'button button-do' : 'button'} href={item.change}>
        {item.state === 'refused' ? 'Mend it' : 'Change it'}
        <span class="unseen">
          {' '}
          ({item.tag}, {item.entry.kind})
        </span>
      </a>
    )}
    {item.state === 'refused' ? (
      <form method="post" action={`/outbox/${item.n}/again`}>
        <button class="button" type="submit">
          Send as it is
        </button>
      </form>
    ) : null}
    {item.removable ? (
      <a class="button button-plain" href={`/outbox/${item.n}/take-out`}>
        Take it out
      </a>
    ) : null}
    {item.back === null ? null : (
      <a class="button button-plain" href={item.back}>
        Take it back
      </a>
    )}
  </div>
)
