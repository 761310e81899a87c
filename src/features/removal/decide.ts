/** Recording go, wait or refuse: what the sheet insists on before it writes the decision down. */
import type { Problem } from '../../journal/index.ts'
import type { Decision } from '../../records/index.ts'
import { type Reckoning, stops } from './before-cut.ts'

/**
 * A licensed trade's word cannot be replaced by ours, so no "go" over it. Anything else may be overruled by whoever is at
 * the wall, by name and with a reason.
 */
export function decisionProblems(d: Pick<Decision, 'is' | 'reason'>, r: Reckoning): Problem[] {
  if (d.is !== 'go')
    return d.reason === undefined && d.is === 'refuse'
      ? [{ field: 'reason', message: 'is needed: the customer will ask why' }]
      : []
  const barred = r.unmet.find(stops)
  if (barred !== undefined)
    return [
      {
        field: 'is',
        message: `cannot be “go” while this is unmet: ${barred.what}. ${barred.decides} decides that, not this sheet`,
      },
    ]
  if (r.unmet.length > 0 && d.reason === undefined)
    return [
      {
        field: 'reason',
        message: `is needed to go while ${r.unmet.length === 1 ? 'one thing is' : `${r.unmet.length} things are`} unmet or not filled in: say why it may begin all the same`,
      },
    ]
  return []
}

/** What was unmet when it was decided, for the record. */
export const unmetWords = (r: Reckoning): string[] => r.unmet.map((i) => `${i.what}: ${i.why}`.slice(0, 300))
