/** Neither eggs nor cells: a frame of eggs from a donor is asked to become a queen. */
import { MAREN, MARL, TANNERY, TOBIAH } from '../cast.ts'
import { colony } from '../story.ts'

export const eggFrames = [
  // The classic mistake: the donor's eggs taken for a new queen's.
  colony('M-08', {
    daysAgo: 10,
    yard: MARL,
    stand: '8',
    by: MAREN,
    at: '19:40',
    removal: {
      type: 'roof',
      outdoorC: 30,
      hoursOpenToBoxed: 5,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Roof of the boat shed, Cooper’s Wharf',
    },
    queen: 'unseen',
    brood: { eggs: 0.5, open: 0.5, capped: 1 },
    broodCare: 'open-air',
    queenCells: 'none',
    bees: { frames: 5 },
    deadBeesKg: 0.3,
    tiedComb: true,
    temper: 3,
  })
    .outside(1)
    .open(5, {
      eggs: 'none',
      open: 'none',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 4.5,
      stores: 'enough',
      signs: ['queenless-roar'],
    })
    .give(6, 'egg-frame', { donor: 'M-01', frames: 1 })
    .open(8, {
      eggs: 'single',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 4.5,
      stores: 'enough',
      note: 'She is laying! Eggs on the middle frame.',
    })
    .note(
      9,
      'Isolde: the middle frame IS the one from M-01. Look for cells on it before we call it a queen.',
      { by: MAREN },
    ),

  colony('M-09', {
    daysAgo: 14,
    yard: MARL,
    stand: '9',
    by: TOBIAH,
    at: '17:00',
    removal: {
      type: 'ground',
      outdoorC: 25,
      hoursOpenToBoxed: 3,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Compost heap, Sallow Bank allotments',
    },
    queen: 'unseen',
    brood: { eggs: 0, open: 0.25, capped: 1 },
    broodCare: 'open-air',
    queenCells: 'none',
    bees: { frames: 5 },
    tiedComb: true,
    temper: 2,
  })
    .outside(2)
    .open(6, {
      eggs: 'none',
      open: 'none',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 4.5,
      stores: 'enough',
    })
    .give(7, 'egg-frame', { donor: 'T-01', frames: 1 })
    .open(11, {
      eggs: 'none',
      open: 'some',
      cells: 'open',
      cellCount: 4,
      queen: 'unseen',
      framesOfBees: 4,
      stores: 'enough',
    }),

  // No cells on the frame: some queen is there, mated or not.
  colony('T-06', {
    daysAgo: 15,
    yard: TANNERY,
    stand: '6',
    by: MAREN,
    at: '18:30',
    removal: {
      type: 'container',
      outdoorC: 23,
      hoursOpenToBoxed: 2,
      method: 'brushed',
      sprayed: 'unknown',
      site: 'Wheeled bin, Fennel Cross car park',
    },
    queen: 'unseen',
    brood: { eggs: 0.25, open: 0.5, capped: 1 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 5 },
    tiedComb: true,
    temper: 2,
  })
    .outside(2)
    .open(5, {
      eggs: 'none',
      open: 'none',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 5,
      stores: 'enough',
    })
    .give(6, 'egg-frame', { donor: 'T-01', frames: 1 })
    .open(10, { cells: 'none', queen: 'unseen', framesOfBees: 4.5, stores: 'enough', signs: [] })
    .tiesOff(10),

  // A trap-out brings bees only: the frame of eggs went in on the first evening.
  colony('T-07', {
    daysAgo: 21,
    yard: TANNERY,
    stand: '7',
    by: TOBIAH,
    at: '20:10',
    removal: {
      type: 'trap-out',
      outdoorC: 22,
      method: 'trap',
      sprayed: 'no',
      site: 'Chimney cone, 1 Gull Steps',
    },
    queen: 'lost',
    brood: { eggs: 0, open: 0, capped: 0 },
    queenCells: 'none',
    bees: { frames: 4 },
    tiedComb: false,
    temper: 2,
  })
    .give(0, 'egg-frame', { donor: 'M-01', frames: 1, by: TOBIAH, at: '20:30' })
    .outside(1)
    .open(4, { cells: 'open', cellCount: 6, eggs: 'none', queen: 'unseen', framesOfBees: 4, stores: 'low' })
    .give(4, 'syrup', { litres: 2 })
    .outside(10, { stores: 'enough' })
    .outside(17, { stores: 'enough', note: 'Small orientation flights in the afternoon.' }),
]
