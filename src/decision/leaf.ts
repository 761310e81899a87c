/** What a belief is worth: before a look, after each thing it may show, with the best plan for that. */
import { type Around, type Model, Q, type Shares, STATE } from '../forecast/index.ts'
import { type Ahead, inDanger, OPENING_LOSES_VIRGIN, type Vector } from './ahead.ts'
import { at, COMPACT_STATES, compactOfNumber } from './compact.ts'
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

const seen = new WeakMap<Model, Map<string, Float64Array>>()

/** Chances of what a look shows in a state, kept: the same few thousand are asked for again and again. */
function sightOf(n: number, a: Around, model: Model): Float64Array {
  const kept = seen.get(model) ?? new Map<string, Float64Array>()
  seen.set(model, kept)
  const key = `${n}|${a.gift}|${a.cappedGift}|${a.oldOpen ? 1 : 0}${a.oldCapped ? 1 : 0}`
  const known = kept.get(key)
  if (known !== undefined) return known
  const state = STATE[n]
  if (state === undefined) throw new RangeError(`sightOf: no state ${n}`)
  const made = outcomesIn(state, a, model)
  kept.set(key, made)
  return made
}

/** The belief over compact states: the states in it, and all weights by state. */
interface Dense {
  states: number[]
  w: Float64Array
  total: number
}

const ORPHANED = at(Q.none, 0)

function best(b: Dense, ahead: Ahead): { vector: Vector; value: number } {
  let [top, value] = [ahead.vectors[0], Number.NEGATIVE_INFINITY]
  for (const v of ahead.vectors) {
    let sum = 0
    for (const s of b.states) sum += (b.w[s] ?? 0) * (v.value[s] ?? 0)
    if (sum > value) [top, value] = [v, sum]
  }
  if (top === undefined) throw new Error('best: no plan at all')
  return { vector: top, value }
}

const dot = (b: Dense, values: Float64Array): number =>
  b.states.reduce((sum, s) => sum + (b.w[s] ?? 0) * (values[s] ?? 0), 0)

const dense = (w: Float64Array): Dense => {
  const states: number[] = []
  let total = 0
  w.forEach((x, s) => {
    if (x > 0) states.push(s)
    total += x
  })
  return { states, w, total }
}

/** A belief as weights of compact states. */
export function compacted(shares: Shares, around: Around): Float64Array {
  const w = new Float64Array(COMPACT_STATES)
  shares.states.forEach((n, i) => {
    const c = compactOfNumber(n, around)
    w[c] = (w[c] ?? 0) + (shares.w[i] ?? 0)
  })
  return w
}

/** What the belief is worth with the best plan that begins so, without a look before it. */
export function worthOf(w: Float64Array, ahead: Ahead, first?: Vector['first']): Worth {
  const vectors = first === undefined ? ahead.vectors : ahead.vectors.filter((v) => v.first === first)
  const b = dense(w)
  const { vector, value } = best(b, { ...ahead, vectors })
  return { value, keeps: dot(b, ahead.keeps(vector)), next: { [vector.first]: 1 } }
}

/** Work space, used again and again. */
const OUTCOME_ROWS = Array.from({ length: OUTCOMES }, () => new Float64Array(COMPACT_STATES))

/** What it is worth to look, the opening not counted. */
export function worthOfLook(shares: Shares, around: Around, model: Model, ahead: Ahead): Worth {
  const byOutcome = OUTCOME_ROWS
  for (const row of byOutcome) row.fill(0)
  const masses = new Float64Array(OUTCOMES)
  for (let i = 0; i < shares.states.length; i++) {
    const n = shares.states[i] ?? 0
    const w = shares.w[i] ?? 0
    const state = STATE[n]
    if (state === undefined || w < 1e-7) continue
    const c = compactOfNumber(n, around)
    const harm = inDanger(state.stage, state.age) ? OPENING_LOSES_VIRGIN : 0
    const chances = sightOf(n, around, model)
    for (let o = 0; o < OUTCOMES; o++) {
      const p = w * (chances[o] ?? 0)
      const row = byOutcome[o]
      if (row === undefined || p === 0) continue
      row[c] = (row[c] ?? 0) + p * (1 - harm)
      if (harm > 0) row[ORPHANED] = (row[ORPHANED] ?? 0) + p * harm
      masses[o] = (masses[o] ?? 0) + p
    }
  }
  const rest = new Float64Array(COMPACT_STATES)
  const out: Worth = { value: 0, keeps: 0, next: {} }
  const count = (w: Float64Array): void => {
    const b = dense(w)
    if (b.total === 0) return
    const { vector, value } = best(b, ahead)
    out.value += value
    out.keeps += dot(b, ahead.keeps(vector))
    out.next[vector.first] = (out.next[vector.first] ?? 0) + b.total
  }
  byOutcome.forEach((w, o) => {
    if ((masses[o] ?? 0) >= RARE) count(w)
    else
      w.forEach((x, s) => {
        rest[s] = (rest[s] ?? 0) + x
      })
  })
  count(rest)
  return out
}
