/**
 * What may be done with a colony after the next step, as a few hundred plans: look after so many days, give a frame, buy a queen,
 * unite; and what each plan is worth in every state that the colony may be in. A plan reacts to what its looks show: eggs end
 * it, cells are waited for, nothing leads to its next step. What a belief is worth is the best plan's expectation over it
 * (alpha vectors: Sondik 1971; plans of finite memory: Hansen 1998, "Solving POMDPs by searching in policy space").
 */
import { Q } from '../forecast/index.ts'
import { PLANS, type Step, type Vector, worthKeeping } from './ahead-plans.ts'
import { at, COMPACT, COMPACT_STATES, FRESH_FRAME } from './compact.ts'
import type { Costs } from './costs.ts'
import { type Ground, type GroundOptions, groundOf, LEADS, type Leads, Stretch } from './ground.ts'
import { before } from './nights.ts'

const WAITS: Partial<Record<Step, number>> = { w4: 4, w9: 9, w17: 17 }
/** A frame of eggs is read after this many days: cells show, and its own eggs have hatched. */
export const READ_AFTER = 5
/** A frame of eggs has capped brood until 21 days on, in a colony in which a queen may lay from the first: the proof of hers waits some days. Judgement. */
export const FRAME_DELAYS = 6
/** Days that a frame of eggs holds open brood; and the state of a colony turned back by it, on average three days after it came. */
const FRAME_OPEN_DAYS = 5
const TURNED_BACK = 3

/** A caged queen is out, and lays, so many days after she was put in (practice). */
const CAGE_DAYS = 3
const EGGS_AFTER = 9

/** What happens in a colony of that strength in which a queen lays: days until it may move out once capped brood is proven, and the chance that it gets there. Judgement on the strength forecast: smaller ones must grow first. */
const GROWN: readonly { days: number; ok: number }[] = [
  { days: 40, ok: 0.72 },
  { days: 30, ok: 0.88 },
  { days: 18, ok: 0.95 },
  { days: 7, ok: 0.975 },
  { days: 2, ok: 0.985 },
]
/** Capped worker brood is plain from this day after the first egg. */
const PROOF_AT = 11

export interface Ahead {
  vectors: readonly Vector[]
  /** Chance that a queen is kept, by state, with that plan. */
  keeps(vector: Vector): Float64Array
  /** What uniting is worth, whatever is in the box. */
  united: number
}

export interface AheadOptions extends GroundOptions {
  costs: Costs
  /** Days until a bought queen can be put in; 0: she is in hand (and paid for). */
  lead: number
}

/** How far a plan has turned from its course: 1 cells were waited for once, 2 eggs or laying workers were wrongly seen once. Nothing is done over and over. */
type Turn = 0 | 1 | 2

class Library {
  readonly #o: AheadOptions
  readonly #ground: Ground
  readonly #known = new Map<string, Vector>()
  readonly #looks = new Map<string, Stretch>()

  constructor(options: AheadOptions, ground: Ground) {
    this.#o = options
    this.#ground = ground
  }

  get united(): number {
    const { costs, strength } = this.#o
    const frames = [0.6, 1.2, 2, 3.2, 5][strength] ?? 2
    return Math.min(costs.worth / 2, costs.unitedFrame * frames)
  }

