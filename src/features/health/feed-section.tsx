/** What a colony was fed, and what it needs where nothing comes in. */

import type { Frame } from '../../parts/index.ts'
import { dayAndDistance, dayWords, weight } from '../../words/index.ts'
import { type Health, LATELY_DAYS } from './health.ts'
import { combWords, feedWords, needBasis, needWords } from './words.ts'

interface FeedProps {
  health: Health
  frame: Frame
  path: string
  /** Still in the yard. */
  here: boolean
}

export const FeedSection = ({ health: h, path, frame, here }: FeedProps) => (
  <section class="section">
    <h2>Feed</h2>
    {h.stores === null ? null : (
      <p>
        Stores: <b>{h.stores.level}</b>, {dayAndDistance(h.stores.on, frame.today)}.
      </p>
    )}
    {h.need === null ? (
      <p>Nobody has counted the bees, so no need is reckoned. Count frames of bees at the next visit.</p>
    ) : (
      <>
        <p>
          Where nothing comes in they need <strong>{needWords(h.need, frame.units)}</strong>.{' '}
          {combWords(frame.units)}
        </p>
        <p class="fine">
          {needBasis(h.need, frame.today)} An estimate: 7 mg of food a day for an adult, 18 mg for an open
          brood cell (Khoury, Barron & Myerscough 2013); half as much or twice as much is no surprise.
        </p>
      </>
    )}
    <p>
      Given in the last {LATELY_DAYS} days:{' '}
      {h.lately.sugarKg === 0 ? 'no sugar' : `${weight(h.lately.sugarKg, frame.units)} of sugar`}
      {h.lately.unmeasured === 0 ? '' : `, and ${h.lately.unmeasured} without an amount noted`}.
    </p>
    {h.feeds.length === 0 ? null : (
      <ul class="feeds">
        {[...h.feeds].reverse().map((f) => (
          <li>
            <span class="soft">{dayWords(f.on, frame.today)}</span> {feedWords(f, frame.units)}
          </li>
        ))}
      </ul>
    )}
    <p class="fine">
      Inside the hive, no spills, entrance small, towards evening. Never honey of unknown origin: it carries
      foulbrood.
      {h.sprayed ? ' This colony was sprayed: feed none of its own honey back.' : ''}
    </p>
    {here ? (
      <div class="buttons">
        <a class="button" href={`${path}/feed`}>
          Record feed
        </a>
      </div>
    ) : null}
  </section>
)
