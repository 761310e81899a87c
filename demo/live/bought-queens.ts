/** Down the ladder to a purchased mated queen: wanted, accepted, rejected. */
import { MAREN, MARL, TANNERY, TOBIAH } from '../cast.ts'
import { colony } from '../story.ts'

export const boughtQueens = [
  colony('M-10', {
    daysAgo: 20,
    yard: MARL,
    stand: '10',
    by: MAREN,
    at: '18:50',
    removal: {
      type: 'wall',
      outdoorC: 31,
      hoursOpenToBoxed: 4,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Chapel vestry wall, Heronsby',
    },
    queen: 'unseen',
    brood: { eggs: 0.5, open: 0.5, capped: 1 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 5 },
    deadBeesKg: 0.4,
    tiedComb: true,
    temper: 2,
  })
    .outside(1)
    .open(5, {
      eggs: 'none',
      open: 'none',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 5,
      stores: 'enough',
    })
    .give(6, 'egg-frame', { donor: 'M-01', frames: 1 })
    .open(10, { cells: 'none', queen: 'unseen', framesOfBees: 4.5, stores: 'enough' })
    .tiesOff(10)
    .open(16, {
      eggs: 'none',
      open: 'none',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 4,
      stores: 'enough',
      signs: [],
    }),

  // Balled and dead on day 4 after introduction: queenless again.
  colony('T-08', {
    daysAgo: 22,
    yard: TANNERY,
    stand: '8',
    by: MAREN,
    at: '16:40',
    removal: {
      type: 'equipment',
      outdoorC: 28,
      hoursOpenToBoxed: 2.5,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Under the cab of a digger, Pellbury quarry road',
    },
    queen: 'lost',
    brood: { eggs: 0, open: 0.5, capped: 1 },
    broodCare: 'open-air',
    queenCells: 'none',
    bees: { frames: 5 },
    tiedComb: true,
    temper: 3,
  })
    .outside(2)
    .open(5, {
      eggs: 'none',
      open: 'none',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 4.5,
      stores: 'enough',
    })
    .give(5, 'egg-frame', { donor: 'M-01', frames: 1 })
    .open(9, { cells: 'none', queen: 'unseen', framesOfBees: 4.5, stores: 'enough' })
    .tiesOff(9)
    .open(15, {
      eggs: 'none',
      open: 'none',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 4,
      stores: 'enough',
    })
    .give(16, 'mated-queen', { caged: true, cost: 38 })
    .cage(20, 'rejected', { note: 'Balled in the cage mouth, dead when I parted them.' }),

  colony('T-09', {
    daysAgo: 27,
    yard: TANNERY,
    stand: '13',
    by: TOBIAH,
    at: '19:10',
    removal: {
      type: 'utility-box',
      outdoorC: 26,
      hoursOpenToBoxed: 2,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Street cabinet, Windle Mews',
    },
    queen: 'lost',
    brood: { eggs: 0, open: 0, capped: 0.5 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 5 },
    tiedComb: false,
    temper: 2,
  })
    .outside(1)
    .give(2, 'egg-frame', { donor: 'M-01', frames: 1 })
    .open(6, { cells: 'none', queen: 'unseen', framesOfBees: 4.5, stores: 'enough' })
    .open(13, {
      eggs: 'none',
      open: 'none',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 4,
      stores: 'enough',
    })
    .wash(19, 3)
    .give(19, 'mated-queen', { caged: true, cost: 42 })
    .cage(23, 'released'),

  colony('M-11', {
    daysAgo: 36,
    yard: MARL,
    stand: '11',
    by: MAREN,
    at: '17:40',
    removal: {
      type: 'floor',
      outdoorC: 29,
      hoursOpenToBoxed: 4,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Pavilion floor, Larkbarrow cricket ground',
    },
    queen: 'unseen',
    brood: { eggs: 0.5, open: 0.5, capped: 1 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 6 },
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
    .give(6, 'egg-frame', { donor: 'M-03', frames: 1 })
    .open(10, { cells: 'none', queen: 'unseen', framesOfBees: 5, stores: 'enough' })
    .tiesOff(10)
    .open(16, {
      eggs: 'none',
      open: 'none',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 3,
      stores: 'enough',
    })
    .give(18, 'mated-queen', { caged: true, cost: 38 })
    .cage(22, 'released')
    .open(29, {
      eggs: 'single',
      open: 'some',
      queen: 'seen',
      cells: 'none',
      framesOfBees: 1.5,
      stores: 'enough',
      signs: [],
    })
    .wash(29, 4)
    .outside(33, { stores: 'enough' }),
]
