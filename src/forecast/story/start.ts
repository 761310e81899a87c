/** The stories possible on the removal day, from what was written down at intake. */
import { type Intake, queenTaken } from '../../journal/index.ts'
import type { Rates } from '../rates.ts'
import { NO_OLD, pack, Q } from './state.ts'

/** A share of all stories, by state number. */
export type Weights = Map<number, number>

const clip = (p: number): number => Math.min(0.99, Math.max(0.01, p))

/** Odds, times a factor. Example: timesOdds(0.5, 2) = 0.667. */
const timesOdds = (p: number, factor: number): number => (p * factor) / (1 - p + p * factor)

/** How the way of removal shifts the odds that an unseen queen came along. Judgement: bees that walk in come with their queen, a vacuum hurts some, trap-outs leave her behind. */
const METHOD_ODDS: Record<NonNullable<Intake['removal']['method']>, number> = {
  vacuum: 0.85,
  brushed: 1.1,
  'walked-in': 2.5,
  trap: 0.2,
  hived: 4,
}

/** Chance that the old queen came along alive. Example: caged 0.97, unseen 0.50, unseen in a trap-out 0.17. */
export function aliveChance(intake: Intake, rates: Rates): number {
  const queen = queenTaken(intake)
  const base = {
    caged: rates.aliveCaged,
    loose: rates.aliveLoose,
    unseen: rates.aliveUnseen,
    lost: rates.aliveLost,
  }[queen]
  if (queen !== 'unseen') return base
  const { method, type } = intake.removal
  const byMethod = method === undefined ? 1 : METHOD_ODDS[method]
  const byType = type === 'swarm' ? 4 : type === 'trap-out' && method !== 'trap' ? 0.2 : 1
  const sprayed = intake.removal.sprayed === 'yes' ? 0.5 : 1
  return clip(timesOdds(base, byMethod * byType * sprayed))
}

/** Chance that young brood that came along lives. */
export function broodAliveChance(intake: Intake, rates: Rates): number {
  const base =
    intake.broodCare === 'closed-chest'
      ? rates.broodAliveClosed
      : intake.broodCare === 'open-air'
        ? rates.broodAliveOpen
        : rates.broodAliveUnknown
  const long = (intake.removal.hoursOpenToBoxed ?? 0) > 4 ? rates.broodAliveLong : 1
  return intake.removal.sprayed === 'yes' ? 0.1 : base * long
}

/** Chance that brood nobody wrote of came along: a swarm has none. Judgement. */
const UNWRITTEN_BROOD = 0.6
const UNWRITTEN_BROOD_OF_A_SWARM = 0.05

const spread = (from: number, to: number, share: number): [number, number][] =>
  Array.from({ length: to - from + 1 }, (_, i) => [from + i, share / (to - from + 1)])

/**
 * Days since the last egg among the brood that came along and lives, with chances; NO_OLD for none. Open brood without eggs
 * is 3-8 days old, capped brood alone 9-20; brood too young to live through a bad journey leaves the capped.
 */
export function oldBrood(intake: Intake, rates: Rates): [number, number][] {
  const { eggs, open, capped } = intake.brood ?? {}
  const unknown = intake.removal.type === 'swarm' ? UNWRITTEN_BROOD_OF_A_SWARM : UNWRITTEN_BROOD
  const there = (amount: number | undefined, share: number): number =>
    amount === undefined ? share : amount > 0 ? 1 : 0
  const nothingWritten = eggs === undefined && open === undefined && capped === undefined
  if (nothingWritten) return mix(unknown, withYoung(0, 1, broodAliveChance(intake, rates), 1), [[NO_OLD, 1]])
  const lives = broodAliveChance(intake, rates)
  const hasEggs = there(eggs, (open ?? 0) > 0 ? UNWRITTEN_BROOD : UNWRITTEN_BROOD / 2)
  const hasOpen = there(open, UNWRITTEN_BROOD)
  const hasCapped = there(capped, UNWRITTEN_BROOD)
  const noYoung: [number, number][] = [...spread(9, 20, hasCapped), [NO_OLD, 1 - hasCapped]]
  const onlyOpen = spread(3, 8, 1).flatMap(([age, w]) => withYoung(age, w, lives, hasCapped))
  return mix(hasEggs, withYoung(0, 1, lives, hasCapped), mix(hasOpen, onlyOpen, noYoung))
}

/** Brood of that age lives, or dies and leaves what is capped (laid nine days before and longer). */
const withYoung = (age: number, w: number, lives: number, capped: number): [number, number][] => [
  [age, w * lives],
  [9, w * (1 - lives) * capped],
  [NO_OLD, w * (1 - lives) * (1 - capped)],
]

const mix = (p: number, a: [number, number][], b: [number, number][]): [number, number][] => [
  ...a.map(([age, w]): [number, number] => [age, p * w]),
  ...b.map(([age, w]): [number, number] => [age, (1 - p) * w]),
]

/** Chance that queen cells found at the removal are whole in the box, given that the old queen is not. Judgement. */
const CELLS_SURVIVE = 0.4

/** Where a living queen is: in her cage, free, or (in some swarms) a virgin. */
function livingQueen(
  intake: Intake,
  rates: Rates,
): [stage: number, age: number, caged: boolean, share: number][] {
  if (intake.queen === 'caged') return [[Q.none, 0, true, 1]]
  const cast = intake.removal.type === 'swarm' ? rates.swarmIsCast : 0
  const virgins = spread(0, 6, cast).map(([age, w]): [number, number, boolean, number] => [
    Q.virgin,
    age,
    false,
    w,
  ])
  return [[Q.settling, 0, false, 1 - cast], ...virgins]
}

/** With no living queen: nobody, or a cell that came along (capped: 1-8 days to go; open: 6-12). */
function noQueen(intake: Intake): [stage: number, age: number, caged: boolean, share: number][] {
  const cells = intake.queenCells
  if (cells === undefined || cells === 'none') return [[Q.none, 0, false, 1]]
  const range = cells === 'capped' ? spread(1, 8, CELLS_SURVIVE) : spread(6, 12, CELLS_SURVIVE)
  return [
    [Q.none, 0, false, 1 - CELLS_SURVIVE],
    ...range.map(([left, w]): [number, number, boolean, number] => [Q.raising, left, false, w]),
  ]
}

/** All stories at nightfall of the removal day. The weights sum to 1. */
export function startingStories(intake: Intake, rates: Rates): Weights {
  const alive = aliveChance(intake, rates)
  const queens = [
    ...livingQueen(intake, rates).map(([s, a, c, w]) => [s, a, c, w * alive] as const),
    ...noQueen(intake).map(([s, a, c, w]) => [s, a, c, w * (1 - alive)] as const),
  ]
  const all: Weights = new Map()
  for (const [old, broodShare] of oldBrood(intake, rates))
    for (const [stage, age, caged, share] of queens) {
      const state = pack(stage, age, old, caged)
      const w = broodShare * share
      if (w > 0) all.set(state, (all.get(state) ?? 0) + w)
    }
  return all
}
