/** Left the yard in these weeks: every way of leaving. */
import { MAREN, MARL, TANNERY, TOBIAH } from '../cast.ts'
import { colony } from '../story.ts'

export const gone = [
  colony('M-03', {
    daysAgo: 49,
    yard: MARL,
    stand: '3',
    by: MAREN,
    at: '18:00',
    removal: {
      type: 'tree',
      outdoorC: 20,
      hoursOpenToBoxed: 4,
      method: 'brushed',
      sprayed: 'no',
      site: 'Storm-felled ash, Larkbarrow park',
    },
    queen: 'caged',
    brood: { eggs: 1, open: 2, capped: 2.5 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 8 },
    tiedComb: true,
    temper: 1,
  })
    .outside(2)
    .cage(3, 'released')
    .open(9, {
      eggs: 'single',
      open: 'some',
      queen: 'seen',
      cells: 'none',
      framesOfBees: 7,
      stores: 'enough',
      signs: [],
    })
    .tiesOff(9)
    .outside(16, { stores: 'enough' })
    .wash(24, 2)
    .open(24, {
      eggs: 'single',
      open: 'plenty',
      capped: 'worker',
      queen: 'unseen',
      framesOfBees: 8,
      stores: 'enough',
      signs: [],
    })
    .open(31, {
      eggs: 'single',
      open: 'plenty',
      capped: 'worker',
      queen: 'seen',
      cells: 'none',
      framesOfBees: 9,
      framesOfBrood: 6,
      stores: 'heavy',
      signs: [],
    })
    .ends(33, 'moved-out', { destination: 'Widow Ardley’s orchard, Heronsby', by: MAREN, at: '20:30' }),

  // Too weak to go on alone, healthy and queenless: united with the strong swarm beside it.
  colony('T-16', {
    daysAgo: 21,
    yard: TANNERY,
    stand: '17',
    by: TOBIAH,
    at: '19:30',
    removal: {
      type: 'ground',
      outdoorC: 24,
      hoursOpenToBoxed: 2,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Under paving, Windle Mews 8',
    },
    queen: 'lost',
    brood: { eggs: 0, open: 0, capped: 0.5 },
    broodCare: 'open-air',
    queenCells: 'none',
    bees: { frames: 2 },
    tiedComb: false,
    temper: 2,
  })
    .outside(1, { stores: 'low' })
    .open(5, {
      eggs: 'none',
      open: 'none',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 1.75,
      stores: 'low',
      signs: [],
    })
    .ends(17, 'united', { into: 'T-01', note: 'Over a sheet of newspaper, at dusk.', at: '20:10' }),

  colony('M-21', {
    daysAgo: 34,
    yard: MARL,
    stand: '21',
    by: MAREN,
    at: '15:10',
    removal: {
      type: 'roof',
      outdoorC: 36,
      hoursOpenToBoxed: 7,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Slate roof, old customs house',
    },
    queen: 'lost',
    brood: { eggs: 0, open: 0.25, capped: 0.5 },
    broodCare: 'open-air',
    queenCells: 'none',
    bees: { frames: 3 },
    deadBeesKg: 1.5,
    tiedComb: true,
    temper: 3,
    note: 'Melted comb, honey over everything. We should have refused in that heat.',
  })
    .outside(1, { stores: 'enough', note: 'Dead heaped at the door.' })
    .open(6, {
      eggs: 'none',
      open: 'none',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 1.5,
      stores: 'low',
      signs: ['beetles', 'robbing'],
    })
    .ends(13, 'died', { cause: 'Never recovered from the heat of the removal; robbed out at the end' }),

  colony('T-17', {
    daysAgo: 25,
    yard: TANNERY,
    stand: '18',
    by: TOBIAH,
    at: '18:40',
    removal: {
      type: 'swarm',
      outdoorC: 27,
      hoursOpenToBoxed: 1,
      method: 'walked-in',
      sprayed: 'no',
      site: 'Railings, Pellbury halt',
    },
    queen: 'loose',
    brood: { eggs: 0, open: 0, capped: 0 },
    queenCells: 'none',
    bees: { kg: 1.3 },
    tiedComb: false,
    temper: 1,
  })
    .outside(1)
    .ends(3, 'absconded', { note: 'Box empty at noon, a few stragglers. New paint, perhaps.' }),

  colony('T-18', {
    daysAgo: 44,
    yard: TANNERY,
    stand: '19',
    by: MAREN,
    at: '13:30',
    removal: {
      type: 'abandoned-hive',
      outdoorC: 19,
      hoursOpenToBoxed: 1,
      method: 'walked-in',
      sprayed: 'no',
      site: 'Field edge, Sallow Bank',
    },
    queen: 'loose',
    brood: { eggs: 1, open: 1.5, capped: 2 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 8 },
    tiedComb: false,
    temper: 2,
  })
    .outside(2)
    .open(5, {
      eggs: 'single',
      open: 'plenty',
      capped: 'worker',
      queen: 'seen',
      cells: 'none',
      framesOfBees: 8,
      stores: 'heavy',
      signs: [],
    })
    .outside(12, { stores: 'heavy' })
    .ends(14, 'other', {
      note: 'Not abandoned after all: its keeper came back from hospital and took it home.',
    }),
]
