/** What people type wrong: corrections stand in the place of the first version, withdrawals take a line back. */
import { JUNO, MAREN, MARL, TANNERY, TOBIAH } from '../cast.ts'
import { colony } from '../story.ts'

export const mistakes = [
  // The eggs were seen in the neighbour's box.
  colony('T-15', {
    daysAgo: 12,
    yard: TANNERY,
    stand: '16',
    by: TOBIAH,
    at: '18:00',
    removal: {
      type: 'utility-box',
      outdoorC: 23,
      hoursOpenToBoxed: 2,
      method: 'brushed',
      sprayed: 'no',
      site: 'Valve chamber, Ropewalk End',
    },
    queen: 'unseen',
    brood: { eggs: 0.5, open: 1, capped: 1 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 5 },
    tiedComb: true,
    temper: 2,
  })
    .outside(2)
    .open(5, { eggs: 'single', cells: 'none', queen: 'unseen', framesOfBees: 5, stores: 'enough', signs: [] })
    .corrected(5, {
      eggs: 'none',
      cells: 'open',
      cellCount: 4,
      note: 'Wrote down the box next door. No eggs here: four open cells.',
    })
    .tiesOff(9)
    .withdrawn(10, 'Bands are still on: it was T-13 I cut them off.'),

  // The truck's clock was a day behind, and the type was wrong.
  colony('M-04', {
    daysAgo: 8,
    yard: MARL,
    stand: '4',
    by: MAREN,
    at: '21:30',
    removal: {
      type: 'wall',
      outdoorC: 21,
      hoursOpenToBoxed: 3,
      method: 'walked-in',
      sprayed: 'no',
      site: 'Crate stack behind the chandlery, Cooper’s Wharf',
    },
    removedBefore: 1,
    queen: 'loose',
    brood: { eggs: 0.5, open: 1, capped: 1.5 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 6 },
    tiedComb: true,
    temper: 2,
  })
    .corrected(1, {
      removal: {
        type: 'equipment',
        outdoorC: 21,
        hoursOpenToBoxed: 3,
        method: 'walked-in',
        sprayed: 'no',
        site: 'Winch housing behind the chandlery, Cooper’s Wharf',
      },
      note: 'It was the winch housing, not the wall.',
    })
    .outside(2)
    .open(6, {
      eggs: 'single',
      open: 'some',
      queen: 'seen',
      cells: 'none',
      framesOfBees: 6,
      stores: 'enough',
      signs: [],
    })
    .open(8, { eggs: 'none', open: 'none', cells: 'none', queen: 'unseen', stores: 'enough', by: JUNO }),

  // A visit typed in twice from the paper sheet; the second was taken back.
  colony('M-19', {
    daysAgo: 15,
    yard: MARL,
    stand: '19',
    by: MAREN,
    at: '17:30',
    removal: {
      type: 'floor',
      outdoorC: 22,
      hoursOpenToBoxed: 3,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Signal box floor, Pellbury halt',
    },
    queen: 'loose',
    brood: { eggs: 1, open: 1.5, capped: 2 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 7 },
    tiedComb: true,
    temper: 2,
  })
    .outside(2)
    .open(6, {
      eggs: 'single',
      open: 'some',
      queen: 'unseen',
      cells: 'none',
      framesOfBees: 6,
      stores: 'enough',
      signs: [],
    })
    .open(6, {
      eggs: 'single',
      open: 'some',
      queen: 'unseen',
      cells: 'none',
      framesOfBees: 6,
      stores: 'enough',
      at: '10:20',
    })
    .withdrawn(7, 'Typed in twice.')
    .tiesOff(9)
    .outside(13, {
      stores: 'enough',
      signs: ['robbing'],
      by: JUNO,
      note: 'Isolde away; Juno walked Marl Hollow today. Fighting at the entrance.',
    }),
]
