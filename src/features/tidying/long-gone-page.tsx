/** Colonies that nobody has seen for long: tick those that are gone, and close them at once. */

import { Save } from '../../forms/index.ts'
import { Crumb, type Frame, Layout } from '../../parts/index.ts'
import type { Tidied } from '../../store/index.ts'
import { dayWords, labelIn, OUTCOME } from '../../words/index.ts'
import { CLOSED_AS, LONG_DAYS, type LongGone } from './long-gone.ts'
import { Past } from './past.tsx'

interface LongGoneProps {
  frame: Frame
  id: string
  /** Not seen for more than so many days. */
  days: number
  colonies: LongGone[]
  past: readonly Tidied[]
  done: Tidied | null
  problems: string[]
}

/** Ticked from the start: not seen for a year, no colony stands in a holding yard (our choice). */
const SURELY_GONE = 365

export const LongGonePage = (p: LongGoneProps) => (
  <Layout frame={p.frame} title="Long gone" ways={false}>
    <Crumb to="/data">Data and backups</Crumb>
    <h1>Colonies long gone</h1>
    <Past {...p} of="long-gone" />
    <p>
      In the book they still stand in the yard, and nobody was at their box for more than {p.days} days.{' '}
      {[LONG_DAYS, 180, SURELY_GONE]
        .filter((d) => d !== p.days)
        .map((d, i) => (
          <>
            {i > 0 ? ', ' : ''}
            <a href={`/data/long-gone?days=${d}`}>more than {d} days</a>
          </>
        ))}
    </p>
    {p.colonies.length === 0 ? <p>There are none.</p> : <Close {...p} />}
  </Layout>
)

const Close = (p: LongGoneProps) => (
  <form method="post" action="/data/long-gone">
    <input type="hidden" name="id" value={p.id} />
    <input type="hidden" name="days" value={String(p.days)} />
    <fieldset class="group">
      <legend>Those that are gone</legend>
      <ul class="tidy-list">
        {p.colonies.map((c) => (
          <li>
            <label>
              <input type="checkbox" name="colony" value={c.id} checked={c.days > SURELY_GONE} />
              <span>
                <b>{c.tag}</b> {c.yard}, last seen {dayWords(c.lastSeen, p.frame.today)}, {c.days} days ago
              </span>
            </label>
          </li>
        ))}
      </ul>
    </fieldset>
    <div class="field">
      <label for="f-what">What became of them</label>
      <select id="f-what" name="what" class="wide">
        {CLOSED_AS.map((what) => (
          <option value={what} selected={what === 'unknown'}>
            {labelIn(OUTCOME, what)}
          </option>
        ))}
      </select>
    </div>
    <div class="field">
      <label for="f-day">On which day</label>
      <p class="hint">
        With the day of the last sighting, Review follows each for as long as it was seen. Without a day it
        counts in what became of them, and in no curve.
      </p>
      <select id="f-day" name="day" class="wide">
        <option value="last-seen">the day of the last sighting</option>
        <option value="not-known">not known</option>
      </select>
    </div>
    <Save>Close them</Save>
  </form>
)
