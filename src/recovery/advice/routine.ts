/** What is left: chores, looks from outside, and leaving it alone. */
import { inWords } from '../../days.ts'
import { isQuiet } from '../phase.ts'
import type { Advice } from '../plan-types.ts'
import { CHORES, OUTSIDE } from '../rules.ts'
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
  if (chore !== undefined) return { action: 'open-and-look', rule: chore.rule, why: chore.why }
  const look = lookFromOutside(c)
  if (look !== null) return look
  const ordered = orderAhead(c)
  if (ordered !== null) return ordered
  const next = untilDay(s, today, quiet)
  if (still && quiet !== null)
    return {
      action: 'leave-alone',
      why: `Leave it alone${next === null ? '' : ` until ${inWords(next)}`}, lid on: a young queen ${s.queen.is === 'none' ? 'may be' : 'is'} emerging, maturing or mating.`,
    }
  return {
    action: 'leave-alone',
    why: next === null ? 'Nothing is asked of this colony now.' : `Leave it alone until ${inWords(next)}.`,
  }
}

/** The look with the lid on that is asked for today; null when none is. */
export function lookFromOutside({ s, today, quiet, asked }: Context): Advice | null {
  const look = OUTSIDE.flatMap((rule) => asked(rule) ?? [])[0]
  if (look === undefined) return null
  const lid =
    quiet !== null && isQuiet(today, quiet)
      ? ` Lid on: quiet time until ${inWords(quiet.to)}.`
      : coldSeason(s.protocol, today)
        ? ' Lid on: it is too cold to open. Heft it, look at the entrance, and give fondant if it is light.'
        : ''
  return { action: 'outside-look', rule: look.rule, why: `${look.why}${lid}` }
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
  const days = supplies.daysUntilQueens
  return {
    action: 'order-queen',
    why: `A mated queen is likely to be needed here and none is in hand${days === undefined ? '' : `; one takes ${days} days to come`}: order one now. If they raise their own after all, another colony will need her.`,
  }
}
