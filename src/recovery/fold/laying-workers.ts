/** Several eggs in a cell, and raised drone caps in worker cells: workers' laying, a failing queen's, or nothing new. */

import {
  DRONE,
  EMERGENCE_AFTER_LOSS,
  FIRST_EGG_AFTER_EMERGENCE,
  FIRST_EGG_AFTER_RELEASE,
  LAYING_WORKERS_POSSIBLE_FROM,
  LOOK_AGAIN_AT_DOUBLES,
  NEW_QUEEN_DOUBLES_DAYS,
  OLD_QUEEN_LAYS_AGAIN,
} from '../../biology/index.ts'
import { addDays, type Day } from '../../days.ts'
import type { Inspection } from '../../journal/index.ts'
import type { Cause } from '../says/inside.ts'
import type { State } from '../state.ts'
import { fall } from './ladder.ts'

/** Raised drone caps on this day may still be the old queen's, or a donor's: drones leave their cells after 24 days. */
const droneBroodMayBeOld = (s: State, look: Inspection): boolean =>
  look.onFreshComb !== true &&
  s.sources.some(
    (x) => x.from !== 'former-layer' && x.lastEgg <= look.on && addDays(x.lastEgg, DRONE.emerge) >= look.on,
  )

/**
 * Raised drone caps in worker cells: workers lay, or a queen that cannot lay anything else. One centred egg a cell is a
 * queen's; several are workers'. False where the caps prove nothing.
 */
export function droneBrood(s: State, look: Inspection): boolean {
  const tooSoon = look.on < addDays(s.lastOldEgg, LAYING_WORKERS_POSSIBLE_FROM) && !s.lossMayBeEarlier
  const aQueen = look.queen === 'seen' || look.eggs === 'single'
  const workers = !aQueen && !tooSoon && (look.eggs === 'multiple' || !droneBroodMayBeOld(s, look))
  if (!workers && droneBroodMayBeOld(s, look) && !s.lossMayBeEarlier) return false
  s.answer(
    look.on,
    'telling-visit',
    'recheck-eggs',
    'new-queen-eggs',
    'worker-brood',
    'eggs-after-introduction',
    'cells-on-egg-frame',
  )
  if (workers) {
    layingWorkers(s, look.on, { code: 'drone-caps', on: look.on })
    return true
  }
  if (s.queen.is === 'none' && s.queen.failed === 'raised') return true
  s.sources.push({ from: 'former-layer', lastEgg: look.on, young: false })
  s.takeOut = look.on
  fall(s, look.on, [{ code: 'drone-layer' }], 'raised')
  return true
}

function layingWorkers(s: State, on: Day, why: Cause): void {
  if (s.queen.is === 'laying-workers') return
  s.queen = { is: 'laying-workers', since: on }
  s.testFrame = null
  s.doublesSince = null
  for (const rule of [
    'egg-frame',
    'buy-queen',
    'worker-brood',
    'cells-on-egg-frame',
    'recheck-eggs',
  ] as const)
    s.void(rule, on)
  s.ask('laying-workers', on, { code: 'laying-workers-found', because: [why] })
}

/** Several eggs in a cell. True when it settles the matter: laying workers. */
export function multipleEggs(s: State, look: Inspection): boolean {
  const tooSoon = look.on < addDays(s.lastOldEgg, LAYING_WORKERS_POSSIBLE_FROM) && !s.lossMayBeEarlier
  const again = s.doublesSince !== null && look.on >= addDays(s.doublesSince, LOOK_AGAIN_AT_DOUBLES)
  if (s.queen.is === 'queenright' || tooSoon || (newQueenPossible(s, look.on) && !again)) {
    if (s.doublesSince === null) {
      s.doublesSince = look.on
      s.ask(
        'laying-workers',
        look.on,
        { code: 'several-eggs-look-again', on: look.on },
        { opens: LOOK_AGAIN_AT_DOUBLES - 1, due: LOOK_AGAIN_AT_DOUBLES, closes: LOOK_AGAIN_AT_DOUBLES + 2 },
      )
    }
    return false
  }
  s.answer(look.on, 'telling-visit', 'recheck-eggs', 'new-queen-eggs', 'eggs-after-introduction')
  layingWorkers(s, look.on, { code: again ? 'several-eggs-again' : 'several-eggs', on: look.on })
  return true
}

/** Could a queen have begun to lay within the week before? Then doubles are hers as likely as theirs. */
function newQueenPossible(s: State, on: Day): boolean {
  const q = s.queen
  const until = (from: Day, days: number): boolean => on <= addDays(from, days + NEW_QUEEN_DOUBLES_DAYS)
  const raisedFrom = EMERGENCE_AFTER_LOSS.latest + FIRST_EGG_AFTER_EMERGENCE.latest
  const ownBrood = s.sources.some((x) => x.young && until(x.lastEgg, raisedFrom))
  switch (q.is) {
    case 'rearing':
      return until(q.emergence.latest, FIRST_EGG_AFTER_EMERGENCE.latest)
    case 'released':
      return until(q.on, FIRST_EGG_AFTER_RELEASE.latest)
    case 'caged':
      return true
    case 'laying':
      return until(q.firstEgg.latest, 0)
    case 'present':
    case 'unseen':
      return ownBrood || until(s.lastOldEgg, OLD_QUEEN_LAYS_AGAIN.latest)
    case 'none':
      return (q.chance || s.testFrame !== null) && ownBrood
    default:
      return q.is === 'queenright'
  }
}