  #once(key: string, first: Vector['first'], make: () => Float64Array): Vector {
    const known = this.#known.get(key)
    if (known !== undefined) return known
    const made = { first, key, value: make() }
    this.#known.set(key, made)
    return made
  }

  /** The plan of those steps; every plan ends by uniting. */
  plan(steps: readonly Step[], turn: Turn = 0): Vector {
    return this.#once(`${turn}${steps.join()}`, steps[0] ?? 'u', () => this.#make(steps, turn))
  }

  named(key: string): Vector {
    if (key.startsWith('proof')) return this.proof()
    if (key.startsWith('workers')) return this.workers()
    return this.plan(key.slice(1) === '' ? [] : (key.slice(1).split(',') as Step[]))
  }

  #make(steps: readonly Step[], turn: Turn): Float64Array {
    const [first = 'u', ...rest] = steps
    if (first === 'u') return this.#constant(this.united - this.#o.costs.opening)
    const days = WAITS[first]
    if (days !== undefined) return this.#lookIn(days, rest, turn)
    return first === 'g' ? this.#frame(rest, turn) : this.#queen(rest, turn)
  }

  #constant(value: number): Float64Array {
    return new Float64Array(COMPACT_STATES).fill(value)
  }

  #before(later: Float64Array): Stretch {
    return new Stretch(this.#ground.night, later, this.#o.costs.day)
  }

  /** What it is worth to look after so many nights, and to go on so. */
  #lookIn(nights: number, rest: readonly Step[], turn: Turn): Float64Array {
    const key = `${turn}${rest.join()}`
    let look = this.#looks.get(key)
    if (look === undefined) {
      look = this.#before(this.#look(rest, turn))
      this.#looks.set(key, look)
    }
    return look.back(nights)
  }

  /** A look, and what follows from what it shows. */
  #look(rest: readonly Step[], turn: Turn): Float64Array {
    const { opening } = this.#o.costs
    const [proof, workers, cells, nothing] = LEADS.map((leads) => this.#next(leads, rest, turn).value)
    const out = new Float64Array(COMPACT_STATES)
    const { leads, harm } = this.#ground
    if (proof === undefined || workers === undefined || cells === undefined || nothing === undefined)
      return out
    for (let s = 0, i = 0; s < COMPACT_STATES; s++, i += 4) {
      const v =
        (leads[i] ?? 0) * (proof[s] ?? 0) +
        (leads[i + 1] ?? 0) * (workers[s] ?? 0) +
        (leads[i + 2] ?? 0) * (cells[s] ?? 0) +
        (leads[i + 3] ?? 0) * (nothing[s] ?? 0)
      out[s] = v * (1 - (harm[s] ?? 0)) - opening
    }
    return out
  }

  #next(leads: Leads, rest: readonly Step[], turn: Turn): Vector {
    switch (leads) {
      case 'proof':
        return this.proof(turn)
      case 'workers':
        return this.workers(turn)
      case 'cells':
        if (turn > 0) return this.plan(rest, turn)
        return this.plan(['w17', ...(rest[0] === 'w17' ? rest.slice(1) : rest)], 1)
      default:
        return this.plan(rest, turn)
    }
  }

  /** A frame of eggs on the day of a look, read five days on. */
  #frame(rest: readonly Step[], turn: Turn): Float64Array {
    const read = this.#lookIn(READ_AFTER, rest, turn)
    const cost = this.#o.costs.frame
    const turned = 1 - (1 - this.#o.model.rates.framesTurnWorkers) ** FRAME_OPEN_DAYS
    return read.map((x, s) => {
      const state = COMPACT[s]
      // Its own brood may be as young: then the frame adds little.
      const helps = state?.stage === Q.none && state.old > 3
      if (state?.stage === Q.workers) return turned * (read[TURNED_BACK] ?? 0) + (1 - turned) * x - cost
      return (helps ? (read[FRESH_FRAME] ?? 0) : x) - cost
    })
  }

  /** A bought queen: sent for, put in, let out, and her eggs looked for. */
  #queen(rest: readonly Step[], turn: Turn): Float64Array {
    const { costs, lead } = this.#o
    const eggs = this.#lookIn(EGGS_AFTER - CAGE_DAYS, rest, turn)
    const put = new Float64Array(COMPACT_STATES)
    const paid = lead > 0 ? costs.queen : 0
    before(this.#ground.introduce, eggs, -costs.opening - costs.day * CAGE_DAYS - paid, put)
    return this.#before(put).back(lead)
  }

  /** Eggs beyond doubt: what is left is to wait for capped worker brood, and for strength. */
  proof(turn: Turn = 0): Vector {
    return this.#once(`proof${turn === 2}`, 'proof', () => {
      const { costs, strength, season } = this.#o
      const grown = GROWN[strength] ?? { days: 20, ok: 0.9 }
      const wrong = this.#before((turn === 2 ? this.plan([]) : this.plan(['g', 'b'], 2)).value).back(PROOF_AT)
      const workers = this.#before(this.workers(turn).value).back(PROOF_AT)
      return wrong.map((x, s) => {
        const state = COMPACT[s]
        if (state?.stage === Q.drones || state?.stage === Q.workers) return (workers[s] ?? 0) - costs.opening
        if (state?.stage !== Q.laying) return x
        const days = Math.max(0, PROOF_AT - state.age) + grown.days
        return grown.ok * costs.worth * (1 - season.shut) ** days - costs.opening - costs.day * days
      })
    })
  }

  /** Laying workers or a drone layer, plain to see: unite the former; find the latter and put a bought queen in her place. */
  workers(turn: Turn = 0): Vector {
    return this.#once(`workers${turn === 2}`, 'workers', () => {
      const { costs } = this.#o
      const unite = this.#constant(this.united - costs.opening)
      if (turn === 2) return unite
      const bought = this.plan(['b'], 2).value[at(Q.none, 0)] ?? 0
      return unite.map((x, s) => (COMPACT[s]?.stage === Q.drones ? bought - costs.opening : x))
    })
  }
}

/** A queen kept is all that counts, and nothing costs: then a plan is worth the chance that it keeps one. */
const ONLY_QUEENS: Costs = { worth: 1, queen: 0, frame: 0, opening: 0, day: 0, unitedFrame: 0 }

export function aheadOf(options: AheadOptions): Ahead {
  return { ...worthOfPlans(options), keeps: keepsOf(options) }
}

/** By itself, so that what was reckoned on the way, twenty times what is kept, goes with it. */
function worthOfPlans(options: AheadOptions): Pick<Ahead, 'vectors' | 'united'> {
  const library = new Library(options, groundOf(options))
  const all = [...PLANS.map((p) => library.plan(p)), library.proof(), library.workers()]
  return { vectors: worthKeeping(all), united: library.united }
}

function keepsOf(options: AheadOptions): Ahead['keeps'] {
  const open = { ...options, costs: ONLY_QUEENS, season: { ...options.season, shut: 0 } }
  const chances = new Library(open, groundOf(open))
  return (v) => chances.named(v.key).value
}
