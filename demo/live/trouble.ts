/** The hard ones: nobody acted in time, poison, disease, weakness, a queen that cannot lay workers. */
import { MAREN, MARL, TANNERY, TOBIAH } from '../cast.ts'
import { colony } from '../story.ts'

export const trouble = [
  // No queen, no brood, and nobody came back for four weeks.
  colony('M-15', {
    daysAgo: 29,
    yard: MARL,
    stand: '15',
    by: TOBIAH,
    at: '20:00',
    removal: {
      type: 'container',
      outdoorC: 24,
      hoursOpenToBoxed: 2,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Seed drum, Dunnet’s Orchard',
    },
    queen: 'lost',
    brood: { eggs: 0, open: 0, capped: 0 },
    queenCells: 'none',
    bees: { frames: 4 },
    tiedComb: false,
    temper: 3,
  })
    .outside(2)
    .outside(19, { stores: 'enough', note: 'Looked fine from outside.' })
    .open(28, {
      eggs: 'multiple',
      capped: 'drone-in-worker',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 3,
      stores: 'enough',
      signs: [],
      note: 'Three and four eggs to a cell, some on the walls. Bullet caps.',
    }),

  colony('T-13', {
    daysAgo: 13,
    yard: TANNERY,
    stand: '14',
    by: MAREN,
    at: '13:20',
    removal: {
      type: 'wall',
      outdoorC: 27,
      hoursOpenToBoxed: 2,
      method: 'vacuum',
      sprayed: 'yes',
      site: 'Laundry wall, 22 Lantern Hill',
    },
    queen: 'loose',
    brood: { eggs: 0, open: 0, capped: 0 },
    queenCells: 'none',
    bees: { frames: 2.5 },
    deadBeesKg: 1.2,
    tiedComb: false,
    temper: 2,
    note: 'The tenant had sprayed twice before calling. No comb and no honey kept; nothing of it fed to anyone.',
  })
    .outside(1, { stores: 'low', note: 'Many dead on the board, tongues out.' })
    .give(1, 'syrup', { litres: 1 })
    .open(5, {
      eggs: 'none',
      open: 'none',
      cells: 'none',
      queen: 'seen',
      framesOfBees: 2,
      stores: 'low',
      signs: ['robbing'],
      onFreshComb: true,
    })
    .outside(8, { stores: 'low' }),

  colony('M-16', {
    daysAgo: 23,
    yard: MARL,
    stand: '16',
    by: TOBIAH,
    at: '15:00',
    removal: {
      type: 'abandoned-hive',
      outdoorC: 20,
      hoursOpenToBoxed: 1,
      method: 'walked-in',
      sprayed: 'no',
      site: 'Garden of the closed inn, Fennel Cross',
    },
    queen: 'loose',
    brood: { eggs: 1, open: 2, capped: 3 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 7 },
    tiedComb: false,
    temper: 2,
  })
    .outside(2)
    .open(5, {
      eggs: 'single',
      open: 'plenty',
      capped: 'worker',
      queen: 'unseen',
      cells: 'none',
      framesOfBees: 7,
      stores: 'enough',
      signs: [],
    })
    .wash(14, 5)
    .outside(14, { stores: 'enough' })
    .open(22, {
      eggs: 'single',
      open: 'some',
      capped: 'worker',
      queen: 'unseen',
      cells: 'none',
      framesOfBees: 6,
      stores: 'enough',
      signs: ['brood-disease-suspected'],
      note: 'Sunken caps, one cell pulled a brown thread. Closed up at once, tools flamed.',
    }),

  // Too few bees to come through alone.
  colony('T-14', {
    daysAgo: 18,
    yard: TANNERY,
    stand: '15',
    by: MAREN,
    at: '18:15',
    removal: {
      type: 'trap-out',
      outdoorC: 26,
      method: 'trap',
      sprayed: 'no',
      site: 'Ventilator of the grain store, Cooper’s Wharf',
    },
    queen: 'lost',
    brood: { eggs: 0, open: 0, capped: 0 },
    queenCells: 'none',
    bees: { frames: 2.5 },
    tiedComb: false,
    temper: 1,
  })
    .give(0, 'egg-frame', { donor: 'M-01', frames: 1, by: MAREN, at: '18:40' })
    .outside(2, { stores: 'low' })
    .give(2, 'syrup', { litres: 1.5 })
    .open(4, { cells: 'open', cellCount: 2, eggs: 'none', queen: 'unseen', framesOfBees: 2, stores: 'low' })
    .outside(9, { stores: 'enough', signs: ['beetles'] })
    .outside(16, { stores: 'enough', signs: ['beetles', 'moths'] }),

  // Roof colony with beetles, no queen sign yet and the first brood check just done: nothing of anything.
  colony('M-18', {
    daysAgo: 6,
    yard: MARL,
    stand: '18',
    by: MAREN,
    at: '19:00',
    removal: {
      type: 'roof',
      outdoorC: 32,
      hoursOpenToBoxed: 5,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Tin roof of the net loft, Gull Steps',
    },
    queen: 'unseen',
    brood: { eggs: 0.25, open: 0.5, capped: 1 },
    broodCare: 'open-air',
    queenCells: 'none',
    bees: { frames: 5 },
    deadBeesKg: 0.6,
    tiedComb: true,
    temper: 3,
  })
    .outside(2)
    .open(6, {
      eggs: 'none',
      open: 'none',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 4,
      stores: 'enough',
      signs: ['queenless-roar', 'beetles'],
      at: '08:20',
    }),
]
