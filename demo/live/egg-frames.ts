/** Neither eggs nor cells: a frame of eggs from a donor is asked to become a queen. */
import { MAREN } from '../cast.ts'
import { NEITHER } from '../seasons/paths.ts'
import { came } from './came.ts'

export const eggFrames = [
  // The classic mistake: the donor's eggs taken for a new queen's.
  came('M-08', 11, 'roof', 'Roof of the boat shed, Cooper’s Wharf', {
    queen: 'unseen',
    frames: 5,
    broodCare: 'open-air',
  })
    .outside(1)
    .open(5, { ...NEITHER, framesOfBees: 4.5, signs: ['queenless-roar'] })
    .give(6, 'egg-frame', { donor: 'M-01', frames: 1 })
    .open(8, {
      eggs: 'single',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 4.5,
      note: 'She is laying! Eggs on the middle frame.',
    })
    .note(
      9,
      'Isolde: the middle frame IS the one from M-01. Look for cells on it before we call it a queen.',
      { by: MAREN },
    ),

  came('M-09', 14, 'ground', 'Compost heap, Sallow Bank allotments', { queen: 'unseen', frames: 5 }).goes(
    'egg-frame',
    14,
    'T-01',
  ),

  // No cells on the frame: some queen is there, mated or not.
  came('T-06', 15, 'container', 'Wheeled bin, Fennel Cross car park', { queen: 'unseen', frames: 5 }).goes(
    'bought-queen',
    15,
    'T-01',
  ),

  // A trap-out brings bees only: the frame of eggs went in on the first evening.
  came('T-07', 21, 'trap-out', 'Chimney cone, 1 Gull Steps', { queen: 'lost', frames: 4 })
    .give(0, 'egg-frame', { donor: 'M-01', frames: 1 })
    .outside(1)
    .open(4, { cells: 'open', cellCount: 6, eggs: 'none', queen: 'unseen', framesOfBees: 4, stores: 'low' })
    .give(4, 'syrup', { litres: 2 })
    .outside(10)
    .outside(17, { note: 'Small orientation flights in the afternoon.' }),
]
