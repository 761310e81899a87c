/** One colony under one rule, from intake to its fate or day 90. */
import { Dice, numberOf } from './dice.ts'
import { type Costs, Keeper } from './keeper.ts'
import type { Rule, RuleSettings } from './rules/rule.ts'
import { Colony } from './truth.ts'
import type { World } from './world.ts'

export const LAST_DAY = 90

export const FATES = ['saved', 'moved-out-in-error', 'united', 'died', 'still-here'] as const
export type Fate = (typeof FATES)[number]

export interface Result {
  fate: Fate
  /** Still here on day 90, with a mated queen that lays. */
  queenright: boolean
  openings: number
  queensLostToOpening: number
  queens: number
  frames: number
  days: number
  cost: number
  /** Seen by nobody: what was in the box at intake, by kind of removal. */
  kind: string
}

/** A colony that is united is lost, but its bees strengthen another: this much a frame of them. Judgement. */
const UNITED_FRAME = 12

function costOf(k: Keeper, fate: Fate, queenright: boolean, costs: Costs): number {
  const lost = fate === 'saved' || (fate === 'still-here' && queenright) ? 0 : costs.worth
  const back = fate === 'united' ? Math.min(costs.worth / 2, UNITED_FRAME * k.colony.frames) : 0
  return (
    lost -
    back +
    k.queensBought * costs.queen +
    k.frames * costs.frame +
    k.openings * costs.opening +
    k.day * costs.day
  )
}

/** The colony with that number in that world: the same whatever is done with it. */
export const diceFor = (world: World, seed: number, colony: number): Dice =>
  new Dice((seed ^ numberOf(world.name)) >>> 0, colony)

export async function play(
  world: World,
  rule: Rule,
  seed: number,
  number: number,
  settings: RuleSettings,
): Promise<Result> {
  const colony = new Colony(world, diceFor(world, seed, number))
  const keeper = new Keeper(colony)
  const visit = rule.begin(settings)
  while (colony.day < LAST_DAY && keeper.fate === null && colony.gone === null) {
    colony.step()
    if (colony.gone !== null || !keeper.comes) continue
    const doing = visit(keeper)
    if (doing instanceof Promise) await doing
  }
  const queenright = colony.queenright
  const fate: Fate =
    keeper.fate === 'moved-out'
      ? queenright
        ? 'saved'
        : 'moved-out-in-error'
      : keeper.fate === 'united'
        ? 'united'
        : keeper.fate === 'died' || colony.gone !== null
          ? 'died'
          : 'still-here'
  return {
    fate,
    queenright,
    openings: keeper.openings,
    queensLostToOpening: colony.queensLostToOpening,
    queens: keeper.queensBought,
    frames: keeper.frames,
    days: colony.day,
    cost: costOf(keeper, fate, queenright, settings.costs),
    kind: colony.arrival.kind,
  }
}
