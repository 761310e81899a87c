/** A word with a shape: late, due, may be done, lid on. Never colour alone. */

import { raw } from 'hono/html'
import { useWords } from '../forms/index.ts'
import type { CheckStatus } from '../recovery/index.ts'

type Shape = CheckStatus | 'lid'

const DRAWN: Record<Shape, string> = {
  // Triangle, full circle, ring, clock hand, tick, dash, and a box with its lid.
  overdue: 'M8 1.5 15 14.5H1Z',
  due: 'M8 2a6 6 0 1 0 .01 0Z',
  open: 'M8 2a6 6 0 1 0 .01 0Z',
  waiting: 'M8 2a6 6 0 1 0 .01 0ZM8 5v3.5h3',
  answered: 'M2 9l4 4 8-10',
  void: 'M3 8h10',
  lid: 'M1 5h14M3 5v9h10V5',
}

const CLASS: Record<Shape, string> = {
  overdue: 'mark mark-late',
  due: 'mark mark-due',
  open: 'mark mark-open',
  waiting: 'mark mark-waiting',
  answered: 'mark mark-answered',
  void: 'mark mark-void',
  lid: 'mark mark-lid',
}

/** Drawn once: a page may hold thousands. */
const ICONS = Object.fromEntries(
  Object.entries(DRAWN).map(([shape, path]) => [
    shape,
    raw(`<svg viewBox="0 0 16 16" aria-hidden="true"><path d="${path}"/></svg>`),
  ]),
)

export const Mark = ({ shape, children }: { shape: Shape; children?: string }) => {
  const { parts, trade } = useWords()
  return (
    <span class={CLASS[shape]}>
      {ICONS[shape]}
      {children ?? (shape === 'lid' ? parts.lidOn : trade.statuses[shape])}
    </span>
  )
}
