/**
 * A keeper at one box: what can be done on a day, what is written down of it (journal entries, the public format) and what it costs.
 * Rules decide; this carries out. Feeding a box that was found light, and treating one with many mites, is plain husbandry and the
 * same under every rule.
 */
import type { Entry, Inspection } from '../../../src/journal/entry.ts'
import { seenIn, seenOutside } from './sight.ts'
import type { CageFound, Colony } from './truth.ts'

export interface Costs {
  /** A colony lost to the yard. */
  worth: number
  queen: number
  frame: number
  opening: number
  /** A day in the yard. */
  day: number
}

/** Judgement: a nucleus, a mated queen, a frame of brood and a quarter of an hour at common prices; a stand and its rounds. */
export const DEFAULT_COSTS: Costs = { worth: 200, queen: 40, frame: 15, opening: 4, day: 1 }

export type FateKind = 'moved-out' | 'united' | 'died'

/** What one look saw; a field that is missing was not looked for. */
export type Look = { day: number } & Pick<
  Inspection,
  'eggs' | 'open' | 'capped' | 'cells' | 'queen' | 'framesOfBees' | 'onFreshComb'
>

/** An entry without what every entry carries. */
type Bare = Entry extends infer E ? (E extends Entry ? Omit<E, 'id' | 'colony' | 'on' | 'by'> : never) : never

export const TAG = 'A-1'
/** Mites per 100 bees from which a box is treated (USDA-ARS). */
const TREAT_FROM = 3

export class Keeper {
  readonly colony: Colony
  readonly entries: Entry[] = []
  readonly looks: Look[] = []
  fate: FateKind | null = null
  openings = 0
  queensBought = 0
  frames = 0
  /** Days (since intake) on which frames of eggs, capped frames and queens were given. */
  readonly eggsGiven: number[] = []
  readonly cappedGiven: number[] = []
  readonly introduced: number[] = []
  washedOn = Number.NEGATIVE_INFINITY
  washed = 0
  #queenArrives: number | null = null
  #openedOn = -1
  #cageSeen: CageFound | null = null

  constructor(colony: Colony) {
    this.colony = colony
    this.#write(colony.arrival.entry)
  }

  get day(): number {
    return this.colony.day
  }

  /** At the yard today, in weather in which frames can be taken out. */
  get comes(): boolean {
    const { world, dice, day, weather } = this.colony
    const here =
      world.presence > 0
        ? dice.chance(world.presence, 'presence', day)
        : day % 7 === Math.floor(dice.at('presence', 9999) * 7)
    return here && weather.opens && day > 0
  }

