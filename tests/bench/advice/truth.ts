/**
 * The truth in one box, day by day. Nobody sees it but the rule that knows it; all others go by `sight.ts`. It shares no table and
 * no code with the belief of the program.
 */
import type { Day } from '../../../src/days.ts'
import { BEES_A_FRAME, type Bees, type Brood, CELLS_A_FRAME } from './brood.ts'
import type { Dice } from './dice.ts'
import { type Arrival, arrivalOf, dayAfter } from './intake.ts'
import { acceptance, boughtQueen, type CellBatch, type Queen, virginDay, virginQueen } from './queens.ts'
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
  readonly brood: Brood
  readonly bees: Bees
  /** Days since intake. */
  day = 0
  weather: Weather
  queen: Queen | null
  cage: Cage | null
  cells: CellBatch | null
  layingWorkers = false
  storesKg: number
  mitesPer100: number
  gone: 'died' | 'absconded' | null = null
  readonly diseased: boolean
  /** A frame from a donor came, so brood may be another's. */
  donorFrames = 0
  openedOn = Number.NEGATIVE_INFINITY
  /** Queens that an opening cost. */
  queensLostToOpening = 0
  queensLostToOpeningOn: number[] = []
  cageStory: CageFound | null = null
  cutOn = Number.NEGATIVE_INFINITY
  #batch = 0
  #introductions = 0
  #queenlessSince: number
  #clock = 0
  #onset: number

  constructor(world: World, dice: Dice) {
    const arrival = arrivalOf(world, dice)
    this.world = world
    this.dice = dice
    this.arrival = arrival
    this.brood = arrival.brood
    this.bees = arrival.bees
    this.queen = arrival.caged ? null : arrival.queen
    this.cage = arrival.caged
      ? { queen: arrival.queen, bought: false, since: 0, candy: Number.POSITIVE_INFINITY }
      : null
    this.cells = arrival.cells
    this.storesKg = arrival.storesKg
    this.mitesPer100 = Math.min(8, Math.exp(dice.normal(0, 0.7, 'mites')))
    // One in a hundred carries foulbrood, and 19 % of those show it in a month (afb.org.nz).
    this.diseased = dice.chance(0.003, 'hazard', 1)
    this.#queenlessSince = -arrival.queenlessFor
    this.#clock = Math.max(0, arrival.queenlessFor - 9)
    this.#onset = Math.max(10, dice.normal(world.layingWorkers, world.layingWorkersSpread, 'layingWorkers'))
    this.weather = weatherOn(world, dice, arrival.on)
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

  get queenlessFor(): number {
    return this.queen === null ? this.day - this.#queenlessSince : 0
  }

  /** A night passes. */
  step(): void {
    this.day += 1
    this.weather = weatherOn(this.world, this.dice, this.on)
    this.#live()
    this.#queenDay()
    this.#cageDay()
    this.#cellsDay()
    this.#workersDay()
    this.#lay()
    this.#hazards()
  }

  #live(): void {
    const open = this.brood.open()
    const bees = this.bees.count
    const nursed = open > 0 ? Math.min(1, (1.8 * bees) / open) : 1 // ~1 adult to 1-2 cells is sustainable
    const rearing = Math.min(1, open / Math.max(1, bees) / 0.5)
    // Bees without brood to feed live longer; weak colonies' bees up to 2-3 times shorter; winter bees 140-320 days.
    const wear =
      this.world.flightDeath *
      (0.65 + 0.35 * rearing) *
      (1 + 0.8 * Math.exp(-bees / 1800)) *
      (this.weather.winterBees ? 0.35 : 1) *
      (this.storesKg <= 0 ? 4 : 1)
    const emerged = this.brood.age(nursed)
    this.bees.live(emerged, wear)
    // 0.1 g a forager and day; 7 mg a bee and 18 mg a larva (Khoury et al. 2013).
    const income = this.bees.foragers * 0.00013 * this.weather.forage
    this.storesKg = Math.min(25, this.storesKg + income - bees * 7e-6 - open * 18e-6)
    this.storesKg = Math.max(0, this.storesKg)
    this.mitesPer100 = Math.min(20, this.mitesPer100 * 1.012)
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
          layingWorkers: this.layingWorkers,
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
    this.layingWorkers = false
  }

  #cellsDay(): void {
    const cells = this.cells
    if (cells === null) {
      this.#startCells()
      return
    }
    const laying = this.queen !== null && this.queen.kind === 'mated'
    if (laying) this.cells = null
    else if (this.day >= cells.emergesOn && cells.alive) {
      if (this.queen === null) this.queen = virginQueen(this.dice, this.#batch, this.day)
      this.cells = null
    } else if (this.day > cells.emergesOn + 5) this.cells = null
  }

  /** Within 12-48 hours of the loss, on young brood (Fell & Morse 1984). Workers that lay, and few bees, do so less. */
  #startCells(): void {
    if (this.queen !== null || (this.cage?.queen ?? null) !== null) return
    if (this.brood.raisable() < 60 || this.bees.count < 1200) return
    if (this.day - this.cutOn < 1) return
    const n = this.#batch + 1
    if (this.dice.chance(0.3, 'cells', n, 50 + (this.day % 40))) return
    const able =
      this.world.cellsStarted * (this.layingWorkers ? 0.5 : 1) * (this.bees.count < 3000 ? 0.85 : 1)
    this.#batch = n
    if (!this.dice.chance(able, 'cells', n, 1)) {
      // They do not take to it: this brood is lost for queens. Judgement.
      this.brood.worker.fill(0, 0, 2)
      return
    }
    const age = this.brood.raisableAge()
    const total = Math.min(18, Math.max(14, this.dice.normal(15.7, 0.7, 'cells', n, 2))) // Tofilski & Czekonska 2004
    const old = age >= 5 ? 0.75 : 1
    const few = this.bees.count < 4000 ? 0.88 : 1
    this.cells = {
      emergesOn: this.day + Math.round(total - age),
      cappedFrom: this.day + Math.round(Math.max(1, 8.8 - age)),
      count: 2 + Math.floor(this.dice.at('cells', n, 3) * 14),
      alive: this.dice.chance(this.world.cellsGiveVirgin * old * few, 'cells', n, 4),
    }
  }

  /** Workers lay when neither queen nor open brood keeps them from it (Butler). A virgin holds them off in part. */
  #workersDay(): void {
    if (this.queen?.kind === 'mated' || (this.cage?.queen ?? null) !== null) {
      this.#clock = Math.max(0, this.#clock - 2)
      if (this.queenright && this.dice.chance(0.1, 'layingWorkers', 1, this.day)) this.layingWorkers = false
      return
    }
    if (this.brood.open() > 250) this.#clock = Math.max(0, this.#clock - 1)
    else this.#clock += this.queen === null ? 1 : 0.3
    if (this.#clock >= this.#onset) this.layingWorkers = true
  }

  #lay(): void {
    const bees = this.bees.count
    const q = this.queen
    const fed = this.storesKg > 0.5 ? 1 : 0.3
    // Khoury et al. 2011 and 2013: half of the highest rate at 5,000 to 27,000 bees; a handful cannot keep brood warm.
    const most = ((2000 * bees) / (bees + 7000)) * (bees / (bees + 500)) * this.weather.laying * fed
    if (q !== null && q.laysFrom <= this.day && q.kind !== 'virgin') {
      const young = q.origin === 'old' ? 0.4 : 0.3
      const ramp = Math.min(1, young + 0.12 * (this.day - q.laysFrom))
      const eggs = most * q.vigour * ramp
      if (q.kind === 'mated') this.brood.worker[0] = (this.brood.worker[0] ?? 0) + eggs
      else this.brood.drone[0] = (this.brood.drone[0] ?? 0) + eggs * 0.5
    } else if (this.layingWorkers && q === null)
      this.brood.drone[0] = (this.brood.drone[0] ?? 0) + Math.min(150, bees * 0.012)
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
    const q = this.queen
    const cellsRipe = this.cells?.alive && this.cells.emergesOn - this.day <= 2
    const virgin = q !== null && q.kind === 'virgin' && this.day - q.emergedOn <= 20
    if (virgin && this.dice.chance(this.world.openingLosesVirgin, 'opening', this.day, 1)) {
      this.#lose()
      this.#costs()
    } else if (
      cellsRipe &&
      this.cells &&
      this.dice.chance(this.world.openingLosesVirgin / 2, 'opening', this.day, 1)
    ) {
      this.cells.alive = false
      this.#costs()
    }
    const justAccepted = q !== null && q.origin === 'bought' && q.laysFrom > this.day
    if (justAccepted && this.dice.chance(0.02, 'opening', this.day, 3)) {
      this.#lose()
      this.#costs()
    }
    if (
      this.day <= 2 &&
      this.cage === null &&
      this.dice.chance(this.world.openingMakesLeave, 'opening', this.day, 2)
    ) {
      this.gone = 'absconded'
      if (q !== null) this.#costs()
    }
  }

  #costs(): void {
    this.queensLostToOpening += 1
    this.queensLostToOpeningOn.push(this.day)
  }

  /** A frame from a donor with eggs and young larvae, and some sealed brood on it. */
  giveEggs(): void {
    this.donorFrames += 1
    this.brood.add(CELLS_A_FRAME * 0.14, 0, 2)
    this.brood.add(CELLS_A_FRAME * 0.16, 3, 8)
    this.brood.add(CELLS_A_FRAME * 0.12, 9, 20)
    // Weekly open brood turns laying workers back (from memory, practice): each frame with one chance in four.
    if (this.layingWorkers && this.dice.chance(0.25, 'donor', this.donorFrames)) {
      this.layingWorkers = false
      this.#clock = this.#onset / 2
    }
  }

  /** A frame of capped brood; one full frame gives 2-3 frames of bees at best. */
  giveCapped(): void {
    this.donorFrames += 1
    this.brood.add(CELLS_A_FRAME * 0.6, 11, 20)
  }

  cutCells(): void {
    this.cells = null
    this.cutOn = this.day
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
