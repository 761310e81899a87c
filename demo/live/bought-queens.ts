/** Down the ladder to a purchased mated queen: wanted, accepted, rejected. */
import { FIRST_EGGS, NEITHER } from '../seasons/paths.ts'
import { came } from './came.ts'

export const boughtQueens = [
  came('M-10', 20, 'wall', 'Chapel vestry wall, Heronsby', { queen: 'unseen', frames: 5 })
    .goes('bought-queen', 16)
    .outside(18, { signs: ['queenless-roar'] }),

  // Balled and dead on day 4 after introduction: queenless again.
  came('T-08', 22, 'equipment', 'Under the cab of a digger, Pellbury quarry road', {
    queen: 'lost',
    frames: 5,
  })
    .goes('bought-queen', 16)
    .give(16, 'mated-queen', { caged: true, cost: 38 })
    .cage(20, 'rejected', { note: 'Balled in the cage mouth, dead when I parted them.' }),

  came('T-09', 27, 'utility-box', 'Street cabinet, Windle Mews', { queen: 'lost', frames: 5 })
    .goes('bought-queen', 16)
    .wash(19, 3)
    .give(19, 'mated-queen', { caged: true, cost: 42 })
    .cage(23, 'released'),

  // She lays, but for too few bees.
  came('M-11', 36, 'floor', 'Pavilion floor, Larkbarrow cricket ground', { queen: 'unseen', frames: 5.5 })
    .goes('bought-queen', 10, 'M-03')
    .open(16, { ...NEITHER, framesOfBees: 3 })
    .give(18, 'mated-queen', { caged: true, cost: 38 })
    .cage(22, 'released')
    .open(29, { ...FIRST_EGGS, framesOfBees: 1.25 })
    .wash(29, 4)
    .outside(33),
]
