/** A part of a page that is folded behind its heading; the heading says what is inside, and a link to it opens it. */
import type { Child } from 'hono/jsx'
import { useWords } from '../forms/index.ts'

interface FoldProps {
  /** Where links lead to. */
  id: string
  title: string
  /** A few words beside the heading: what one would find. */
  says?: string
  open?: boolean
  children?: Child
}

export const Fold = ({ id, title, says, open = false, children }: FoldProps) => (
  <details class="fold" open={open}>
    <summary>
      <h2>{title}</h2>
      {says === undefined ? null : <small class="soft">{says}</small>}
    </summary>
    {/* The target lies inside: following a link to what is folded opens the fold. */}
    <div id={id}>{children}</div>
  </details>
)

/** Links to the folds of a page. */
export const Jumps = ({ to }: { to: readonly { id: string; label: string }[] }) => (
  <nav class="jumps" aria-label={useWords().colony.onThisPage}>
    {to.map((t) => (
      <a href={`#${t.id}`}>{t.label}</a>
    ))}
  </nav>
)
