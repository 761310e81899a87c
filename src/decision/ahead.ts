/**
 * What may be done with a colony after the next step, as a few hundred plans: look after so many days, give a frame, buy a queen,
 * unite; and what each plan is worth in every state that the colony may be in. A plan reacts to what its looks show: eggs end
 * it, cells are waited for, nothing leads to its next step. What a belief is worth is the best plan's expectation over it
 * (alpha vectors: Sondik 1971; plans of finite memory: Hansen 1998, "Solving POMDPs by searching in policy space").
 */
import { type Model, NOTHING_AROUND, Q } from '../forecast/index.ts'
import { at, COMPACT, COMPACT_STATES, FRESH_FRAME } from './compact.ts'
import type { Costs } from './costs.ts'
import { before, introducing, type Nights, nightsOf, type Season } from './nights.ts'
import { cappedOf, cellsOf, eggsOf, outcomesIn } from './sight.ts'

/** A plan and what it is worth in each state, in the yard's money. */
export interface Vector {
  /** What the plan begins with. */
  first: Step | 'proof' | 'workers'
  /** Its name in the library. */
  key: string
  value: Float64Array
}

/** One step of a plan: wait so many days and look; a frame of eggs; a bought queen; unite. */
type Step = 'w4' | 'w9' | 'w17' | 'g' | 'b' | 'u'
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
/** Chance that opening costs the colony a virgin about to fly or to leave her cell. Judgement. */
export const OPENING_LOSES_VIRGIN = 0.04
export const inDanger = (stage: number, age: number): boolean =>
  (stage === Q.virgin && age <= 14) || (stage === Q.raising && age <= 1)

export interface Ahead {
  vectors: readonly Vector[]
  /** Chance that a queen is kept, by state, with that plan. */
  keeps(vector: Vector): Float64Array
  /** What uniting is worth, whatever is in the box. */
  united: number
}

export interface AheadOptions {
  model: Model
  costs: Costs
  strength: number
  season: Season
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

const LEADS = ['proof', 'workers', 'cells', 'nothing'] as const
type Leads = (typeof LEADS)[number]

/** What a look's outcome leads to. Several eggs a cell or drone caps: laying workers or a drone layer, whatever else is there. */
function leadsTo(o: number): Leads {
  if (cappedOf(o) === 2 || (eggsOf(o) === 2 && cappedOf(o) === 0)) return 'workers'
  if (eggsOf(o) > 0 || cappedOf(o) === 1) return 'proof'
  return cellsOf(o) > 0 ? 'cells' : 'nothing'
}

/** What something is worth so many nights before it, worked out night by night and kept. */
class Stretch {
  readonly #night: Nights
  readonly #day: number
  readonly #values: Float64Array[]

  constructor(night: Nights, later: Float64Array, day: number) {
    this.#night = night
    this.#day = day
    this.#values = [later]
  }

  back(nights: number): Float64Array {
    for (let n = this.#values.length; n <= nights; n++) {
      const out = new Float64Array(COMPACT_STATES)
      before(this.#night, this.#values[n - 1] ?? out, -this.#day, out)
      this.#values.push(out)
    }
    return this.#values[nights] ?? new Float64Array(COMPACT_STATES)
  }
}

/** What all plans of one strength and season share. */
interface Ground {
  night: Nights
  introduce: Nights
  /** Chance of what a look leads to, by state, in the order of {@link LEADS}. */
  leads: Float64Array
  /** Chance that opening costs a virgin, by state. */
  harm: Float64Array
}

const HARM = Float64Array.from(COMPACT, (s) => (inDanger(s.stage, s.age) ? OPENING_LOSES_VIRGIN : 0))

function leadsOf(model: Model): Float64Array {
  const leads = new Float64Array(COMPACT_STATES * LEADS.length)
  COMPACT.forEach((state, s) => {
    outcomesIn(state, NOTHING_AROUND, model, true).forEach((p, o) => {
      const i = s * LEADS.length + LEADS.indexOf(leadsTo(o))
      leads[i] = (leads[i] ?? 0) + p
    })
  })
  return leads
}

export const seasonKey = ({ now, soon, begun, shut }: Season): string => `${now} ${soon} ${begun} ${shut}`

interface Grounds {
  introduce: Nights
  leads: Float64Array
  nights: Map<string, Nights>
}
const grounds = new WeakMap<Model, Grounds>()

/** Kept by model, strength and season: what things cost does not touch it. */
function groundOf({ model, strength, season }: AheadOptions): Ground {
  const kept = grounds.get(model) ?? {
    introduce: introducing(model),
    leads: leadsOf(model),
    nights: new Map<string, Nights>(),
  }
  grounds.set(model, kept)
  const key = `${strength} ${seasonKey(season)}`
  const night = kept.nights.get(key) ?? nightsOf(model, strength, season)
  kept.nights.set(key, night)
  return { night, introduce: kept.introduce, leads: kept.leads, harm: HARM }
}

/** Plans of up to four steps: at most two frames, two queens, and two waits on end. */
function plans(): Step[][] {
  const out: Step[][] = [[]]
  let level: Step[][] = [[]]
  const most = (steps: Step[], step: Step, n: number): boolean => steps.filter((s) => s === step).length <= n
  for (let length = 1; length <= 4; length++) {
    level = level
      .flatMap((steps) => (['w4', 'w9', 'w17', 'g', 'b'] as const).map((s): Step[] => [s, ...steps]))
      .filter((steps) => most(steps, 'g', 2) && most(steps, 'b', 2))
      .filter((steps) => !steps.some((s, i) => s === steps[i + 1] && s.startsWith('w')))
      .filter((steps) => steps.filter((s) => s.startsWith('w')).length <= 2)
    out.push(...level)
  }
  return out
}

const PLANS = plans()

/** Beliefs to try plans on: every state alone, and mixtures of a few. */
const TRIALS: readonly (readonly (readonly [state: number, w: number])[])[] = (() => {
  // A plain congruential generator (Numerical Recipes): any fixed scatter will do.
  let seed = 1
  const next = (): number => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0
    return seed / 4294967296
  }
  const alone = COMPACT.map((_, s): [number, number][] => [[s, 1]])
  const mixed = Array.from({ length: 400 }, () =>
    Array.from({ length: 2 + Math.floor(next() * 4) }, (): [number, number] => [
      Math.floor(next() * COMPACT_STATES),
      next() ** 2,
    ]),
  )
  return [...alone, ...mixed]
})()

/** Plans that are best for some belief; the others are never chosen, so nobody need think of them. The best of each first step stays. */
function worthKeeping(all: readonly Vector[]): Vector[] {
  const kept = new Set<Vector>()
  const keep = (among: readonly Vector[], trial: (typeof TRIALS)[number]): void => {
    let [top, most] = [among[0], Number.NEGATIVE_INFINITY]
    for (const v of among) {
      let value = 0
      for (let k = 0; k < trial.length; k++) {
        const part = trial[k]
        if (part !== undefined) value += part[1] * (v.value[part[0]] ?? 0)
      }
      if (value > most) [top, most] = [v, value]
    }
    if (top !== undefined) kept.add(top)
  }
  const beginning = (['g', 'b', 'u'] as const).map((first) => all.filter((v) => v.first === first))
  for (const trial of TRIALS) {
    keep(all, trial)
    if (trial.length === 1) for (const some of beginning) keep(some, trial)
  }
  return [...kept]
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
