/** When workers begin to lay, and when they stop. */
import type { Dice } from './dice.ts'
import type { World } from './world.ts'

/** Open brood that keeps workers from laying, in cells. Judgement. */
const ENOUGH_OPEN = 250

export class LayingWorkers {
  active = false
  /** Days without queen and open brood, and how many of them it takes. */
  #clock: number
  readonly #onset: number

  constructor(world: World, dice: Dice, queenlessFor: number) {
    this.#clock = Math.max(0, queenlessFor - 9)
    this.#onset = Math.max(10, dice.normal(world.layingWorkers, world.layingWorkersSpread, 'layingWorkers'))
  }

  /** Neither queen nor open brood keeps them from it (Butler). A virgin holds them off in part (judgement). */
  night(felt: 'queen' | 'virgin' | 'nobody', open: number): void {
    if (felt === 'queen') this.#clock = Math.max(0, this.#clock - 2)
    else if (open > ENOUGH_OPEN) this.#clock = Math.max(0, this.#clock - 1)
    else this.#clock += felt === 'nobody' ? 1 : 0.3
    if (felt !== 'queen' && this.#clock >= this.#onset) this.active = true
  }

  /** Open brood from a donor, or a queen, has turned them back. */
  stop(): void {
    this.active = false
    this.#clock = Math.min(this.#clock, this.#onset / 2)
  }
}
