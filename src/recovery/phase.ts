/** The phase on a day: the state, and where the calendar alone has moved it on. */
import { MATES_AFTER_EMERGENCE } from '../biology/index.ts'
import { addDays, type Day, type Span } from '../days.ts'
import type { DayRange, Phase } from './plan-types.ts'
import { matesOn } from './protocol.ts'
import { quietFor } from './rearing.ts'
import { expectedEmergence } from './spans.ts'
import type { State } from './state.ts'

export function phaseOn(s: State, today: Day): Phase {
  if (s.history.outcome !== null) return 'closed'
  const q = s.queen
  switch (q.is) {
    case 'unseen':
      return 'queen-unknown'
    case 'present':
    case 'released':
      return 'awaiting-eggs'
    case 'caged':
      return 'awaiting-release'
    case 'rearing':
      if (q.assumed === true) return 'queen-unknown'
      return q.emerged || today > q.emergence.latest ? 'awaiting-new-queen' : 'rearing'
    case 'laying':
      return 'laying'
    case 'queenright':
      return 'queenright'
    case 'none':
      return 'queenless'
    case 'laying-workers':
      return 'laying-workers'
  }
}

/**
 * Quiet time while a queen is being raised or awaited; null otherwise. Where the queen is known to be lost and nobody has
 * looked for cells in their days, the young brood that came along is thought of as having been used: quiet time begins
 * just after the last day for that look, and to open then could cost the virgin.
 */
export function quietOf(s: State): DayRange | null {
  if (s.history.outcome !== null) return null
  const emergence = s.queen.is === 'rearing' || s.queen.is === 'none' ? expectedEmergence(s) : null
  const quiet = emergence === null ? null : quietFor(emergence)
  if (emergence !== null) return mates(s, emergence) ? quiet : null
  const { cellsBeside } = s
  return cellsBeside?.stage === 'capped' && mates(s, cellsBeside.emergence)
    ? quietFor(cellsBeside.emergence)
    : null
}

/** A virgin that cannot mate needs no quiet time. */
const mates = (s: State, emergence: Span): boolean =>
  [emergence.likely, emergence.latest].some((day) => matesOn(s.protocol, addDays(day, MATES_AFTER_EMERGENCE)))

/** Whether that day lies in quiet time. */
export const isQuiet = (today: Day, quiet: DayRange | null): quiet is DayRange =>
  quiet !== null && today >= quiet.from && today <= quiet.to
