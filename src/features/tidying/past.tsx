/** What was changed many at once: just now, and before, each to be taken back. */

import type { Frame } from '../../parts/index.ts'
import type { Tidied } from '../../store/index.ts'
import { instantWords, labelIn, OUTCOME } from '../../words/index.ts'

/** Example: 'Wall, WALL are wall: 12 entries'. */
const changeWords = (t: Tidied): string =>
  t.what === 'long-gone'
    ? `${t.entries} ${t.entries === 1 ? 'colony' : 'colonies'} closed: ${labelIn(OUTCOME, t.to).toLowerCase()}`
    : `${t.from.map((name) => `“${name}”`).join(', ')} became “${t.to}”, ${t.entries} ${t.entries === 1 ? 'entry' : 'entries'}`

export const Past = (p: {
  frame: Frame
  of: 'names' | 'long-gone'
  past: readonly Tidied[]
  done: Tidied | null
  problems: string[]
}) => {
  const past = p.past.filter((t) => (t.what === 'long-gone') === (p.of === 'long-gone'))
  return (
    <>
      {p.problems.length === 0 ? null : (
        <div class="notice notice-late" role="alert">
          <h2>Nothing was changed</h2>
          <ul class="problem-list">
            {p.problems.map((text) => (
              <li>{text}</li>
            ))}
          </ul>
        </div>
      )}
      {p.done === null ? null : (
        <div class="notice notice-do" role="status">
          <p>
            {p.done.takenBack === undefined
              ? `Done: ${changeWords(p.done)}.`
              : `Taken back: ${changeWords(p.done)}.`}
          </p>
        </div>
      )}
      {past.length === 0 ? null : (
        <details class="also">
          <summary>Changed before, and to be taken back ({past.length})</summary>
          <ul class="imports">
            {past.map((t) => (
              <li class="import">
                <div>
                  {changeWords(t)}
                  <p class="small soft">
                    {instantWords(t.at, p.frame.zone, p.frame.today)}, by {t.by}
                    {t.takenBack === undefined ? '' : '; taken back'}
                  </p>
                </div>
                {t.takenBack === undefined ? (
                  <form method="post" action="/data/names/back">
                    <input type="hidden" name="change" value={t.id} />
                    <button class="button button-plain" type="submit">
                      Take it back
                    </button>
                  </form>
                ) : null}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  )
}
