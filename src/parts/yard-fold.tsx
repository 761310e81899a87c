/** The boxes of one yard under its name; folded where all yards together make a page nobody reads to its end. */
import type { Child } from 'hono/jsx'

/** More lines than this on a page of several yards are folded by yard (judgement: three screens of a phone). */
const MOST_LINES = 30

interface YardFoldProps {
  yard: string
  /** '9 boxes, 2 late' */
  says: string
  /** Lines on the whole page, and in how many yards. */
  of: { lines: number; yards: number }
  children?: Child
}

export const YardFold = ({ yard, says, of, children }: YardFoldProps) => {
  const head = (
    <h2>
      {yard} <small class="soft">{says}</small>
    </h2>
  )
  if (of.yards < 2 || of.lines <= MOST_LINES)
    return (
      <section class="round">
        {head}
        {children}
      </section>
    )
  return (
    <details class="fold">
      <summary>{head}</summary>
      {children}
    </details>
  )
}
