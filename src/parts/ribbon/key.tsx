/** What the patterns of the ribbon mean, and the patterns themselves. */
import { useWords } from '../../forms/index.ts'
import type { Words } from '../../words/index.ts'

/** The patterns, once a page. */
export const RibbonDefs = () => (
  <svg class="ribbon-defs" aria-hidden="true" width="0" height="0">
    <defs>
      <pattern id="rb-eggs" width="6" height="7" patternUnits="userSpaceOnUse">
        <path d="M2 1.5v4" stroke="currentColor" stroke-width="1.4" stroke-linecap="round" />
      </pattern>
      <pattern id="rb-open" width="9" height="9" patternUnits="userSpaceOnUse">
        <path d="M6.5 2.5a2.6 2.6 0 1 0 0 4" fill="none" stroke="currentColor" stroke-width="1.6" />
      </pattern>
      <pattern id="rb-capped" width="5" height="5" patternUnits="userSpaceOnUse">
        <rect width="5" height="5" fill="currentColor" />
        <path d="M0 2.5h1.2" stroke="var(--sheet)" stroke-width="1" />
      </pattern>
      <pattern id="rb-quiet" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path d="M0 0v9" stroke="currentColor" stroke-width="1.1" opacity="0.5" />
      </pattern>
      <linearGradient id="rb-fade">
        <stop offset="0" class="rb-clear" />
        <stop offset="1" class="rb-paper" />
      </linearGradient>
    </defs>
  </svg>
)

const LEGEND: { kind: string; word: keyof Words['ribbon']['key'] }[] = [
  { kind: 'rb-bar rb-eggs', word: 'eggs' },
  { kind: 'rb-bar rb-open', word: 'open' },
  { kind: 'rb-bar rb-capped', word: 'capped' },
  { kind: 'rb-bar rb-emergence', word: 'emergence' },
  { kind: 'rb-bar rb-first-egg rb-maybe', word: 'firstEgg' },
  { kind: 'rb-quiet', word: 'quiet' },
]

/** The key under the large ribbon. */
export const Legend = () => {
  const { key } = useWords().ribbon
  return (
    <ul class="legend">
      {LEGEND.map((l) => (
        <li>
          <svg width="26" height="14" aria-hidden="true">
            <rect class={l.kind} x="0.5" y="0.5" width="25" height="13" />
          </svg>
          {key[l.word]}
        </li>
      ))}
      <li>
        <svg width="14" height="14" aria-hidden="true">
          <path class="rb-tick rb-tick-opened" d="M3 3h8v8H3Z" />
        </svg>
        {key.opened}
      </li>
      <li>
        <svg width="14" height="14" aria-hidden="true">
          <path class="rb-tick rb-tick-lid-on" d="M3 3h8v8H3Z" />
        </svg>
        {key.lookedLidOn}
      </li>
      <li>
        <svg class="rb-window" width="26" height="14" aria-hidden="true">
          <rect x="0.5" y="2.5" width="25" height="9" />
          <circle cx="13" cy="7" r="3.2" />
        </svg>
        {key.window}
      </li>
    </ul>
  )
}
