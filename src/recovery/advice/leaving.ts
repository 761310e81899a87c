/** May it go, or what is the last thing that keeps it here? */
import { mayOpen } from '../guards.ts'
import { readyUntil } from '../readiness.ts'
import type { Adviser } from './context.ts'

/** What one look for disease, or one wash, would settle. */
const DISEASE_LOOKS: readonly string[] = ['disease-look-none', 'disease-suspected', 'disease-look-old']
const WASHES: readonly string[] = ['mites-unwashed', 'mites-old', 'mites-over', 'treatment-unwashed']

export const leaving: Adviser = ({ s, today, readiness, exposure }) => {
  const { ready, unmet } = readiness
  if (ready)
    return {
      action: 'move-out',
      rule: 'move-out',
      until: readyUntil(s),
      reasons: [{ code: 'ready-until', until: readyUntil(s) }],
    }
  if (exposure !== null || mayOpen(s, today) !== null) return null
  // What keeps it here can be seen to today, and nobody has been there yet; the disease look may be the last thing on the day.
  const today_ = unmet.every((u) => u.earliest !== null && u.earliest <= today)
  const only = unmet.every((u) => DISEASE_LOOKS.includes(u.reason.code))
  if (!today_ || (s.lastVisit >= today && !only)) return null
  const mites = unmet.every((u) => WASHES.includes(u.reason.code))
  return {
    action: mites ? 'wash' : 'open-and-look',
    ...(mites ? { rule: 'mite-wash' as const } : {}),
    reasons: [{ code: 'hold-over-missing', unmet: unmet.map((u) => u.reason) }],
  }
}
