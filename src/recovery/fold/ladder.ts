/** The ladder: own brood, a frame of eggs, a bought queen, uniting. One rung failed, the next is asked for. */

import { TEST_FRAME_IGNORED_AFTER } from '../../biology/index.ts'
import { type Day, daysBetween } from '../../days.ts'
import type { Cause } from '../says/inside.ts'
import type { Rung, State } from '../state.ts'

const OVERTAKEN = [
  'worker-brood',
  'new-queen-eggs',
  'telling-visit',
  'recheck-eggs',
  'eggs-after-introduction',
] as const

/** The colony has no useful queen any more (or yet), and why. */
export function fall(s: State, on: Day, why: readonly Cause[], failed: Rung): void {
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
    s.ask('egg-frame', on, { code: 'give-eggs', because: why })
    return
  }
  if (failed === 'bought') s.ask('unite-or-boost', on, { code: 'bought-failed-unite', because: why })
  s.ask('buy-queen', on, { code: failed === 'bought' ? 'buy-again' : 'buy', because: why })
}
