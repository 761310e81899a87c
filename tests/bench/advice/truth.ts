/**
 * The truth in one box, day by day. Nobody sees it but the rule that knows it; all others go by `sight.ts`. It shares no table and
 * no code with the belief of the program.
 */
import type { Day } from '../../../src/days.ts'
import { BEES_A_FRAME, type Bees, type Brood, CELLS_A_FRAME } from './brood.ts'
import type { Dice } from './dice.ts'
import { type Arrival, arrivalOf, dayAfter } from './intake.ts'
import { LayingWorkers } from './laying-workers.ts'
import { Nest } from './nest.ts'
import { acceptance, boughtQueen, type Queen, virginDay, virginQueen } from './queens.ts'
import { beginsToday, begun, type CellBatch, canRaise } from './raising.ts'
import { type Weather, weatherOn } from './season.ts'
import type { World } from './world.ts'

export interface Cage {
  /** null: she is dead in it. */
  queen: Queen | null
  bought: boolean
  since: number
  /** Day on which the bees have eaten through the candy; Infinity where somebody must open it. */
  candy: number
}

/** What a caged queen's story came to, for the one who looks at the cage. */
export type CageFound = 'released' | 'still-caged' | 'rejected' | 'dead'

export class Colony {
  readonly world: World
  readonly dice: Dice
  readonly arrival: Arrival
  readonly nest: Nest
  readonly workers: LayingWorkers
  /** Days since intake. */
  day = 0
  weather: Weather
  queen: Queen | null
  cage: Cage | null
  cells: CellBatch | null
  gone: 'died' | 'absconded' | null = null
  readonly diseased: boolean
  /** A frame from a donor came, so brood may be another's. */
  donorFrames = 0
  openedOn = Number.NEGATIVE_INFINITY
  /** Queens that an opening cost. */
  queensLostToOpening = 0
  cageStory: CageFound | null = null
  #cutOn = Number.NEGATIVE_INFINITY
  #batch = 0
  #introductions = 0
  #queenlessSince: number

  constructor(world: World, dice: Dice, arrival: Arrival = arrivalOf(world, dice)) {
    this.world = world
    this.dice = dice
    this.arrival = arrival
    const mites = Math.min(8, Math.exp(dice.normal(0, 0.7, 'mites')))
    this.nest = new Nest(arrival.brood, arrival.bees, arrival.storesKg, mites)
    this.workers = new LayingWorkers(world, dice, arrival.queenlessFor)
    this.queen = arrival.caged ? null : arrival.queen
    this.cage = arrival.caged
      ? { queen: arrival.queen, bought: false, since: 0, candy: Number.POSITIVE_INFINITY }
      : null
    this.cells = arrival.cells
    // One in a hundred carries foulbrood, and 19 % of those show it in a month (afb.org.nz).
    this.diseased = dice.chance(0.003, 'hazard', 1)
    this.#queenlessSince = -arrival.queenlessFor
    this.weather = weatherOn(world, dice, arrival.on)
  }

  get brood(): Brood {
    return this.nest.brood
  }

  get bees(): Bees {
    return this.nest.bees
  }

  get on(): Day {
    return dayAfter(this.arrival, this.day)
  }

  get frames(): number {
    return this.bees.count / BEES_A_FRAME
  }

  /** A mated queen is free and lays. */
  get queenright(): boolean {
    const q = this.queen
    return q !== null && q.kind === 'mated' && q.laysFrom <= this.day && q.failsOn > this.day
  }

  /** A queen that can become, or is, a layer: laying, pausing, maturing, or in a live cell. */
  get hopeful(): boolean {
    return (
      (this.queen !== null && this.queen.kind !== 'drone-layer') ||
      this.cage?.queen != null ||
      this.cells?.alive === true
    )
  }

  /** A night passes. */
  step(): void {
    this.day += 1
    this.weather = weatherOn(this.world, this.dice, this.on)
    this.nest.live(this.world, this.weather)
    this.#queenDay()
    this.#cageDay()
    this.#cellsDay()
    const queen = this.queen?.kind === 'mated' || this.cage?.queen != null
    this.workers.night(queen ? 'queen' : this.queen === null ? 'nobody' : 'virgin', this.brood.open())
    this.nest.lay(this.queen, this.workers.active, this.day, this.weather)
    this.#hazards()
  }

