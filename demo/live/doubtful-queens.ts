/** Queens that make one wonder: late, unmated, or not the one that was expected. */
import { CELLS, NEITHER } from '../seasons/paths.ts'
import { came } from './came.ts'

export const doubtfulQueens = [
  // The late virgin: nothing on the likely day, nothing a week later; her last day is near.
  came('M-07', 32, 'wall', 'Behind the shutters, 5 Gull Steps', { queen: 'unseen', frames: 6 })
    .goes('own-brood', 21)
    .open(26, {
      ...NEITHER,
      cells: 'emerged',
      framesOfBees: 4,
      note: 'Polished cells, waiting. It rained through her flying days.',
    })
    .open(30, { ...NEITHER, capped: 'none', queen: 'seen', framesOfBees: 3.5 }),

  // Cells on day 5, eggs on day 9: no queen raised from those cells can be laying yet. Somebody else is.
  came('M-22', 10, 'tree', 'Hollow willow, Sallow Bank weir', { queen: 'unseen', frames: 8 })
    .outside(2)
    .open(5, { ...CELLS, cells: 'open', cellCount: 2, framesOfBees: 8 })
    .open(9, {
      eggs: 'single',
      queen: 'unseen',
      cells: 'torn-down',
      framesOfBees: 8,
      note: 'Fresh eggs, and both cells pulled down. Was she here all along?',
    }),

  // A virgin that never mated: she lays, but only drones.
  came('M-17', 39, 'tree', 'Old lime, Heronsby green', { queen: 'unseen', frames: 6 })
    .goes('own-brood', 21)
    .open(29, { eggs: 'single', open: 'none', queen: 'seen', cells: 'none', framesOfBees: 4 })
    .open(38, {
      eggs: 'single',
      open: 'some',
      capped: 'drone-in-worker',
      queen: 'seen',
      cells: 'none',
      framesOfBees: 3.5,
      note: 'All caps domed. She is there and she lays, but she never mated.',
    }),
]
