/** What people type wrong: corrections stand in the place of the first version, withdrawals take a line back. */
import { JUNO } from '../cast.ts'
import { FIRST_EGGS, NEITHER } from '../seasons/paths.ts'
import { came } from './came.ts'

export const mistakes = [
  // The eggs were seen in the neighbour's box.
  came('T-15', 12, 'utility-box', 'Valve chamber, Ropewalk End', { queen: 'unseen', frames: 5 })
    .outside(2)
    .open(5, { eggs: 'single', cells: 'none', queen: 'unseen', framesOfBees: 5 })
    .corrected(5, {
      eggs: 'none',
      cells: 'open',
      cellCount: 4,
      note: 'Wrote down the box next door. No eggs here: four open cells.',
    })
    .tiesOff(9)
    .withdrawn(10, 'Bands are still on: it was T-13 I cut them off.'),

  // The truck's clock was a day behind, and the type was wrong.
  came('M-04', 8, 'wall', 'Crate stack behind the chandlery, Cooper’s Wharf', {
    removedBefore: 1,
    queen: 'loose',
    frames: 6,
  })
    .corrected(1, {
      removal: { type: 'equipment', site: 'Winch housing behind the chandlery, Cooper’s Wharf' },
      note: 'It was the winch housing, not the wall.',
    })
    .outside(2)
    .open(6, { ...FIRST_EGGS, framesOfBees: 6 })
    .open(8, { ...NEITHER, by: JUNO }),

  // A visit typed in twice from the paper sheet; the second was taken back.
  came('M-19', 15, 'floor', 'Signal box floor, Pellbury halt', { queen: 'loose', frames: 7 })
    .outside(2)
    .open(6, { ...FIRST_EGGS, queen: 'unseen', framesOfBees: 6 })
    .open(6, { ...FIRST_EGGS, queen: 'unseen', framesOfBees: 6, at: '10:20' })
    .withdrawn(7, 'Typed in twice.')
    .tiesOff(9)
    .outside(13, {
      signs: ['robbing'],
      by: JUNO,
      note: 'Isolde away; Juno walked Marl Hollow today. Fighting at the entrance.',
    }),
]
