/** What comes off the truck: the truth in the box, and what the keeper can say of it. Weights are judgement unless named. */
import { addDays, type Day, dayNumber, dayOf } from '../../../src/days.ts'
import type { Intake as IntakeEntry } from '../../../src/journal/entry.ts'
import { BEES_A_FRAME, Bees, Brood, CELLS_A_FRAME } from './brood.ts'
import type { Dice } from './dice.ts'
import { oldQueen, type Queen, virginQueen } from './queens.ts'
import type { CellBatch } from './raising.ts'
import type { Kind, World } from './world.ts'

export interface Arrival {
  kind: Kind
  on: Day
  queen: Queen | null
  /** She sits in a cage that somebody has to open. */
  caged: boolean
  cells: CellBatch | null
  /** Days without a queen before the intake. */
  queenlessFor: number
  brood: Brood
  bees: Bees
  storesKg: number
  /** No comb came along: whatever brood is seen was laid here. */
  bareBox: boolean
  entry: IntakeEntry
}

const NAMES: Record<Kind, string> = {
  wall: 'wall',
  roof: 'roof',
  floor: 'floor',
  tree: 'tree',
  'utility-box': 'utility-box',
  container: 'container',
  'prime-swarm': 'swarm',
  'cast-swarm': 'swarm',
  'trap-out': 'trap-out',
  'abandoned-hive': 'abandoned-hive',
}

const quarter = (frames: number): number => Math.max(0, Math.round(frames * 4) / 4)

type Said = 'caged' | 'loose' | 'unseen' | 'lost'

/** Which queen is in the box, and what is said of her. */
function queenOf(world: World, dice: Dice, kind: Kind): { queen: Queen | null; said: Said } {
  const u = dice.at('intake', 20)
  const old = oldQueen(world, dice, 0)
  if (kind === 'prime-swarm') return { queen: u < 0.96 ? old : null, said: u < 0.3 ? 'loose' : 'unseen' }
  if (kind === 'cast-swarm')
    return { queen: u < 0.95 ? virginQueen(dice, 90, -Math.floor(u * 5)) : null, said: 'unseen' }
  // She stays behind in the cavity nearly always.
  if (kind === 'trap-out') return { queen: u < 0.05 ? old : null, said: u < 0.7 ? 'unseen' : 'lost' }
  if (dice.chance(world.caged, 'intake', 21))
    return { queen: u < world.cagedDies ? null : old, said: 'caged' }
  if (dice.chance(0.07, 'intake', 22)) return { queen: null, said: 'lost' }
  // An old hive box is brought as it stands, so that its queen, if it had one, is in it.
  const alive = kind === 'abandoned-hive' ? world.aliveUnseen + 0.15 : world.aliveUnseen
  const here = u < alive
  return {
    queen: here ? old : null,
    said: dice.chance(here ? 0.15 : 0.04, 'intake', 23) ? 'loose' : 'unseen',
  }
}

/** Brood comb saved, in frames, and what of it is alive. */
function broodOf(world: World, dice: Dice, kind: Kind, layingShare: number, queenlessFor: number) {
  const said = { eggs: 0, open: 0, capped: 0 }
  const brood = new Brood()
  if (kind === 'prime-swarm' || kind === 'cast-swarm' || kind === 'trap-out') return { said, brood }
  const comb = dice.between(0, 3.2, 'intake', 30) * (0.3 + 0.7 * layingShare)
  if (dice.chance(0.12, 'intake', 31)) return { said, brood }
  const chest = dice.chance(0.7, 'intake', 32)
  const alive = Math.min(1, Math.max(0.05, world.broodAlive + dice.normal(0, 0.18, 'intake', 33)))
  const tender = chest ? alive : alive * 0.6 // open larvae dry out, eggs need humid air (Doull 1976)
  // A steady layer shows eggs : open : capped = 1 : 2 : 4 (Wade 2022).
  const cells = (part: number): number => comb * CELLS_A_FRAME * part * 0.7
  if (queenlessFor < 3) {
    said.eggs = quarter(comb / 7)
    brood.add(cells(1 / 7) * tender, Math.floor(queenlessFor), 2)
  }
  if (queenlessFor < 9) {
    said.open = quarter((comb * 2) / 7)
    brood.add(cells(2 / 7) * tender, Math.max(3, queenlessFor), 8)
  }
  if (queenlessFor < 20) {
    said.capped = quarter((comb * 4) / 7)
    brood.add(cells(4 / 7) * Math.min(1, alive * 1.2), Math.max(9, queenlessFor), 20)
  }
  return { said, brood, chest }
}

export function arrivalOf(world: World, dice: Dice): Arrival {
  const kind = dice.pick(world.kinds, 'intake', 1)
  const [first, last] = world.season.map((monthDay) => dayNumber(`2026-${monthDay}`)) as [number, number]
  const on = dayOf(Math.floor(dice.between(first, last + 1, 'intake', 2)))
  const { queen, said } = queenOf(world, dice, kind)
  // A sprayed or abandoned nest, or one trapped for weeks, may have lost its queen long before.
  const longQueenless = queen === null && (kind === 'abandoned-hive' || dice.chance(0.06, 'intake', 3))
  const queenlessFor = longQueenless ? Math.floor(dice.between(2, 24, 'intake', 4)) : 0
  const summer = world.season[0] < '07' ? 1 : 0.7
  const { said: comb, brood, chest } = broodOf(world, dice, kind, summer, queenlessFor)
  const swarm = kind === 'cast-swarm' ? 0.6 : kind === 'prime-swarm' ? 1.1 : kind === 'trap-out' ? 0.7 : 1
  const frames = Math.max(1, world.framesOfBees * swarm * Math.exp(dice.normal(0, 0.35, 'intake', 5)))
  const bareBox = comb.eggs + comb.open + comb.capped === 0
  // A queen loses weight before and on the way: she begins again after 1-6 days, mostly 2 or 3; caged, after her release.
  if (queen !== null && queen.kind === 'mated')
    queen.laysFrom = 1 + Math.floor(dice.at('queen', 0, 5) ** 2 * 6)
  const entry: IntakeEntry = {
    id: '',
    colony: 'A-1',
    on,
    by: 'keeper',
    kind: 'intake',
    removal: {
      type: NAMES[kind],
      removedOn: on,
      outdoorC: Math.round(dice.between(17, 32, 'intake', 6)),
      hoursOpenToBoxed: quarter(dice.between(0.5, 5, 'intake', 7)),
      method:
        kind === 'trap-out'
          ? 'trap'
          : NAMES[kind] === 'swarm' || kind === 'abandoned-hive'
            ? 'hived'
            : dice.chance(0.6, 'intake', 8)
              ? 'vacuum'
              : 'brushed',
      sprayed: 'no',
    },
    yard: 'Home',
    queen: said,
    brood: comb,
    queenCells: 'none',
    bees: { frames: Math.max(0.25, quarter(frames * Math.exp(dice.normal(0, 0.15, 'intake', 9)))) },
    tiedComb: !bareBox && kind !== 'abandoned-hive',
    ...(chest === undefined ? {} : { broodCare: chest ? ('closed-chest' as const) : ('open-air' as const) }),
  }
  return {
    kind,
    on,
    queen,
    caged: said === 'caged',
    cells: null,
    queenlessFor,
    brood,
    bees: new Bees(frames * BEES_A_FRAME),
    storesKg: dice.between(1.5, 6, 'intake', 10),
    bareBox: bareBox && kind !== 'abandoned-hive',
    entry,
  }
}

/** The day `n` days after the intake. */
export const dayAfter = (arrival: Arrival, n: number): Day => addDays(arrival.on, n)
