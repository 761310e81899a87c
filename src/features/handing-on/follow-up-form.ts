/** How a colony fares in its new home: what is asked of the new keeper, or written down by the yard. */

import type { Day } from '../../days.ts'
import { type FieldProblem, type FieldSpecs, fieldsIn, spec, type Typed } from '../../forms/index.ts'
import { type FollowUp, MOST_FOLLOW_UPS, type MoveRecord } from '../../records/index.ts'
import type { Result } from '../../result.ts'
import type { Units } from '../../words/index.ts'

const { choice, day, yesNo } = spec

export const FOLLOW_UP = {
  on: day('On'),
  found: choice(
    'How is it?',
    [
      { value: 'alive', label: 'It lives' },
      { value: 'dead', label: 'It is dead or gone' },
    ],
    2,
  ),
  queenright: yesNo(
    'A laying queen',
    [
      { value: 'yes', label: 'Eggs or young brood seen' },
      { value: 'no', label: 'None seen' },
      { value: '', label: 'Not looked' },
    ],
    3,
  ),
  deadSince: day('If dead: since when'),
} satisfies FieldSpecs

/** Reads an answer. It must be of a day after the colony left and not of one to come. */
export function followUpFrom(
  typed: Typed,
  { by, left, today, units }: { by: string; left: Day; today: Day; units: Units },
): Result<{ told: FollowUp }> {
  const { raw, problems } = fieldsIn(FOLLOW_UP, typed, units)
  const told = { on: today, ...raw, by } as FollowUp
  const wrong: FieldProblem[] = [...problems]
  const within = (field: 'on' | 'deadSince', value: Day | undefined): void => {
    if (value === undefined) return
    if (value > today) wrong.push({ field, message: `must not be later than today, ${today}` })
    if (value < left) wrong.push({ field, message: `must not be before it moved out on ${left}` })
  }
  if (told.found === undefined) wrong.push({ field: 'found', message: 'say whether it lives' })
  if (problems.length === 0) {
    within('on', told.on)
    within('deadSince', told.deadSince)
    if (told.deadSince !== undefined && told.found === 'alive')
      wrong.push({ field: 'deadSince', message: 'only of a colony that is dead' })
  }
  return wrong.length > 0 ? { ok: false, problems: wrong } : { ok: true, told }
}

/** The record with one more answer; the same day told again by the same person takes the place of what was told. */
export function withFollowUp(record: MoveRecord, told: FollowUp): MoveRecord {
  const others = (record.followUps ?? []).filter((f) => f.on !== told.on || f.by !== told.by)
  return { ...record, followUps: [...others, told].slice(-MOST_FOLLOW_UPS) }
}

/** Example: 'Wed 10 Jun: lives, with a laying queen (the new keeper).' */
export const followUpWords = (f: FollowUp, dayIn: (day: Day) => string): string => {
  const queen =
    f.queenright === undefined ? '' : f.queenright ? ', with a laying queen' : ', no eggs or young brood seen'
  const since = f.deadSince === undefined ? '' : `, since ${dayIn(f.deadSince)}`
  return `${dayIn(f.on)}: ${f.found === 'alive' ? `lives${queen}` : `dead or gone${since}`} (${f.by}).`
}