  #write(bare: Bare): void {
    const id = `00000000-0000-7000-8000-${(this.entries.length + 1).toString(16).padStart(12, '0')}`
    this.entries.push({ ...bare, id, colony: TAG, on: this.colony.on, by: 'keeper' } as Entry)
  }

  #open(): void {
    if (this.#openedOn === this.day) return
    this.#openedOn = this.day
    this.openings += 1
    this.colony.open()
  }

  /** Takes frames out and writes down what is seen. A second look on the same day is the first. */
  look(): Look {
    const last = this.looks.at(-1)
    if (last?.day === this.day) return last
    this.#open()
    const { signs, stores, ...seen } = seenIn(this.colony)
    this.#write({ kind: 'inspection', opened: true, ...seen, ...opt({ signs, stores }) })
    this.#feedIfLight(stores)
    const look: Look = { day: this.day, ...seen }
    this.looks.push(look)
    return look
  }

  lookOutside(): void {
    const seen = seenOutside(this.colony)
    this.#write({ kind: 'inspection', opened: false, ...seen })
    this.#feedIfLight(seen.stores)
  }

  #feedIfLight(stores: 'low' | 'enough' | 'heavy' | undefined): void {
    if (stores === 'low') this.feed()
  }

  feed(): void {
    this.colony.nest.storesKg += 2.5
    this.#write({ kind: 'given', what: 'syrup', litres: 3, syrup: '1:1' })
  }

  /** A wash of 300 bees; treated at once when there are too many mites. */
  wash(): void {
    this.#open()
    const { dice, day, nest } = this.colony
    const { mitesPer100 } = nest
    const mites = Math.max(
      0,
      Math.round(dice.normal(mitesPer100 * 3, Math.sqrt(mitesPer100 * 3), 'mites', day)),
    )
    this.#write({ kind: 'mite-wash', bees: 300, mites })
    this.washedOn = day
    this.washed = mites / 3
    if (this.washed < TREAT_FROM) return
    this.colony.nest.mitesPer100 *= 0.15
    this.#write({ kind: 'given', what: 'treatment', product: 'oxalic acid' })
  }

  takeOffTies(): void {
    this.#open()
    this.#write({ kind: 'ties-removed' })
  }

  /** Sees to the cage: opens it when she is still in it. */
  seeToCage(): CageFound {
    this.#open()
    if (this.colony.cage !== null) this.colony.release()
    const found = this.colony.cageStory ?? 'dead'
    this.#cageSeen = found
    this.#write({ kind: 'queen-cage', found })
    return found
  }

  /** A cage hangs in the box, or did, and nobody has looked yet. */
  get cageOpenQuestion(): boolean {
    return (this.colony.cage !== null || this.colony.cageStory !== null) && this.#cageSeen === null
  }

  giveEggFrame(): void {
    this.#open()
    this.frames += 1
    this.eggsGiven.push(this.day)
    this.colony.giveEggs()
    this.#write({ kind: 'given', what: 'egg-frame', frames: 1, donor: 'D-1' })
  }

  boost(): void {
    this.#open()
    this.frames += 1
    this.cappedGiven.push(this.day)
    this.colony.giveCapped()
    this.#write({ kind: 'given', what: 'capped-brood', frames: 1, donor: 'D-1' })
  }

  /** Days until a queen is at hand: 0 when she is, the lead time when none is ordered. */
  get daysUntilQueens(): number {
    const lead = this.colony.world.leadTime
    return this.#queenArrives === null ? lead : Math.max(0, this.#queenArrives - this.day)
  }

  get queenOrdered(): boolean {
    return this.#queenArrives !== null
  }

  get queenInHand(): boolean {
    return this.#queenArrives !== null && this.#queenArrives <= this.day
  }

  orderQueen(): void {
    if (this.#queenArrives !== null) return
    this.queensBought += 1
    this.#queenArrives = this.day + this.colony.world.leadTime
  }

  /** She is not needed after all: another yard has her. The money is gone. */
  giveQueenAway(): void {
    this.#queenArrives = null
  }

  /** Searches for cells and for a virgin or a failing queen, then hangs the cage in. */
  introduce(): void {
    if (!this.queenInHand) return
    this.#open()
    this.#queenArrives = null
    const { colony } = this
    this.cutCells()
    const q = colony.queen
    if (q !== null && q.kind !== 'mated' && this.#finds(q.kind === 'virgin' ? 0.4 : 1)) colony.takeOutQueen()
    colony.introduce()
    this.#cageSeen = null
    this.introduced.push(this.day)
    this.#write({ kind: 'given', what: 'mated-queen', caged: true })
  }

  cutCells(): void {
    this.#open()
    const { dice, day, world, cells } = this.colony
    if (cells !== null && dice.chance(1 - (1 - world.eyes.cells) ** 2, 'sight', day, 40))
      this.colony.cutCells()
  }

  #finds(ease: number): boolean {
    const { dice, day, world } = this.colony
    return dice.chance(1 - (1 - world.eyes.queen * ease) ** 2, 'sight', day, 41)
  }

  /** Searches for a queen that fails, and takes her out. */
  takeOutQueen(): boolean {
    this.look()
    if (this.colony.queen === null || !this.#finds(1)) return false
    this.colony.takeOutQueen()
    this.#write({ kind: 'note', text: 'queen found and taken out' })
    return true
  }

  /** The inspector comes: what was suspected is not there, or the box is destroyed. */
  callInspector(): void {
    if (this.colony.diseased) {
      this.fate = 'died'
      this.#write({ kind: 'outcome', what: 'died', cause: 'brood disease' })
    } else this.#write({ kind: 'disease-cleared', clearedBy: 'inspector' })
  }

  unite(): void {
    this.#open()
    this.fate = 'united'
    this.#write({ kind: 'outcome', what: 'united', into: 'B-1' })
  }

  moveOut(): void {
    this.fate = 'moved-out'
    this.#write({ kind: 'outcome', what: 'moved-out' })
  }
}

/** Leaves out what is undefined. */
function opt<T extends object>(fields: T): { [K in keyof T]?: NonNullable<T[K]> } {
  return Object.fromEntries(Object.entries(fields).filter(([, v]) => v !== undefined)) as {
    [K in keyof T]?: NonNullable<T[K]>
  }
}
