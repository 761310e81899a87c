/** Left the yard in these weeks: every way of leaving. */
import { MAREN } from '../cast.ts'
import { NEITHER, PROVED } from '../seasons/paths.ts'
import { came, NO_BROOD } from './came.ts'

export const gone = [
  came('M-03', 49, 'tree', 'Storm-felled ash, Larkbarrow park', { by: MAREN, queen: 'caged', frames: 8 })
    .goes('own-queen', 34)
    .ends(35, 'moved-out', { destination: 'Widow Ardley’s orchard, Heronsby', by: MAREN, at: '20:30' }),

  // Too weak to go on alone, healthy and queenless: united with the strong swarm beside it.
  came('T-16', 21, 'ground', 'Under paving, Windle Mews 8', { queen: 'lost', brood: NO_BROOD, frames: 2 })
    .outside(1, { stores: 'low' })
    .open(5, { ...NEITHER, framesOfBees: 1.75, stores: 'low' })
    .ends(17, 'united', { into: 'T-01', note: 'Over a sheet of newspaper, at dusk.', at: '20:10' }),

  came('M-21', 34, 'roof', 'Slate roof, old customs house', {
    queen: 'lost',
    frames: 3,
    outdoorC: 36,
    deadBeesKg: 1.5,
    broodCare: 'open-air',
    note: 'Melted comb, honey over everything. We should have refused in that heat.',
  })
    .outside(1, { note: 'Dead heaped at the door.' })
    .open(6, { ...NEITHER, framesOfBees: 1.5, stores: 'low', signs: ['beetles', 'robbing'] })
    .ends(13, 'died', { cause: 'Never recovered from the heat of the removal; robbed out at the end' }),

  came('T-17', 25, 'swarm', 'Railings, Pellbury halt', { queen: 'loose', bees: { kg: 1.3 } })
    .outside(1)
    .ends(3, 'absconded', { note: 'Box empty at noon, a few stragglers. New paint, perhaps.' }),

  came('T-18', 44, 'abandoned-hive', 'Field edge, Sallow Bank', { queen: 'loose', frames: 8 })
    .outside(2)
    .open(5, { ...PROVED, queen: 'seen', framesOfBees: 8, stores: 'heavy' })
    .ends(14, 'other', {
      note: 'Not abandoned after all: its keeper came back from hospital and took it home.',
    }),
]
