/** What new entries make wrong in their colony's history, reported for the new entry that causes it. */

import type { Day } from '../days.ts'
import { contradictions, type Problem } from '../journal/index.ts'
import type { Member } from './roster.ts'
import { nameOf } from './wording.ts'

/**
 * Contradictions of a colony's whole history that were not there before its new entries. Old ones don't count: a clock
 * set back puts yesterday's entries in the future, and that must not stop today's work.
 */
export function conflicts(member: Member, today: Day): Problem[] {
  const found = contradictions(
    member.rows.map((r) => r.entry),
    today,
  )
  if (found.length === 0) return []
  const known = member.known.map((r) => r.entry)
  const old = new Set(contradictions(known, today).map(key))
  return found.filter((p) => (p.entry ?? 0) > known.length || !old.has(key(p))).map((p) => ofNew(p, member))
}

const key = (p: Problem): string => `${p.entry} ${p.field} ${p.message}`

/** Numbered as in the batch. What is said of an old entry is the fault of the colony's first new one. */
function ofNew(p: Problem, member: Member): Problem {
  const at = (p.entry ?? 1) - 1
  const own = member.fresh[at - member.known.length]
  if (own !== undefined) return { ...p, entry: own.place }
  const old = member.known[at]
  const cause = member.fresh[0]
  return {
    entry: cause?.place,
    field: cause?.entry.kind === 'withdrawal' ? 'replaces' : 'on',
    message: `does not go with ${old === undefined ? 'an earlier entry' : nameOf(old.entry)}, which ${said(p)}`,
  }
}

/** The problem as a clause: '2026-05-12 is after …' becomes 'would be: 2026-05-12 is after …'. */
const said = (p: Problem): string => (/^\d/.test(p.message) ? `says: ${p.message}` : p.message)
