/** The hard ones: nobody acted in time, poison, disease, weakness, a queen that cannot lay workers. */
import { FIRST_EGGS, NEITHER, PROVED } from '../seasons/paths.ts'
import { came, NO_BROOD } from './came.ts'

export const trouble = [
  // No queen, no brood, and nobody came back for four weeks.
  came('M-15', 29, 'container', 'Seed drum, Dunnet’s Orchard', { queen: 'lost', brood: NO_BROOD, frames: 4 })
    .outside(2)
    .outside(19, { note: 'Looked fine from outside.' })
    .open(28, {
      eggs: 'multiple',
      capped: 'drone-in-worker',
      cells: 'none',
      queen: 'unseen',
      framesOfBees: 3,
      note: 'Three and four eggs to a cell, some on the walls. Bullet caps.',
    }),

  came('T-13', 13, 'wall', 'Laundry wall, 22 Lantern Hill', {
    queen: 'loose',
    brood: NO_BROOD,
    frames: 2.5,
    sprayed: 'yes',
    deadBeesKg: 1.2,
    note: 'The tenant had sprayed twice before calling. No comb and no honey kept; nothing of it fed to anyone.',
  })
    .outside(1, { stores: 'low', note: 'Many dead on the board, tongues out.' })
    .give(1, 'syrup', { litres: 1 })
    .open(5, {
      ...NEITHER,
      queen: 'seen',
      framesOfBees: 2,
      stores: 'low',
      signs: ['robbing'],
      onFreshComb: true,
    })
    .outside(8, { stores: 'low' }),

  came('M-16', 23, 'abandoned-hive', 'Garden of the closed inn, Fennel Cross', { queen: 'loose', frames: 7 })
    .outside(2)
    .open(5, { ...PROVED, framesOfBees: 7 })
    .wash(14, 5)
    .outside(14)
    .open(22, {
      ...FIRST_EGGS,
      capped: 'worker',
      queen: 'unseen',
      framesOfBees: 6,
      signs: ['brood-disease-suspected'],
      note: 'Sunken caps, one cell pulled a brown thread. Closed up at once, tools flamed.',
    }),

  // Too few bees to come through alone.
  came('T-14', 18, 'trap-out', 'Ventilator of the grain store, Cooper’s Wharf', {
    queen: 'lost',
    frames: 2.5,
  })
    .give(0, 'egg-frame', { donor: 'M-01', frames: 1 })
    .outside(2, { stores: 'low' })
    .give(2, 'syrup', { litres: 1.5 })
    .open(4, { cells: 'open', cellCount: 2, eggs: 'none', queen: 'unseen', framesOfBees: 2, stores: 'low' })
    .outside(9, { signs: ['beetles'] })
    .outside(16, { signs: ['beetles', 'moths'] }),

  // Roof colony with beetles, no queen sign yet and the first brood check just done: nothing of anything.
  came('M-18', 6, 'roof', 'Tin roof of the net loft, Gull Steps', {
    queen: 'unseen',
    frames: 5,
    outdoorC: 32,
    broodCare: 'open-air',
  })
    .outside(2)
    .open(6, { ...NEITHER, framesOfBees: 4, signs: ['queenless-roar', 'beetles'], at: '08:20' }),
]
