/** The four ways a past colony came by its queen, as the visits that showed it. Days count from intake. */
import { between, chance, type Draw, pick } from '../seeded.ts'
import type { Story } from '../story.ts'
import type { Job } from './job.ts'

export type Path = 'own-queen' | 'own-brood' | 'egg-frame' | 'bought-queen'

/** One thing done on a day of the story. */
interface Step {
  day: number
  tell: (story: Story, day: number) => void
}

export interface Course {
  steps: Step[]
  /** First day on which everything needed to move out has been seen. */
  provedOn: number
}

/** Draws the way this colony went. Only brood with eggs, kept in a closed chest, is worth raising a queen from. */
export function pathOf(draw: Draw, job: Job): Path {
  const ownBrood = job.brood.eggs > 0 && job.broodCare === 'closed-chest' ? 1 : 0
  switch (job.queen) {
    case 'caged':
      return pick(draw, [
        ['own-queen', 88],
        ['egg-frame', 4],
        ['bought-queen', 8],
      ])
    case 'loose':
      return pick(draw, [
        ['own-queen', 80],
        ['own-brood', 12 * ownBrood],
        ['egg-frame', 5],
        ['bought-queen', 3],
      ])
    case 'unseen':
      return pick(draw, [
        ['own-queen', 35],
        ['own-brood', 40 * ownBrood],
        ['egg-frame', 18],
        ['bought-queen', 14],
      ])
    case 'lost':
      return pick(draw, [
        ['own-brood', 55 * ownBrood],
        ['egg-frame', 35],
        ['bought-queen', 20],
      ])
  }
}

const outside = (day: number): Step => ({ day, tell: (s, d) => s.outside(d) })
const open = (day: number, seen: Parameters<Story['open']>[1]): Step => ({
  day,
  tell: (s, d) => s.open(d, seen),
})
const wash = (draw: Draw, day: number): Step => {
  const mites = pick(draw, [
    [1, 3],
    [3, 4],
    [5, 3],
    [8, 2],
    [13, 1],
  ])
  return { day, tell: (s, d) => s.wash(d, mites) }
}
const ties = (job: Job, day: number): Step[] =>
  job.brood.capped > 0 ? [{ day, tell: (s, d) => s.tiesOff(d) }] : []
const lessBy = (job: Job, frames: number): number => Math.max(1.5, job.frames - frames)

export const NEITHER = { eggs: 'none', open: 'none', cells: 'none', queen: 'unseen' } as const
export const CELLS = { eggs: 'none', open: 'some', cells: 'capped', queen: 'unseen' } as const
export const FIRST_EGGS = { eggs: 'single', open: 'some', cells: 'none', queen: 'seen' } as const
export const PROVED = {
  eggs: 'single',
  open: 'plenty',
  capped: 'worker',
  cells: 'none',
  queen: 'unseen',
} as const

function ownQueen(draw: Draw, job: Job): Course {
  const look = between(draw, 6, 10)
  const caged: Step[] = job.queen === 'caged' ? [{ day: 3, tell: (s, d) => s.cage(d, 'released') }] : []
  const last = between(draw, 30, 33)
  return {
    steps: [
      outside(2),
      ...caged,
      open(look, { ...FIRST_EGGS, framesOfBees: lessBy(job, 0.5) }),
      ...ties(job, look),
      outside(16),
      wash(draw, 21),
      open(24, { ...PROVED, framesOfBees: job.frames }),
      open(last, { ...PROVED, framesOfBees: job.frames + 1, framesOfBrood: 5 }),
    ],
    provedOn: last,
  }
}

function ownBrood(draw: Draw, job: Job): Course {
  const eggs = between(draw, 24, 28)
  const proved = eggs + between(draw, 10, 13)
  return {
    steps: [
      outside(2),
      open(5, {
        ...CELLS,
        cellCount: between(draw, 2, 14),
        framesOfBees: lessBy(job, 0.5),
      }),
      ...ties(job, 8),
      outside(15),
      wash(draw, 21),
      open(eggs, { ...FIRST_EGGS, open: 'none', framesOfBees: lessBy(job, 2) }),
      open(proved, { ...PROVED, framesOfBees: lessBy(job, 1.5), framesOfBrood: 3 }),
    ],
    provedOn: proved,
  }
}

const frameOfEggs = (donor: string | undefined, day: number): Step => ({
  day,
  tell: (s, d) => s.give(d, 'egg-frame', { frames: 1, ...(donor === undefined ? {} : { donor }) }),
})

function eggFrame(draw: Draw, job: Job, donor: string | undefined): Course {
  const eggs = between(draw, 29, 34)
  const proved = eggs + between(draw, 10, 13)
  return {
    steps: [
      outside(2),
      open(5, { ...NEITHER, framesOfBees: lessBy(job, 0.5) }),
      frameOfEggs(donor, 6),
      open(10, { cells: 'open', cellCount: between(draw, 2, 9), framesOfBees: lessBy(job, 1) }),
      ...ties(job, 10),
      outside(17),
      wash(draw, 22),
      open(eggs, { ...FIRST_EGGS, open: 'none', framesOfBees: lessBy(job, 2.5) }),
      open(proved, { ...PROVED, framesOfBees: lessBy(job, 2), framesOfBrood: 3 }),
    ],
    provedOn: proved,
  }
}

function boughtQueen(draw: Draw, job: Job, donor: string | undefined): Course {
  const given = between(draw, 17, 19)
  const proved = given + between(draw, 20, 24)
  const second: Step[] = chance(draw, 0.2)
    ? [{ day: given + 3, tell: (s, d) => s.cage(d, 'still-caged') }]
    : []
  return {
    steps: [
      outside(2),
      open(5, { ...NEITHER, framesOfBees: lessBy(job, 0.5) }),
      frameOfEggs(donor, 6),
      open(10, { cells: 'none', queen: 'unseen', framesOfBees: lessBy(job, 1) }),
      ...ties(job, 10),
      open(16, { ...NEITHER, framesOfBees: lessBy(job, 1.5) }),
      { day: given, tell: (s, d) => s.give(d, 'mated-queen', { caged: true, cost: between(draw, 34, 46) }) },
      ...second,
      { day: given + 4, tell: (s, d) => s.cage(d, 'released') },
      open(given + 11, { ...FIRST_EGGS, framesOfBees: lessBy(job, 2) }),
      wash(draw, given + 11),
      open(proved, { ...PROVED, framesOfBees: lessBy(job, 1), framesOfBrood: 4 }),
    ],
    provedOn: proved,
  }
}

/** The visits of a colony that goes this way to its end; `donor` gives the frame of eggs, where one is needed. */
export function courseOf(draw: Draw, path: Path, job: Job, donor: string | undefined): Course {
  switch (path) {
    case 'own-queen':
      return ownQueen(draw, job)
    case 'own-brood':
      return ownBrood(draw, job)
    case 'egg-frame':
      return eggFrame(draw, job, donor)
    case 'bought-queen':
      return boughtQueen(draw, job, donor)
  }
}
