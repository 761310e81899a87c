/** The six worlds of the report, and worlds drawn at random against tuning to the six. */
import { Dice } from './dice.ts'
import { AS_PUBLISHED, type World } from './world.ts'

const eyes = AS_PUBLISHED.eyes

export const WORLDS: readonly World[] = [
  AS_PUBLISHED,
  {
    ...AS_PUBLISHED,
    name: 'rough removals',
    about: 'fewer queens found, more hurt, less brood alive, fewer bees',
    caged: 0.15, // judgement, as are the others here: half as good as published
    aliveUnseen: 0.4,
    cagedDies: 0.12, // Mangum 2019: 10 % of package queens dead on first inspection
    failing: 0.12,
    framesOfBees: 5,
    broodAlive: 0.35,
    leaves: 0.03,
  },
  {
    ...AS_PUBLISHED,
    name: 'slow mating',
    about: 'bad weather: virgins wait for days to fly, some are never mated',
    flyable: 0.28, // judgement; makes about 16 days to the first egg: UK average 14-21
    flightSafe: 0.91,
    mateToEgg: 4,
    cellsGiveVirgin: 0.8,
    forage: 0.7,
  },
  {
    ...AS_PUBLISHED,
    name: 'novice helper',
    about: 'a helper who overlooks eggs and cells, leaves half of a look undone, and opens clumsily',
    openingLosesVirgin: 0.1, // judgement
    openingMakesLeave: 0.05,
    accepted: 0.65,
    eyes: {
      ...eyes,
      haste: 0.6,
      half: 0.25,
      eggs: 0.82,
      open: 0.93,
      capped: 0.96,
      cells: 0.75,
      queen: 0.35,
      falseEggs: 0.03,
      falseCells: 0.04,
      falseCaps: 0.08,
    }, // judgement
  },
  {
    ...AS_PUBLISHED,
    name: 'seldom visited',
    about: 'somebody is there on one day of the week, and not in bad weather',
    presence: 0,
    leadTime: 7,
  },
  {
    ...AS_PUBLISHED,
    name: 'autumn',
    about: 'removals of August to October: queens hardly mate, laying ends, forage is scarce',
    season: ['08-20', '10-10'],
    accepted: 0.87, // Rhodes & Denney 2003: 13 % lost in autumn
    forage: 0.5,
    framesOfBees: 7,
  },
]

/** Each number of a random world lies between these two. Judgement, from the ranges that sources disagree over. */
const RANGES = {
  caged: [0.1, 0.5],
  aliveUnseen: [0.35, 0.7],
  cagedDies: [0.02, 0.14],
  failing: [0.03, 0.14],
  framesOfBees: [4, 8],
  broodAlive: [0.3, 0.85],
  cellsStarted: [0.8, 0.97],
  cellsGiveVirgin: [0.7, 0.92],
  flyable: [0.25, 0.75],
  flightSafe: [0.89, 0.96],
  flightMates: [0.45, 0.7],
  mateToEgg: [2.5, 4.5],
  accepted: [0.55, 0.88],
  layingWorkers: [12, 20],
  layingWorkersSpread: [2, 5],
  openingLosesVirgin: [0.03, 0.12],
  openingMakesLeave: [0.01, 0.06],
  leaves: [0.005, 0.04],
  forage: [0.5, 1.1],
  flightDeath: [0.85, 1.25],
} as const satisfies Partial<Record<keyof World, readonly [number, number]>>

/** World number `n` (from 0) of those drawn with `seed`. */
export function randomWorld(seed: number, n: number): World {
  const dice = new Dice(seed, n)
  const drawn = Object.fromEntries(
    Object.entries(RANGES).map(([key, [low, high]], i) => [key, dice.between(low, high, 'world', i)]),
  ) as Record<keyof typeof RANGES, number>
  const clumsy = dice.at('world', 50)
  const late = dice.chance(0.25, 'world', 51)
  const seldom = dice.chance(0.25, 'world', 52)
  const blur = (best: number, worst: number): number => best + (worst - best) * clumsy
  return {
    ...AS_PUBLISHED,
    ...drawn,
    name: `random ${n + 1}`,
    about: `drawn at random${late ? ', from July on' : ''}${seldom ? ', visited once a week' : ''}`,
    season: late ? ['07-01', '09-30'] : ['04-20', '07-31'],
    presence: seldom ? 0 : dice.between(0.3, 0.9, 'world', 53),
    leadTime: 2 + Math.floor(dice.at('world', 54) * 9),
    eyes: {
      haste: blur(0.15, 0.65),
      half: blur(0.05, 0.3),
      eggs: blur(0.96, 0.8),
      open: blur(0.98, 0.92),
      capped: blur(0.99, 0.95),
      cells: blur(0.93, 0.72),
      queen: blur(0.65, 0.3),
      hasteFactor: 0.8,
      falseEggs: blur(0.005, 0.035),
      falseCells: blur(0.01, 0.05),
      falseCaps: blur(0.02, 0.09),
    },
  }
}
