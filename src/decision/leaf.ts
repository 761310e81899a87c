/** What a belief is worth: before a look, after each thing it may show, with the best plan for that. */
import { type Around, type Model, Q, type Shares, STATE } from '../forecast/index.ts'
import type { Ahead } from './ahead.ts'
import type { Vector } from './ahead-plans.ts'
import { at, COMPACT_STATES, compactOfNumber } from './compact.ts'
import { inDanger, OPENING_LOSES_VIRGIN } from './ground.ts'
import { OUTCOMES, outcomesIn } from './sight.ts'

export interface Worth {
  value: number
  /** Chance that a queen is kept. */
  keeps: number
  /** Chance that the plan after it begins with that. */
  next: Partial<Record<Vector['first'], number>>
}

/** Outcomes as likely as this are thought of one by one; the rest together. */
const RARE = 0.004
/** Shares that move no value by a hundredth of the yard's money. */
const NEGLIGIBLE = 1e-6

type SightRows = (Float64Array | undefined)[]
const seen = new WeakMap<Model, Map<string, SightRows>>()

/** Chances of what a look shows, by the number of the state, kept: the same few thousand are asked for again and again. */
function sightsIn(a: Around, model: Model): (n: number) => Float64Array {
  const kept = seen.get(model) ?? new Map<string, SightRows>()
  seen.set(model, kept)
  const key = `${a.gift}|${a.cappedGift}|${a.oldOpen ? 1 : 0}${a.oldCapped ? 1 : 0}`
  const rows: SightRows = kept.get(key) ?? []
  kept.set(key, rows)
  return (n) => {
    const known = rows[n]
    if (known !== undefined) return known
    const state = STATE[n]
    if (state === undefined) throw new RangeError(`sightsIn: no state ${n}`)
    const made = outcomesIn(state, a, model)
    rows[n] = made
    return made
  }
}

/** A belief over compact states: those in it and their weights, side by side; they sum to `total`. */
export interface Belief {
  states: Int16Array
  w: Float64Array
  total: number
}

const ORPHANED = at(Q.none, 0)

/** Work space, used again and again. */
const placeOf = new Int16Array(COMPACT_STATES)
const weightOf = new Float64Array(COMPACT_STATES)

/** The weights of `row` from `from` on, one for each compact state, without those that are nothing. */
function gathered(row: Float64Array, from: number): Belief {
  let n = 0
  let total = 0
  for (let s = 0; s < COMPACT_STATES; s++) {
    const x = row[from + s] ?? 0
    total += x
    if (x <= NEGLIGIBLE) continue
    placeOf[n] = s
    weightOf[n++] = x
  }
  return { states: placeOf.slice(0, n), w: weightOf.slice(0, n), total }
}

function dot({ states, w }: Belief, values: Float64Array): number {
  let sum = 0
  for (let i = 0; i < states.length; i++) sum += (w[i] ?? 0) * (values[states[i] ?? 0] ?? 0)
  return sum
}

function best(b: Belief, vectors: readonly Vector[]): { vector: Vector; value: number } {
  let [top, value] = [vectors[0], Number.NEGATIVE_INFINITY]
  for (const v of vectors) {
    const sum = dot(b, v.value)
    if (sum > value) [top, value] = [v, sum]
  }
  if (top === undefined) throw new Error('best: no plan at all')
  return { vector: top, value }
}

/** A belief as weights of compact states. */
export function compacted(shares: Shares, around: Around): Belief {
  const w = new Float64Array(COMPACT_STATES)
  shares.states.forEach((n, i) => {
    const c = compactOfNumber(n, around)
    w[c] = (w[c] ?? 0) + (shares.w[i] ?? 0)
  })
  return gathered(w, 0)
}

/** What the belief is worth with the best plan that begins so, without a look before it. */
export function worthOf(b: Belief, ahead: Ahead, first?: Vector['first']): Worth {
  const vectors = first === undefined ? ahead.vectors : ahead.vectors.filter((v) => v.first === first)
  const { vector, value } = best(b, vectors)
  return { value, keeps: dot(b, ahead.keeps(vector)), next: { [vector.first]: 1 } }
}

const byOutcome = new Float64Array(OUTCOMES * COMPACT_STATES)

/** What a look may show: for each outcome the belief after it, weighted by its chance. Rare ones are put together. */
export function outcomesOf(shares: Shares, around: Around, model: Model): Belief[] {
  byOutcome.fill(0)
  const masses = new Float64Array(OUTCOMES)
  const sights = sightsIn(around, model)
  for (let i = 0; i < shares.states.length; i++) {
    const n = shares.states[i] ?? 0
    const w = shares.w[i] ?? 0
    const state = STATE[n]
    if (state === undefined || w < NEGLIGIBLE) continue
    const c = compactOfNumber(n, around)
    const harm = inDanger(state.stage, state.age) ? OPENING_LOSES_VIRGIN : 0
    const chances = sights(n)
    for (let o = 0, row = 0; o < OUTCOMES; o++, row += COMPACT_STATES) {
      const p = w * (chances[o] ?? 0)
      byOutcome[row + c] = (byOutcome[row + c] ?? 0) + p * (1 - harm)
      if (harm > 0) byOutcome[row + ORPHANED] = (byOutcome[row + ORPHANED] ?? 0) + p * harm
      masses[o] = (masses[o] ?? 0) + p
    }
  }
  const out: Belief[] = []
  const rest = new Float64Array(COMPACT_STATES)
  for (let o = 0, row = 0; o < OUTCOMES; o++, row += COMPACT_STATES) {
    if ((masses[o] ?? 0) >= RARE) out.push(gathered(byOutcome, row))
    else for (let s = 0; s < COMPACT_STATES; s++) rest[s] = (rest[s] ?? 0) + (byOutcome[row + s] ?? 0)
  }
  out.push(gathered(rest, 0))
  return out
}

/** What it is worth to look, the opening not counted. */
export function worthOfLook(outcomes: readonly Belief[], ahead: Ahead): Worth {
  const out: Worth = { value: 0, keeps: 0, next: {} }
  for (const b of outcomes) {
    if (b.states.length === 0) continue
    const { vector, value } = best(b, ahead.vectors)
    out.value += value
    out.keeps += dot(b, ahead.keeps(vector))
    out.next[vector.first] = (out.next[vector.first] ?? 0) + b.total
  }
  return out
}
