/** Just in: the first week, when the queen's fate is still open. One came this morning, one round was missed. */
import { came, NO_BROOD } from './came.ts'

export const arrivals = [
  came('T-12', 0, 'wall', 'Porch wall, 9 Quillpen Row, Ostermoor', {
    by: 'Maren',
    at: '07:50',
    removedBefore: 1,
    queen: 'caged',
    outdoorC: 22,
    note: 'Cut out last evening, kept in the shade overnight. Queen found on the third comb, clipped into a cage.',
  }),

  came('T-11', 1, 'tree', 'Felled limb, Heronsby churchyard', {
    queen: 'unseen',
    note: 'Hollow split when it came down. Good brood, never saw her.',
  }),

  came('T-10', 2, 'ground', 'Water meter pit, Ropewalk End 3', {
    queen: 'lost',
    brood: NO_BROOD,
    frames: 3.5,
    note: 'She went through the vacuum and was dead in the cage. The comb was crushed, none of it could be kept.',
  }).outside(1, { stores: 'low', note: 'Flying, roaring. Feed given.' }),

  came('M-14', 3, 'swarm', 'Apple tree, Dunnet’s Orchard', { queen: 'loose', bees: { kg: 1.8 } })
    .give(0, 'syrup', { litres: 1, syrup: '1:1' })
    .outside(1, { note: 'Pollen going in already.' }),

  came('M-13', 5, 'roof', 'Soffit above the stage door, Old Assembly Hall', {
    queen: 'unseen',
    frames: 5,
    outdoorC: 33,
    broodCare: 'open-air',
    note: 'Far too hot by noon; should have waited for evening. The brood lay in the sun for a while.',
  }).outside(2, { temper: 4, note: 'A cupful of dead bees at the door.' }),

  // Nobody has seen this one since day 2, once for the weather: its first brood check is overdue.
  came('M-12', 11, 'floor', 'Under the summerhouse floor, Larkbarrow House', { queen: 'unseen' })
    .outside(2, { note: 'Quiet, flying well.' })
    .missed(6, 'rain', { note: 'Track under water, could not get the barrow through.' }),
]