  #lose(): void {
    if (this.queen !== null) this.#queenlessSince = this.day
    this.queen = null
  }

  #queenDay(): void {
    const q = this.queen
    if (q === null) return
    if (q.kind === 'virgin') {
      if (!virginDay(q, this.world, this.dice, this.#batch, this.day, this.weather, this.bees.count))
        this.#lose()
    } else if (q.kind === 'mated' && q.failsOn <= this.day) {
      if (q.failsAs === 'dies') this.#lose()
      else q.kind = 'drone-layer'
    } else if (q.kind === 'drone-layer' && this.dice.chance(0.02, 'queen', 300, this.day)) this.#lose()
  }

  #cageDay(): void {
    const cage = this.cage
    if (cage === null) return
    const days = this.day - cage.since
    // Bees feed a caged queen, but not for ever: "3-5 days and no longer" (Esoteria 16).
    if (cage.queen !== null && days > 6 && this.dice.chance(0.05, 'queen', 310 + cage.since, this.day))
      cage.queen = null
    if (this.day >= cage.candy) this.release()
  }

  /** The cage is open: taken in, or killed. */
  release(): void {
    const cage = this.cage
    if (cage === null) return
    this.cage = null
    if (cage.queen === null) {
      this.cageStory = 'dead'
      return
    }
    const p = cage.bought
      ? acceptance(this.world, {
          queen: this.queen,
          liveCells: this.cells?.alive === true,
          layingWorkers: this.workers.active,
          daysQueenless: cage.since - this.#queenlessSince,
          bees: this.bees.count,
          disturbed: this.day - this.openedOn <= 1 && this.day > cage.since,
        })
      : this.queen === null
        ? 0.97
        : 0.1
    if (!this.dice.chance(p, 'introduction', this.#introductions, 1)) {
      this.cageStory = 'rejected'
      return
    }
    this.cageStory = 'released'
    this.queen = cage.queen
    if (cage.bought)
      this.queen.laysFrom =
        this.day + 1 + Math.floor(this.dice.at('introduction', this.#introductions, 2) * 4)
    else this.queen.laysFrom = this.day + 1 + Math.floor(this.dice.at('queen', 0, 6) ** 2 * 5)
    this.cells = null
    this.workers.stop()
  }

  #cellsDay(): void {
    const cells = this.cells
    // Cells that died do not keep them from beginning again when young brood is given.
    if (cells === null || (!cells.alive && this.day > cells.cappedFrom && canRaise(this.nest)))
      this.#startCells()
    else if (this.queen?.kind === 'mated') this.cells = null
    else if (cells.alive && this.day >= cells.emergesOn) {
      this.queen ??= virginQueen(this.dice, this.#batch, this.day)
      this.cells = null
    } else if (this.day > cells.emergesOn + 5) this.cells = null
  }

  #startCells(): void {
    if (this.queen !== null || this.cage?.queen != null || this.day <= this.#cutOn || !canRaise(this.nest))
      return
    if (!beginsToday(this.dice, this.#batch + 1, this.day)) return
    this.#batch += 1
    this.cells = begun(this.world, this.dice, this.#batch, this.day, this.nest, this.workers.active)
    // They do not take to it: this brood is lost for queens. Judgement.
    if (this.cells === null) this.brood.worker.fill(0, 0, 2)
  }

  #hazards(): void {
    const early = this.day <= 4
    if (early && this.dice.chance(this.world.leaves / 4, 'hazard', 2, this.day)) this.gone = 'absconded'
    // A weak box without a queen is robbed or slimed sooner (judgement): a third of its bees, or all of it in the end.
    const weak = this.frames < 1.5 ? 0.008 : 0.001
    if (this.dice.chance(weak, 'hazard', 3, this.day)) this.bees.lose(0.35)
    if (this.bees.count < 500) this.gone = 'died'
    if (this.diseased && this.day > 25 && this.dice.chance(0.01, 'hazard', 4, this.day)) this.gone = 'died'
    // Poisoned, tipped over, burnt out: nobody's fault (judgement: 2 in 100 over 90 days).
    if (this.dice.chance(0.0003, 'hazard', 5, this.day)) this.gone = 'died'
  }

  /** The lid comes off and frames out. Once a day counts. */
  open(): void {
    if (this.openedOn === this.day) return
    this.openedOn = this.day
    const { queen, cells, world } = this
    const happens = (p: number, n: number): boolean => this.dice.chance(p, 'opening', this.day, n)
    if (queen?.kind === 'virgin' && this.day - queen.emergedOn <= 20) {
      if (happens(world.openingLosesVirgin, 1)) this.#loseToOpening()
    } else if (cells?.alive && cells.emergesOn - this.day <= 2 && happens(world.openingLosesVirgin / 2, 1)) {
      cells.alive = false
      this.queensLostToOpening += 1
    }
    // A queen just taken in is easily balled (judgement).
    if (queen?.origin === 'bought' && queen.laysFrom > this.day && happens(0.02, 3)) this.#loseToOpening()
    if (this.day <= 2 && this.cage === null && happens(world.openingMakesLeave, 2)) {
      this.gone = 'absconded'
      if (queen !== null) this.queensLostToOpening += 1
    }
  }

  #loseToOpening(): void {
    this.#lose()
    this.queensLostToOpening += 1
  }

  /** A frame from a donor with eggs and young larvae, and some sealed brood on it. */
  giveEggs(): void {
    this.donorFrames += 1
    this.brood.add(CELLS_A_FRAME * 0.14, 0, 2)
    this.brood.add(CELLS_A_FRAME * 0.16, 3, 8)
    this.brood.add(CELLS_A_FRAME * 0.12, 9, 20)
    // Weekly open brood turns laying workers back (from memory, practice): each frame with one chance in four.
    if (this.workers.active && this.dice.chance(0.25, 'donor', this.donorFrames)) this.workers.stop()
  }

  /** A frame of capped brood; one full frame gives 2-3 frames of bees at best. */
  giveCapped(): void {
    this.donorFrames += 1
    this.brood.add(CELLS_A_FRAME * 0.6, 11, 20)
  }

  cutCells(): void {
    this.cells = null
    this.#cutOn = this.day
  }

  takeOutQueen(): void {
    this.#lose()
  }

  introduce(): void {
    this.#introductions += 1
    this.cageStory = null
    this.cage = {
      queen: boughtQueen(this.dice, this.#introductions, this.day + 4),
      bought: true,
      since: this.day,
      candy: this.day + 3 + Math.floor(this.dice.at('introduction', this.#introductions, 3) * 3),
    }
  }
}
