/** What is asked of each thing that is given: on a visit only that is shown, and only that is read. */
import type { Gift } from '../../journal/index.ts'

const BROOD = ['egg-frame', 'open-brood', 'capped-brood'] as const
const QUEENS = ['virgin', 'mated-queen'] as const

/** Each part of the form: the things of which it is asked, and its fields. */
export const GIVEN_PARTS = {
  frames: { of: [...BROOD, 'combs', 'bees'], fields: ['frames'] },
  donor: { of: [...BROOD, 'queen-cell', 'bees'], fields: ['donor'] },
  queen: { of: QUEENS, fields: ['caged'] },
  feed: { of: ['syrup', 'pollen'], fields: ['litres'] },
  treatment: { of: ['treatment'], fields: ['product', 'batch', 'withdrawalDays'] },
} as const satisfies Record<string, { of: readonly Gift[]; fields: readonly string[] }>

/** Fields that are not asked of what was given: something typed before another thing was tapped. */
export const notAsked = (what: string): string[] =>
  Object.values(GIVEN_PARTS)
    .filter((p) => !(p.of as readonly string[]).includes(what))
    .flatMap((p) => [...p.fields])
