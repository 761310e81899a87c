/** One past removal: what came, how it was done, and how that bore on its chances. All of it invented. */

import type { Day } from '../../src/days.ts'
import type { Intake } from '../../src/journal/index.ts'
import { MAREN, MARL, TANNERY, TOBIAH } from '../cast.ts'
import { between, chance, type Draw, pick } from '../seeded.ts'
import { outdoorC } from './weather.ts'

export interface Job {
  tag: string
  on: Day
  type: string
  by: string
  yard: string
  stand: string
  outdoorC: number
  hours: number
  method: NonNullable<Intake['removal']['method']>
  sprayed: 'yes' | 'no' | 'unknown'
  queen: Exclude<Intake['queen'], 'unknown'>
  /** Quarter frames saved of each stage. */
  brood: { eggs: number; open: number; capped: number }
  broodCare: 'closed-chest' | 'open-air'
  frames: number
  deadBeesKg: number
}

interface Kind {
  /** How many of a hundred jobs are of this type. */
  share: number
  method: Job['method']
  /** Usual hours from opening to boxed. */
  hours: number
  /** How much comb is usually saved, 0 to 1. */
  brood: number
  queen: readonly (readonly [Job['queen'], number])[]
}

const CUT: Kind['queen'] = [
  ['caged', 30],
  ['loose', 12],
  ['unseen', 42],
  ['lost', 16],
]
const OPEN_BOX: Kind['queen'] = [
  ['caged', 40],
  ['loose', 25],
  ['unseen', 28],
  ['lost', 7],
]
const SWARMED: Kind['queen'] = [
  ['caged', 10],
  ['loose', 75],
  ['unseen', 15],
]

const KINDS: Record<string, Kind> = {
  wall: { share: 27, method: 'vacuum', hours: 4, brood: 1, queen: CUT },
  roof: { share: 12, method: 'vacuum', hours: 5, brood: 0.8, queen: CUT },
  floor: { share: 8, method: 'vacuum', hours: 4, brood: 1, queen: CUT },
  tree: { share: 12, method: 'brushed', hours: 5, brood: 0.9, queen: CUT },
  ground: { share: 5, method: 'vacuum', hours: 3, brood: 0.6, queen: OPEN_BOX },
  'utility-box': { share: 7, method: 'vacuum', hours: 2, brood: 0.8, queen: OPEN_BOX },
  equipment: { share: 4, method: 'vacuum', hours: 2, brood: 0.7, queen: OPEN_BOX },
  container: { share: 4, method: 'brushed', hours: 2, brood: 0.8, queen: OPEN_BOX },
  swarm: { share: 13, method: 'hived', hours: 1, brood: 0, queen: SWARMED },
  'trap-out': { share: 4, method: 'trap', hours: 0, brood: 0, queen: [['lost', 1]] },
  'abandoned-hive': { share: 4, method: 'walked-in', hours: 1, brood: 1.2, queen: OPEN_BOX },
}

const quarters = (x: number): number => Math.max(0, Math.round(x * 4) / 4)

/** Draws a removal on that day, of a type as often as it comes. */
export const jobOn = (draw: Draw, tag: string, on: Day): Job =>
  jobOf(
    draw,
    tag,
    on,
    pick(
      draw,
      Object.entries(KINDS).map(([name, k]) => [name, k.share] as const),
    ),
  )

/** Draws a removal of that type on that day, sprayed or not where that is known. Throws RangeError for a type this yard never does. */
export function jobOf(draw: Draw, tag: string, on: Day, type: string, known?: Job['sprayed']): Job {
  const kind = KINDS[type]
  if (kind === undefined) throw new RangeError(`jobOf: no such type: ${type}`)
  const hot = outdoorC(draw, on)
  const sprayed =
    known ??
    pick(draw, [
      ['no', 88],
      ['unknown', 6],
      ['yes', 6],
    ] as const)
  const saved = sprayed === 'yes' ? 0 : kind.brood * (0.5 + draw())
  const yard = chance(draw, 0.55) ? MARL : TANNERY
  return {
    tag,
    on,
    type,
    by: chance(draw, 0.6) ? MAREN : TOBIAH,
    yard,
    stand: String(between(draw, 1, 24)),
    outdoorC: hot,
    hours: quarters(kind.hours * (0.6 + 0.9 * draw())),
    method: kind.method,
    sprayed,
    queen: pick(draw, kind.queen),
    brood: { eggs: quarters(saved * 0.75), open: quarters(saved * 1.25), capped: quarters(saved * 2) },
    broodCare: chance(draw, 0.7) ? 'closed-chest' : 'open-air',
    frames: quarters(type === 'trap-out' ? 2.5 + 2 * draw() : 3.5 + 5 * draw()),
    deadBeesKg: Math.round(10 * (Math.max(0, hot - 26) * 0.08 + 0.3 * draw())) / 10,
  }
}

/** The limit above which the trade advises not to cut out, °C (85 °F, common practice). */
const HEAT_LIMIT_C = 29.4

/**
 * The chance that the colony dies or leaves before day 60, from an invented logistic model: heat, a queen that did not
 * come along, poison and a long day all cost colonies; a swarm is whole and does best, if it stays.
 */
export function chanceOfLoss(job: Job): number {
  const queen = { caged: -0.5, loose: -0.1, unseen: 0.25, lost: 0.6 }[job.queen]
  const type = { swarm: -0.4, 'trap-out': 0.8, roof: 0.25, 'abandoned-hive': -0.4 }[job.type] ?? 0
  const score =
    -1.35 +
    queen +
    type +
    (job.outdoorC > HEAT_LIMIT_C ? 1.1 : 0) +
    (job.sprayed === 'yes' ? 1.2 : 0) +
    (job.hours > 5 ? 0.4 : 0) +
    (job.frames < 4 ? 0.4 : 0)
  return 1 / (1 + Math.exp(-score))
}

/** The job as an intake is told. */
export const arrivingOf = (job: Job) => ({
  on: job.on,
  by: job.by,
  at: '18:00',
  yard: job.yard,
  stand: job.stand,
  removal: {
    type: job.type,
    outdoorC: job.outdoorC,
    ...(job.hours > 0 ? { hoursOpenToBoxed: job.hours } : {}),
    method: job.method,
    sprayed: job.sprayed,
  },
  queen: job.queen,
  brood: job.brood,
  broodCare: job.broodCare,
  queenCells: 'none' as const,
  bees: { frames: job.frames },
  deadBeesKg: job.deadBeesKg,
  tiedComb: job.brood.capped > 0,
})
