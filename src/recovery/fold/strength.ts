/** Frames of bees against the protocol's minimum. */
import type { Day } from '../../days.ts'
import type { State } from '../state.ts'

/** `before`: the count before this one, if any. */
export function checkStrength(s: State, frames: number, on: Day, before: number | null = null): void {
  const minimum = s.protocol.minFramesOfBees
  const lays = s.queen.is === 'laying' || s.queen.is === 'queenright'
  // A nucleus that grows under a laying queen is left to grow.
  if (lays && before !== null && frames > before) {
    s.answer(on, 'unite-or-boost')
    return
  }
  if (frames >= minimum) {
    s.answer(on, 'unite-or-boost')
    return
  }
  if (s.pending('unite-or-boost') !== undefined) return
  s.ask('unite-or-boost', on, { code: 'under-strength', frames, on, minimum })
}
