/**
 * One thing to do today, and why: a list of small advisers, asked in order until one answers. Danger and guard rails first,
 * then the queen ladder, then looks, then leaving, then routine.
 */
import type { Advised } from '../plan-types.ts'
import { inEnglish } from '../says/said.ts'
import { cagedQueen } from './cage.ts'
import type { Adviser, Context } from './context.ts'
import { exposed, left, lostBox, sick } from './danger.ts'
import { LADDER } from './ladder.ts'
import { leaving } from './leaving.ts'
import { openLook } from './looks.ts'
import { hungrySince, needsOf } from './needs.ts'
import { lookFromOutside, routine } from './routine.ts'
import { pests, removalPresses, robbing } from './signs.ts'

/** Facts and guard rails: no weighing of one way against another comes before these. */
const GUARD_RAILS: readonly Adviser[] = [left, lostBox, sick, robbing, removalPresses, cagedQueen]
/** What presses where nothing of the ladder is done. */
const PRESSING: readonly Adviser[] = [pests, exposed]
/** Ways chosen by dates alone, where nobody weighs them by what becomes of the colony. */
const BY_DATES: readonly Adviser[] = [...GUARD_RAILS, ...LADDER, ...PRESSING, openLook, leaving]

/** Ready is a fact; nothing is weighed against it. */
const ready: Adviser = (c) => (c.readiness.ready ? leaving(c) : null)

const byValue = (weigh: Adviser): readonly Adviser[] => [
  ...GUARD_RAILS,
  ready,
  ...PRESSING,
  weigh,
  ...LADDER,
  openLook,
  leaving,
]

const first = (advisers: readonly Adviser[], c: Context): Advised | null => {
  for (const adviser of advisers) {
    const advice = adviser(c)
    if (advice !== null) return advice
  }
  return null
}

/** @param weigh takes the place of the ladder and the looks, unless it answers null: then they are asked after all */
export function adviceOn(c: Context, weigh: Adviser | null = null): Advised {
  const advice = lidOnMeanwhile(c, first(weigh === null ? BY_DATES : byValue(weigh), c) ?? routine(c))
  const { s } = c
  if (s.history.outcome !== null || s.lost !== null) return advice
  // Feeding takes no open box, and a colony that starves needs no other plan.
  const feeds =
    hungrySince(s) !== null && (advice.action === 'leave-alone' || advice.action === 'outside-look')
  const led = inEnglish(advice.reasons)
  const said = needsOf(c, advice.reasons)
    .filter((n) => !led.includes(inEnglish(n)))
    .flat()
  if (feeds) return { action: 'feed', reasons: [...said, ...advice.reasons] }
  return { ...advice, reasons: [...advice.reasons, ...said] }
}

/** While a box is left alone it is still looked at from outside. */
function lidOnMeanwhile(c: Context, advice: Advised): Advised {
  const look = advice.action === 'leave-alone' ? lookFromOutside(c) : null
  if (look === null) return advice
  const { until } = advice
  return { ...look, ...(until === undefined ? {} : { until }), reasons: [...look.reasons, ...advice.reasons] }
}
