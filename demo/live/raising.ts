/** The old queen is gone and the colony raises another from its own brood. */
import { MAREN } from '../cast.ts'
import { FIRST_EGGS, PROVED } from '../seasons/paths.ts'
import { came } from './came.ts'

export const raising = [
  came('M-05', 6, 'tree', 'Fallen poplar, Heronsby towpath', { queen: 'unseen' }).goes('own-brood', 6),

  // Quiet time: she is out and about to mate; the lid stays on.
  came('M-06', 17, 'floor', 'Bay window floor, 30 Lantern Hill', { queen: 'unseen', frames: 7 }).goes(
    'own-brood',
    17,
  ),

  came('T-04', 28, 'wall', 'Bakery yard wall, Tallow Street 12', { queen: 'lost', frames: 6 })
    .goes('own-brood', 21)
    .open(26, {
      ...FIRST_EGGS,
      open: 'none',
      capped: 'none',
      cells: 'emerged',
      framesOfBees: 4,
      note: 'There she is: slim, quick, and laying a patch the size of a hand.',
    }),

  // Own queen raised and proved, a scare cleared by the laboratory; only the wash has grown too old.
  came('T-05', 43, 'roof', 'Dormer of the toll house, Ropewalk End', { queen: 'unseen', frames: 7 })
    .goes('own-brood', 21)
    .open(25, {
      ...FIRST_EGGS,
      open: 'none',
      cells: 'emerged',
      framesOfBees: 5,
      signs: ['brood-disease-suspected'],
      note: 'A few sunken caps; no thread when pulled. Closed up, a sample is off to the laboratory.',
    })
    .cleared(29, 'laboratory', {
      reference: 'L-2217',
      by: MAREN,
      at: '12:10',
      note: 'Chilled brood, no foulbrood.',
    })
    .outside(30)
    .open(39, { ...PROVED, framesOfBees: 5, framesOfBrood: 3 }),
]
