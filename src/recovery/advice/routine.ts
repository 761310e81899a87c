/** What is left: chores, looks from outside, and leaving it alone. */
import { isQuiet } from '../phase.ts'
import type { Advised } from '../plan-types.ts'
import { CHORES, OUTSIDE } from '../rules.ts'
import type { Reason } from '../says/said.ts'
import { coldSeason } from '../season.ts'
import { untilDay } from '../until.ts'
import type { Adviser, Context } from './context.ts'

export const routine = (c: Context): ReturnType<Adviser> & object => {
  const { s, today, quiet, asked } = c
  const still = isQuiet(today, quiet)
  const cold = coldSeason(s.protocol, today)
  const held = c.exposure !== null
  const chore =
    still || cold || held
      ? undefined
      : CHORES.flatMap((rule) => asked(rule) ?? []).find((a) => today >= a.due)
  if (chore !== undefined) return { action: 'open-and-look', rule: chore.rule, reasons: [chore.why] }
  const look = lookFromOutside(c)
  if (look !== null) return look
  const ordered = orderAhead(c)
  if (ordered !== null) return ordered
  const next = untilDay(s, today, quiet)
  if (still && quiet !== null)
    return {
      action: 'leave-alone',
      reasons: [{ code: 'leave-quiet', until: next, sure: s.queen.is !== 'none' }],
    }
  return {
    action: 'leave-alone',
    reasons: [next === null ? { code: 'nothing-asked' } : { code: 'leave-alone', until: next }],
  }
}

/** The look with the lid on that is asked for today; null when none is. */
export function lookFromOutside({ s, today, quiet, asked }: Context): Advised | null {
  const look = OUTSIDE.flatMap((rule) => asked(rule) ?? [])[0]
  if (look === undefined) return null
  const lid: Reason[] =
    quiet !== null && isQuiet(today, quiet)
      ? [{ code: 'lid-on-quiet', until: quiet.to }]
      : coldSeason(s.protocol, today)
        ? [{ code: 'lid-on-cold' }]
        : []
  return { action: 'outside-look', rule: look.rule, reasons: [look.why, ...lid] }
}

/** A queen takes days to come: with none in hand she is ordered while the last hope is still being waited for. */
function orderAhead({ s, today, supplies }: Context): ReturnType<Adviser> {
  if (supplies.queensInHand !== 0) return null
  const late = s.pending('new-queen-eggs')
  const likely =
    (s.queen.is === 'rearing' && late !== undefined && today >= late.due) ||
    (s.queen.is === 'none' && s.testFrame === null) ||
    s.pending('recheck-eggs') !== undefined
  if (!likely) return null
  return {
    action: 'order-queen',
    reasons: [{ code: 'order-ahead', days: supplies.daysUntilQueens ?? null }],
  }
}
