/** What a colony was fed, and what it needs where nothing comes in. */

import type { Frame } from '../../parts/index.ts'
import { weight } from '../../words/index.ts'
import { type Health, LATELY_DAYS } from './health.ts'
import { combWords, feedWords, needBasis, needWords } from './words.ts'

interface FeedProps {
  health: Health
  frame: Frame
  path: string
  /** Still in the yard. */
  here: boolean
}

export const FeedSection = ({ health: h, path, frame, here }: FeedProps) => {
  const { words } = frame
  const said = words.health.feed
  return (
    <section class="section">
      <h2>{said.title}</h2>
      {h.stores === null ? null : (
        <p>
          {said.stores} <b>{said.levels[h.stores.level]}</b>,{' '}
          {words.dates.dayAndDistance(h.stores.on, frame.today)}.
        </p>
      )}
      {h.need === null ? (
        <p>{said.uncounted}</p>
      ) : (
        <>
          <p>
            {said.needBefore}
            <strong>{needWords(h.need, frame.units, words)}</strong>. {combWords(frame.units, words)}
          </p>
          <p class="fine">
            {needBasis(h.need, frame.today, words)} {said.estimate}
          </p>
        </>
      )}
      <p>
        {said.lately(
          LATELY_DAYS,
          h.lately.sugarKg === 0 ? null : weight(h.lately.sugarKg, frame.units),
          h.lately.unmeasured,
        )}
      </p>
      {h.feeds.length === 0 ? null : (
        <ul class="feeds">
          {[...h.feeds].reverse().map((f) => (
            <li>
              <span class="soft">{words.dates.day(f.on, frame.today)}</span>{' '}
              {feedWords(f, frame.units, words)}
            </li>
          ))}
        </ul>
      )}
      <p class="fine">
        {said.how}
        {h.sprayed ? said.sprayed : ''}
      </p>
      {here ? <RecordLink to={`${path}/feed`} words={said.record} /> : null}
    </section>
  )
}

/** To the form of what this section is of. */
export const RecordLink = ({ to, words }: { to: string; words: string }) => (
  <div class="buttons">
    <a class="button" href={to}>
      {words}
    </a>
  </div>
)
