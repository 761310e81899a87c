/** What pages of numbers share: a section with its reading, a table that scrolls, a cell with limits. */

import type { Child } from 'hono/jsx'
import { fewWords, percent, shortRange } from '../words/index.ts'

interface PartProps {
  id: string
  title: string
  children?: Child
}

export const Part = ({ id, title, children }: PartProps) => (
  <section class="section review-part" id={id} aria-labelledby={`${id}-title`}>
    <h2 id={`${id}-title`}>{title}</h2>
    {children}
  </section>
)

/** The sentence that says what the numbers say. */
export const Reading = ({ children }: { children?: Child }) => <p class="reading">{children}</p>

/** A wide table, scrolled by itself, also with the keyboard. */
export const Wide = ({ label, children }: { label: string; children?: Child }) => (
  <section class="table-scroll" tabindex={0} aria-label={label}>
    {children}
  </section>
)

/** Groups of which nothing can be said yet, in one line instead of empty rows. */
export const NotYet = ({ day, names }: { day: number; names: string[] }) =>
  names.length === 0 ? null : (
    <p class="small soft">
      Nobody followed to day {day} yet: {names.join(', ')}.
    </p>
  )

/** How many colonies a group has, beside its name; a small group says so itself. Example: '9, too few'. */
export const Counted = ({ n }: { n: number }) => (
  <span class="soft">
    {n}
    {fewWords(n)}
  </span>
)

export interface WithLimits {
  survival: number | null
  lower: number | null
  upper: number | null
}

/** '78 % 62–88', 'not yet known' */
export const Share = ({ of }: { of: WithLimits }) =>
  of.survival === null ? (
    <span class="soft">not yet known</span>
  ) : (
    <>
      <b class="nowrap">{percent(of.survival)}</b>
      {of.lower === null || of.upper === null ? null : (
        <>
          {' '}
          <span class="limits-words">{shortRange(of.lower, of.upper)}</span>
        </>
      )}
    </>
  )
