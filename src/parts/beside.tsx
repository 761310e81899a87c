/**
 * On a wide screen (1100 px) a list and one of its boxes stand side by side, filled in by web/islands/beside.ts. On a phone, and
 * without scripts, there is the page alone.
 */
import type { Child } from 'hono/jsx'
import { useWords } from '../forms/index.ts'

/** The browser code that goes with it, by source name. */
export const BESIDE = 'islands/beside.ts'

/** A list; beside it the box chosen in it. What leads to a box carries `data-box`, the path of its page. */
export const ListAndBox = ({ children }: { children?: Child }) => (
  <div class="beside">
    <div class="beside-list">{children}</div>
    <section class="beside-box" id="beside-box" aria-label={useWords().parts.boxChosen} />
  </div>
)

/** A box; beside it the list of today. */
export const BoxAndList = ({ children }: { children?: Child }) => (
  <div class="beside">
    <nav class="beside-list" id="beside-today" aria-label={useWords().parts.boxesOfToday} />
    <div class="beside-box">{children}</div>
  </div>
)
