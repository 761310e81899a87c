/** Days in words, with the ISO text for machines. */

import type { Day, Span } from '../days.ts'
import { useWords } from '../forms/index.ts'
import type { Check } from '../recovery/index.ts'

/** 'Sun 10 May' */
export const On = ({ day, today }: { day: Day; today: Day }) => (
  <time datetime={day} class="nowrap">
    {useWords().dates.day(day, today)}
  </time>
)

/** The day a window's words turn on. */
const turns = (c: Check): Day =>
  ({
    waiting: c.opens,
    open: c.due,
    due: c.closes,
    overdue: c.closes,
    answered: c.answeredOn ?? c.closes,
    void: c.opens,
  })[c.status]

/** 'by Fri 12 Jun, in 2 days' */
export const WindowOf = ({ check, today }: { check: Check; today: Day }) => (
  <time datetime={turns(check)}>{useWords().dates.window(check, today)}</time>
)

/** 'likely Sun 28 Jun (Mon 22 Jun to Wed 8 Jul)' */
export const SpanOf = ({ span, today }: { span: Span; today: Day }) => (
  <time datetime={span.likely}>{useWords().dates.span(span, today)}</time>
)

/** 'Sun 10 to Tue 12 May' */
export const FromTo = ({ from, to, today }: { from: Day; to: Day; today: Day }) => (
  <time datetime={from}>{useWords().dates.fromTo(from, to, today)}</time>
)
