/** Where the phone says, while one taps, what was seen proves and what to do now. Needs JavaScript; the form does not. */
import { raw } from 'hono/html'
import type { Words } from '../../words/index.ts'

/** `data` is JSON; every "<" in it is escaped, so that nothing in it can end the block. */
export const LivePanel = ({ data, words }: { data: string; words: Words['record']['live'] }) => (
  <aside class="live" id="live" aria-live="polite" aria-label={words.label} hidden>
    <details>
      <summary class="opens">
        <span>{words.doNow}</span> <strong id="live-do" />
      </summary>
      <div class="live-in" id="live-text" />
    </details>
    <script type="application/json" id="live-data">
      {raw(data.replaceAll('<', '\\u003c'))}
    </script>
  </aside>
)
