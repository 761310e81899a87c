/**
 * One thing to do today, and why: a list of small advisers, asked in order until one answers. Danger and guard rails first,
 * then the queen ladder, then looks, then leaving, then routine.
 */
import type { Advice } from '../plan-types.ts'
import { cagedQueen } from './cage.ts'
import type { Adviser, Context } from './context.ts'
import { exposed, left, lostBox, sick } from './danger.ts'
import { LADDER } from './ladder.ts'
import { leaving } from './leaving.ts'
import { openLook } from './looks.ts'
import { hungrySince, needsOf } from './needs.ts'
import { routine } from './routine.ts'
import { pests, removalPresses, robbing } from './signs.ts'

/** Facts and guard rails: no weighing of one way against another comes before these. */
const GUARD_RAILS: readonly Adviser[] = [left, lostBox, sick, robbing, removalPresses, cagedQueen]
/** What a decision by expected value may take the place of. */
const LADDER_AND_LOOKS: readonly Adviser[] = [...LADDER, pests, exposed, openLook]

const ADVISERS: readonly Adviser[] = [...GUARD_RAILS, ...LADDER_AND_LOOKS, leaving]

const first = (advisers: readonly Adviser[], c: Context): Advice | null => {
  for (const adviser of advisers) {
    const advice = adviser(c)
    if (advice !== null) return advice
  }
  return null
}

export function adviceOn(c: Context): Advice {
  const advice = first(ADVISERS, c) ?? routine(c)
  const { s } = c
  if (s.history.outcome !== null || s.lost !== null) return advice
  // Feeding takes no open box, and a colony that starves needs no other plan.
  const feeds =
    hungrySince(s) !== null && (advice.action === 'leave-alone' || advice.action === 'outside-look')
  const said = needsOf(c, advice.why).filter((n) => !advice.why.includes(n))
  if (feeds) return { action: 'feed', why: [...said, advice.why].join(' ') }
  return { ...advice, why: [advice.why, ...said].join(' ') }
}
