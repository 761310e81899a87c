/** Bees, brood, stores and mites of one box, from night to night. */
import type { Bees, Brood } from './brood.ts'
import type { Queen } from './queens.ts'
import type { Weather } from './season.ts'
import type { World } from './world.ts'

/** What a box can hold. */
const MOST_STORES_KG = 25

export class Nest {
  readonly brood: Brood
  readonly bees: Bees
  storesKg: number
  mitesPer100: number

  constructor(brood: Brood, bees: Bees, storesKg: number, mitesPer100: number) {
    this.brood = brood
    this.bees = bees
    this.storesKg = storesKg
    this.mitesPer100 = mitesPer100
  }

  /** Brood ages and emerges, bees age and die, stores come in and are eaten. */
  live(world: World, weather: Weather): void {
    const open = this.brood.open()
    const bees = this.bees.count
    const nursed = open > 0 ? Math.min(1, (1.8 * bees) / open) : 1 // ~1 adult to 1-2 cells is sustainable
    const rearing = Math.min(1, open / Math.max(1, bees) / 0.5)
    // Bees without brood to feed live longer; weak colonies' bees up to 2-3 times shorter; winter bees 140-320 days.
    const wear =
      world.flightDeath *
      (0.65 + 0.35 * rearing) *
      (1 + 0.8 * Math.exp(-bees / 1800)) *
      (weather.winterBees ? 0.35 : 1) *
      (this.storesKg <= 0 ? 4 : 1)
    this.bees.live(this.brood.age(nursed), wear)
    // About 0.1 g a forager and day; 7 mg a bee and 18 mg a larva (Khoury et al. 2013).
    const income = this.bees.foragers * 0.00013 * weather.forage
    this.storesKg = Math.max(0, Math.min(MOST_STORES_KG, this.storesKg + income - bees * 7e-6 - open * 18e-6))
    this.mitesPer100 = Math.min(20, this.mitesPer100 * 1.012) // doubles in two months: judgement
  }

  /** Eggs of this night: a queen's, or workers'. */
  lay(queen: Queen | null, workersLay: boolean, day: number, weather: Weather): void {
    const bees = this.bees.count
    if (queen === null) {
      if (workersLay) this.#add(this.brood.drone, Math.min(150, bees * 0.012))
      return
    }
    if (queen.laysFrom > day || queen.kind === 'virgin') return
    const fed = this.storesKg > 0.5 ? 1 : 0.3
    // Khoury et al.: half of the highest rate (2,000) at 5,000 (2013) to 27,000 (2011) bees; a handful cannot keep brood warm.
    const most = ((2000 * bees) / (bees + 7000)) * (bees / (bees + 500)) * weather.laying * fed
    const ramp = Math.min(1, (queen.origin === 'old' ? 0.4 : 0.3) + 0.12 * (day - queen.laysFrom))
    const eggs = most * queen.vigour * ramp
    if (queen.kind === 'mated') this.#add(this.brood.worker, eggs)
    else this.#add(this.brood.drone, eggs * 0.5)
  }

  #add(cells: Float64Array, eggs: number): void {
    cells[0] = (cells[0] ?? 0) + eggs
  }
}
