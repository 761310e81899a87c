/** The ladder: own brood, a frame of eggs, a bought queen, uniting. One rung failed, the next is asked for. */
import { TEST_FRAME_IGNORED_AFTER } from '../../biology/index.ts'
import { type Day, daysBetween } from '../../days.ts'
import type { Rung, State } from '../state.ts'

const OVERTAKEN = [
  'worker-brood',
  'new-queen-eggs',
  'telling-visit',
  'recheck-eggs',
  'eggs-after-introduction',
] as const

/** The colony has no useful queen any more (or yet); `why` completes "No queen: …". */
export function fall(s: State, on: Day, why: string, failed: Rung): void {
  for (const rule of OVERTAKEN) s.void(rule, on)
  if (failed === 'own' && s.testFrame?.read === null) {
    // A frame of eggs is in already: nothing more to do than to read it.
    s.queen = { is: 'none', since: on, why, chance: true, failed }
    return
  }
  s.queen = { is: 'none', since: on, why, chance: false, failed }
  s.testFrame = null
  s.void('cells-on-egg-frame', on)
  if (failed === 'own' && daysBetween(s.lastYoungBrood, on) <= TEST_FRAME_IGNORED_AFTER) {
    s.ask(
      'egg-frame',
      on,
      `${capital(why)}. Give a frame of eggs: they raise a queen from it, or show that one is there.`,
    )
    return
  }
  if (failed === 'bought')
    s.ask(
      'unite-or-boost',
      on,
      `${capital(why)}. The bought queen failed too: unite it with a queenright colony.`,
    )
  s.ask(
    'buy-queen',
    on,
    failed === 'bought'
      ? `${capital(why)}. Only where it is still strong and the season allows, instead of uniting it: look for a virgin and for queen cells, then another mated queen goes in.`
      : `${capital(why)}. Look for a virgin and for queen cells first; then a mated queen goes in.`,
  )
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
