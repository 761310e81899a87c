/** The queen came along: caged or loose, she has only to lay. */
import { ISOLDE, MAREN, MARL, TANNERY, TOBIAH } from '../cast.ts'
import { colony } from '../story.ts'

export const ownQueen = [
  // Everything is answered: ready to go.
  colony('M-01', {
    daysAgo: 38,
    yard: MARL,
    stand: '1',
    by: MAREN,
    at: '18:10',
    removal: {
      type: 'wall',
      outdoorC: 23,
      hoursOpenToBoxed: 3,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Gable of the malt house, Cooper’s Wharf',
    },
    queen: 'caged',
    brood: { eggs: 1, open: 2, capped: 3 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 8 },
    deadBeesKg: 0.1,
    tiedComb: true,
    temper: 2,
  })
    .outside(2, { stores: 'enough' })
    .cage(3, 'released', { note: 'Candy eaten through, she walked down between the frames.' })
    .open(10, {
      eggs: 'single',
      open: 'some',
      cells: 'none',
      queen: 'seen',
      framesOfBees: 7,
      stores: 'enough',
      signs: [],
    })
    .tiesOff(10)
    .outside(16, { stores: 'enough' })
    .open(24, {
      eggs: 'single',
      open: 'plenty',
      capped: 'worker',
      queen: 'unseen',
      cells: 'none',
      framesOfBees: 8,
      framesOfBrood: 5,
      stores: 'enough',
      signs: [],
    })
    .wash(28, 3)
    .outside(30, { stores: 'enough' })
    .open(35, {
      eggs: 'single',
      open: 'plenty',
      capped: 'worker',
      queen: 'seen',
      cells: 'none',
      framesOfBees: 9,
      framesOfBrood: 6,
      stores: 'heavy',
      signs: [],
      temper: 2,
      note: 'Brood wall to wall. Last disease look: clean.',
    }),

  colony('M-02', {
    daysAgo: 16,
    yard: MARL,
    stand: '2',
    by: TOBIAH,
    at: '12:30',
    removal: {
      type: 'utility-box',
      outdoorC: 20,
      hoursOpenToBoxed: 1.5,
      method: 'brushed',
      sprayed: 'no',
      site: 'Cable box 41, Tallow Street',
    },
    queen: 'caged',
    brood: { eggs: 0, open: 0.5, capped: 1 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 4 },
    tiedComb: true,
    temper: 1,
  })
    .outside(1)
    .cage(3, 'released')
    .open(10, { eggs: 'single', cells: 'none', queen: 'seen', framesOfBees: 4, stores: 'enough', signs: [] })
    .tiesOff(10)
    .outside(15, { stores: 'low' }),

  colony('T-01', {
    daysAgo: 24,
    yard: TANNERY,
    stand: '1',
    by: TOBIAH,
    at: '17:30',
    removal: {
      type: 'swarm',
      outdoorC: 24,
      hoursOpenToBoxed: 0.5,
      method: 'hived',
      sprayed: 'no',
      site: 'Bus shelter, Fennel Cross',
    },
    queen: 'loose',
    brood: { eggs: 0, open: 0, capped: 0 },
    queenCells: 'none',
    bees: { kg: 2.2 },
    tiedComb: false,
    temper: 1,
  })
    .give(0, 'syrup', { litres: 2, syrup: '1:1', by: TOBIAH, at: '18:00' })
    .outside(2)
    .open(6, {
      eggs: 'single',
      onFreshComb: true,
      queen: 'seen',
      framesOfBees: 5,
      stores: 'enough',
      signs: [],
    })
    .open(15, {
      eggs: 'single',
      open: 'plenty',
      capped: 'worker',
      onFreshComb: true,
      queen: 'unseen',
      cells: 'none',
      framesOfBees: 5,
      framesOfBrood: 3,
      stores: 'enough',
      signs: [],
    })
    .outside(21, { stores: 'enough' })
    .wash(21, 2),

  // Day 3: still in her cage, the candy is hard. She wants letting out.
  colony('T-02', {
    daysAgo: 6,
    yard: TANNERY,
    stand: '2',
    by: MAREN,
    at: '14:20',
    removal: {
      type: 'equipment',
      outdoorC: 25,
      hoursOpenToBoxed: 2,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Switch cabinet, Pellbury water works',
    },
    queen: 'caged',
    brood: { eggs: 0.25, open: 0.5, capped: 0.5 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 4 },
    tiedComb: true,
    temper: 2,
  })
    .outside(2)
    .cage(4, 'still-caged', { note: 'Candy gone hard as glass. Pricked it; look again.' }),

  colony('T-03', {
    daysAgo: 9,
    yard: TANNERY,
    stand: '3',
    by: TOBIAH,
    at: '11:00',
    removal: {
      type: 'abandoned-hive',
      outdoorC: 18,
      hoursOpenToBoxed: 1,
      method: 'walked-in',
      sprayed: 'no',
      site: 'Behind the allotments, Sallow Bank',
    },
    queen: 'loose',
    brood: { eggs: 1.5, open: 2, capped: 3 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 10 },
    tiedComb: false,
    temper: 3,
  })
    .outside(2, { stores: 'heavy' })
    .open(5, {
      eggs: 'single',
      open: 'plenty',
      capped: 'worker',
      queen: 'seen',
      cells: 'cups',
      framesOfBees: 10,
      stores: 'heavy',
      signs: ['mites-seen', 'deformed-wings'],
      note: 'A crippled bee or two on the board.',
    })
    .wash(5, 14),

  // Came to one yard, was moved to the other.
  colony('M-20', {
    daysAgo: 20,
    yard: TANNERY,
    stand: '9',
    by: TOBIAH,
    at: '15:40',
    removal: {
      type: 'container',
      outdoorC: 22,
      hoursOpenToBoxed: 2,
      method: 'brushed',
      sprayed: 'no',
      site: 'Rain barrel, Windle Mews 2',
    },
    queen: 'loose',
    brood: { eggs: 0.5, open: 1, capped: 1 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 5 },
    tiedComb: true,
    temper: 2,
  })
    .outside(2)
    .open(5, {
      eggs: 'single',
      open: 'some',
      queen: 'unseen',
      cells: 'none',
      framesOfBees: 5,
      stores: 'enough',
      signs: [],
    })
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
      stores: 'enough',
      signs: [],
    }),
]
