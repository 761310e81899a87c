/**
 * Brood by the day it was laid, and adult bees by age. Worker cells: egg 0-2, open 3-8, capped 9-20 days after the egg was laid
 * (Winston 1987; 87 % emerge on day 20, 8 % on 21: Fukuda & Sakagami 1968). Drones: capped from 10, out on 24.
 */

const WORKER_DAYS = 22
const DRONE_DAYS = 25
const ADULT_DAYS = 75
/** Bees on a deep frame covered on both sides (common practice). */
export const BEES_A_FRAME = 2300
/** Cells on both sides of a deep frame (common practice). */
export const CELLS_A_FRAME = 7000

const sum = (cells: Float64Array, from: number, to: number): number => {
  let total = 0
  for (let age = from; age <= to; age++) total += cells[age] ?? 0
  return total
}

export class Brood {
  readonly worker = new Float64Array(WORKER_DAYS)
  readonly drone = new Float64Array(DRONE_DAYS)

  /** A day passes; returns the workers that emerge. `nursed` is the share of open brood that there are bees to feed. */
  age(nursed: number): number {
    const at20 = this.worker[20] ?? 0
    const emerged = at20 * 0.9 + (this.worker[21] ?? 0)
    this.worker.copyWithin(1, 0, WORKER_DAYS - 1)
    this.worker[21] = at20 * 0.1
    this.worker[0] = 0
    this.drone.copyWithin(1, 0, DRONE_DAYS - 1)
    this.drone[0] = 0
    // Survival by stage: 0.942 of eggs hatch, 0.917 of larvae are sealed, 0.985 of those emerge (Fukuda & Sakagami 1968).
    this.#thin(3, 0.942)
    this.#thin(9, 0.917)
    this.#thin(19, 0.985)
    if (nursed < 1) for (let age = 0; age <= 8; age++) this.#thin(age, 1 - (1 - nursed) / 3)
    return emerged
  }

  #thin(age: number, share: number): void {
    this.worker[age] = (this.worker[age] ?? 0) * share
    this.drone[age] = (this.drone[age] ?? 0) * share
  }

  /** Adds worker brood evenly over ages `from` to `to`. */
  add(cells: number, from: number, to: number): void {
    for (let age = from; age <= to; age++)
      this.worker[age] = (this.worker[age] ?? 0) + cells / (to - from + 1)
  }

  eggs = (): number => sum(this.worker, 0, 2) + sum(this.drone, 0, 2)
  open = (): number => sum(this.worker, 3, 8) + sum(this.drone, 3, 9)
  cappedWorker = (): number => sum(this.worker, 9, 21)
  cappedDrone = (): number => sum(this.drone, 10, 24)
  /** Worker eggs and larvae of which a queen can still be made: to egg age 5. */
  raisable = (): number => sum(this.worker, 0, 5)

  /**
   * The age of the brood that bees make queens of, in days when the cell is begun: eggs about to hatch and the youngest larvae (3.4
   * days old at the loss, and a day more when cells are begun: Tofilski & Czekonska 2004, Fell & Morse 1984); else what there is.
   */
  raisableAge(): number {
    if ((this.worker[4] ?? 0) > 15) return 4.6
    for (const age of [3, 2, 1, 0]) if ((this.worker[age] ?? 0) > 15) return age
    return 5.5
  }
}

export class Bees {
  readonly #age = new Float64Array(ADULT_DAYS)

  /** Bees of a removed nest: all ages, fewer of the oldest, who are out when the nest is taken. */
  constructor(bees: number) {
    let total = 0
    for (let age = 0; age < 36; age++) {
      const weight = age < 20 ? 1 : 1 - (age - 19) / 20
      this.#age[age] = weight
      total += weight
    }
    for (let age = 0; age < 36; age++) this.#age[age] = ((this.#age[age] ?? 0) * bees) / total
  }

  get count(): number {
    return sum(this.#age, 0, ADULT_DAYS - 1)
  }

  /** Old enough to fly for food; ages 18 and up. */
  get foragers(): number {
    return sum(this.#age, 18, ADULT_DAYS - 1)
  }

  add(bees: number): void {
    this.#age[0] = (this.#age[0] ?? 0) + bees
  }

  lose(share: number): void {
    for (let age = 0; age < ADULT_DAYS; age++) this.#age[age] = (this.#age[age] ?? 0) * (1 - share)
  }

  /** A day passes. `wear` multiplies the dying: under 1 for bees without brood to feed and for winter bees. */
  live(emerged: number, wear: number): void {
    const older = this.#age[ADULT_DAYS - 1] ?? 0
    this.#age.copyWithin(1, 0, ADULT_DAYS - 1)
    this.#age[ADULT_DAYS - 1] = (this.#age[ADULT_DAYS - 1] ?? 0) + older
    this.#age[0] = emerged
    for (let age = 0; age < ADULT_DAYS; age++) {
      // Few die in the house; flight wears bees out: gives a mean life of about 36 days at wear 1 (Winston 1987: 15-38 in summer).
      const dying = age < 18 ? 0.004 : 0.004 + 0.07 * Math.min(1, (age - 17) / 24)
      this.#age[age] = (this.#age[age] ?? 0) * (1 - Math.min(0.6, dying * wear))
    }
  }
}
