/** The queen came along: caged or loose, she has only to lay. */
import { ISOLDE, MARL } from '../cast.ts'
import { FIRST_EGGS, PROVED } from '../seasons/paths.ts'
import { came } from './came.ts'

export const ownQueen = [
  // Everything is answered: ready to go.
  came('M-01', 34, 'wall', 'Gable of the malt house, Cooper’s Wharf', { queen: 'caged', frames: 8 }).goes(
    'own-queen',
    33,
  ),

  came('M-02', 16, 'utility-box', 'Cable box 41, Tallow Street', { queen: 'caged', frames: 4 })
    .goes('own-queen', 10)
    .outside(15, { stores: 'low' }),

  came('T-01', 25, 'swarm', 'Bus shelter, Fennel Cross', { queen: 'loose', bees: { kg: 2.2 }, frames: 5 })
    .give(0, 'syrup', { litres: 2, syrup: '1:1' })
    .goes('own-queen', 24),

  // Day 3: still in her cage, the candy is hard. She wants letting out.
  came('T-02', 6, 'equipment', 'Switch cabinet, Pellbury water works', { queen: 'caged', frames: 4 })
    .outside(2)
    .cage(4, 'still-caged', { note: 'Candy gone hard as glass. Pricked it; look again.' }),

  came('T-03', 9, 'abandoned-hive', 'Behind the allotments, Sallow Bank', {
    queen: 'loose',
    frames: 10,
    tiedComb: false,
  })
    .outside(2, { stores: 'heavy' })
    .open(5, {
      ...PROVED,
      queen: 'seen',
      cells: 'cups',
      framesOfBees: 10,
      stores: 'heavy',
      signs: ['mites-seen', 'deformed-wings'],
      note: 'A crippled bee or two on the board.',
    })
    .wash(5, 14),

  // Came to one yard, was moved to the other.
  came('M-20', 20, 'container', 'Rain barrel, Windle Mews 2', { yard: 'Tannery Field', queen: 'loose' })
    .outside(2)
    .open(5, { ...FIRST_EGGS, queen: 'unseen', framesOfBees: 5 })
    .tiesOff(9)
    .move(12, MARL, '20')
    .outside(13, { note: 'Settled after the drive.', by: ISOLDE })
    .open(18, {
      eggs: 'single',
      open: 'plenty',
      cells: 'open',
      cellCount: 2,
      queen: 'unseen',
      framesOfBees: 6,
    }),
]
