/** May it go, or what is the last thing that keeps it here? */
import { inWords } from '../../days.ts'
import { mayOpen } from '../guards.ts'
import { readyUntil } from '../readiness.ts'
import type { Adviser } from './context.ts'

export const leaving: Adviser = ({ s, today, readiness, exposure }) => {
  const { ready, unmet } = readiness
  if (ready)
    return {
      action: 'move-out',
      rule: 'move-out',
      until: readyUntil(s),
      why: `The hold is over and every condition is met: a last disease look, and it may go. The looks and the wash count until ${inWords(readyUntil(s))}.`,
    }
  if (exposure !== null || mayOpen(s, today) !== null) return null
  // What keeps it here can be seen to today, and nobody has been there yet; the disease look may be the last thing on the day.
  const today_ = unmet.every((u) => u.earliest !== null && u.earliest <= today)
  const only = unmet.every((u) => u.what.startsWith('disease look'))
  if (!today_ || (s.lastVisit >= today && !only)) return null
  const mites = unmet.every(
    (u) => u.what.startsWith('mites') || u.what.endsWith('a wash 10 days or more after it'),
  )
  return {
    action: mites ? 'wash' : 'open-and-look',
    ...(mites ? { rule: 'mite-wash' as const } : {}),
    why: `The hold is over and a mated queen is proven. What is missing before it may go: ${unmet.map((u) => u.what).join('; ')}.`,
  }
}
