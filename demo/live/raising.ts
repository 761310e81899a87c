/** The old queen is gone and the colony raises another from its own brood. */
import { MAREN, MARL, TANNERY, TOBIAH } from '../cast.ts'
import { colony } from '../story.ts'

export const raising = [
  colony('M-05', {
    daysAgo: 6,
    yard: MARL,
    stand: '5',
    by: TOBIAH,
    at: '19:00',
    removal: {
      type: 'tree',
      outdoorC: 21,
      hoursOpenToBoxed: 5,
      method: 'brushed',
      sprayed: 'no',
      site: 'Fallen poplar, Heronsby towpath',
    },
    queen: 'unseen',
    brood: { eggs: 1, open: 1.5, capped: 2 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 7 },
    tiedComb: true,
    temper: 2,
  })
    .outside(2)
    .open(5, {
      eggs: 'none',
      open: 'some',
      cells: 'capped',
      cellCount: 5,
      queen: 'unseen',
      framesOfBees: 6,
      stores: 'enough',
    }),

  // Quiet time: she is out and about to mate; the lid stays on.
  colony('M-06', {
    daysAgo: 17,
    yard: MARL,
    stand: '6',
    by: MAREN,
    at: '18:20',
    removal: {
      type: 'floor',
      outdoorC: 23,
      hoursOpenToBoxed: 4,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Bay window floor, 30 Lantern Hill',
    },
    queen: 'unseen',
    brood: { eggs: 1, open: 1, capped: 2 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 7 },
    tiedComb: true,
    temper: 2,
  })
    .outside(2)
    .open(5, {
      eggs: 'none',
      open: 'some',
      cells: 'capped',
      cellCount: 8,
      queen: 'unseen',
      framesOfBees: 6,
      stores: 'enough',
    })
    .tiesOff(8)
    .outside(14, { stores: 'enough', note: 'Pollen coming in, no roar.' }),

  colony('T-04', {
    daysAgo: 28,
    yard: TANNERY,
    stand: '4',
    by: MAREN,
    at: '17:50',
    removal: {
      type: 'wall',
      outdoorC: 26,
      hoursOpenToBoxed: 4,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Bakery yard wall, Tallow Street 12',
    },
    queen: 'lost',
    brood: { eggs: 0.75, open: 1, capped: 2 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 6 },
    tiedComb: true,
    temper: 3,
  })
    .outside(2)
    .open(5, {
      eggs: 'none',
      open: 'some',
      cells: 'capped',
      cellCount: 6,
      queen: 'unseen',
      framesOfBees: 5,
      stores: 'enough',
    })
    .tiesOff(8)
    .outside(14, { stores: 'enough' })
    .wash(20, 4)
    .outside(20, { stores: 'enough' })
    .open(26, {
      eggs: 'single',
      open: 'none',
      capped: 'none',
      queen: 'seen',
      cells: 'emerged',
      framesOfBees: 4,
      stores: 'enough',
      signs: [],
      note: 'There she is: slim, quick, and laying a patch the size of a hand.',
    }),

  // Own queen raised and proved, a scare cleared by the laboratory; only the wash has grown too old.
  colony('T-05', {
    daysAgo: 40,
    yard: TANNERY,
    stand: '5',
    by: MAREN,
    at: '18:00',
    removal: {
      type: 'roof',
      outdoorC: 24,
      hoursOpenToBoxed: 5,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Dormer of the toll house, Ropewalk End',
    },
    queen: 'unseen',
    brood: { eggs: 1, open: 1, capped: 2 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 8 },
    tiedComb: true,
    temper: 2,
  })
    .outside(2)
    .open(5, {
      eggs: 'none',
      open: 'some',
      cells: 'capped',
      cellCount: 7,
      queen: 'unseen',
      framesOfBees: 7,
      stores: 'enough',
    })
    .tiesOff(8)
    .outside(15, { stores: 'enough' })
    .wash(18, 6)
    .outside(20, { stores: 'enough' })
    .open(25, {
      eggs: 'single',
      open: 'none',
      queen: 'seen',
      cells: 'emerged',
      framesOfBees: 5,
      stores: 'enough',
      signs: ['brood-disease-suspected'],
      note: 'A few sunken caps; no thread when pulled. Closed up, a sample is off to the laboratory.',
    })
    .cleared(29, 'laboratory', {
      reference: 'L-2217',
      by: MAREN,
      at: '12:10',
      note: 'Chilled brood, no foulbrood.',
    })
    .outside(30, { stores: 'enough' })
    .open(36, {
      eggs: 'single',
      open: 'plenty',
      capped: 'worker',
      queen: 'unseen',
      cells: 'none',
      framesOfBees: 5,
      framesOfBrood: 3,
      stores: 'enough',
      signs: [],
    }),
]
