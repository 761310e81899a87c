/** Questions that only an open box answers. */
import { EMERGENCE_AFTER_LOSS, FIRST_EGG_AFTER_EMERGENCE } from '../../biology/index.ts'
import { daysBetween } from '../../days.ts'
import { lookedLately } from '../derived-asks.ts'
import { robbedOn } from '../guards.ts'
import { leftOutReason } from '../missing-words.ts'
import { isQuiet } from '../phase.ts'
import { LOOKS } from '../rules.ts'
import { coldSeason } from '../season.ts'
import type { Ask } from '../state.ts'
import type { Adviser, Context } from './context.ts'

/** From this day of an unanswered telling visit a virgin may be in the box: one day before the earliest emergence. */
const VIRGIN_FROM = EMERGENCE_AFTER_LOSS.earliest - 1
const VIRGIN_TO = EMERGENCE_AFTER_LOSS.likely + FIRST_EGG_AFTER_EMERGENCE.likely - 1

/** The look that is asked for today and may be made; null when none is. */
export function lookAsked({ s, today, quiet, asked }: Context): Ask | null {
  if (robbedOn(s, today) !== null || coldSeason(s.protocol, today)) return null
  const still = isQuiet(today, quiet)
  // Cells beside a queen are seen to on their days, or a swarm leaves with her.
  const rules = still ? LOOKS.filter((r) => r === 'cells-beside') : LOOKS
  const open = rules.flatMap((rule) => asked(rule) ?? []).filter((a) => !lookedLately(a, today))
  return open.find((a) => today > a.closes) ?? open[0] ?? null
}

export const openLook: Adviser = (c) => {
  const ask = lookAsked(c)
  if (ask === null) return null
  const late = daysBetween(c.s.lastOldEgg, c.today)
  const virgin =
    ask.rule === 'telling-visit' && c.s.queen.is === 'unseen' && late >= VIRGIN_FROM && late <= VIRGIN_TO
      ? [{ code: 'virgin-by-now' } as const]
      : []
  return {
    action: 'open-and-look',
    rule: ask.rule,
    reasons: [ask.why, ...leftOutReason(ask.missing), ...virgin],
  }
}
