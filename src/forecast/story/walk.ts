/**
 * Follows all stories at once, day by day, and back again: the shares of every state on every day, given everything seen.
 *
 * This is the forward-backward sum over a finite chain (Rabiner 1989, Proc. IEEE 77:257-286): exact, since every story is
 * in it and none is cut off, however small its share.
 */
import type { Inspection, Intake, StandingEntry } from '../../journal/index.ts'
import type { Rates } from '../rates.ts'
import { type Around, nightKey } from './around.ts'
import { broodOf, type LookedAt, sightingsOf } from './look.ts'
import { freed, nightFrom, type Row, TALLY } from './night.ts'
import { startingStories, type Weights } from './start.ts'
import { pack, Q, STATE, STATES } from './state.ts'
import { type DayOfStory, GIVEN_CELL_DAYS, type Step } from './steps.ts'
import { type Tables, tablesOf } from './tables.ts'

/** Shares of states: the state numbers that occur and their weights, side by side. */
export interface Shares {
  states: Int16Array
  w: Float64Array
}

/** Rates with everything worked out from them that colonies have in common. Make one and use it for the whole yard. */
export interface Model {
  rates: Rates
  /** Shares below this are dropped every night; 0: none. */
  leaveOut: number
  tables: Tables
  /** Nights already worked out of states that nothing in the box can touch, by state. */
  plain: (Row | undefined)[]
  /** Nights of the others (nobody there, or a cage), by what is in the box, then by state. */
  inBox: Map<string, (Row | undefined)[]>
}

/**
 * A model of those rates. `leaveOut`: shares below it are dropped every night (0: none, exact). With 3e-6 odds move by less
 * than 0.001 and a list of many colonies takes half the time.
 */
export const modelOf = (rates: Rates, leaveOut = 0): Model => ({
  rates,
  leaveOut,
  tables: tablesOf(rates),
  plain: new Array<Row | undefined>(STATES),
  inBox: new Map(),
})

/** For lists of many colonies: half the time, odds within a thousandth. */
export const listModelOf = (rates: Rates): Model => modelOf(rates, 3e-6)

/** Where each state leads in a night with that in the box, each worked out once. */
function nightRows(model: Model, around: Around): (s: number) => Row {
  const key = nightKey(around)
  const own: (Row | undefined)[] = model.inBox.get(key) ?? []
  model.inBox.set(key, own)
  const { plain } = model
  const worked = (s: number): Row => {
    const state = STATE[s]
    if (state === undefined) throw new RangeError(`nightRows: no state ${s}`)
    const row = nightFrom(state, around, model.rates, model.tables)
    if (state.caged || state.stage === Q.none) own[s] = row
    else plain[s] = row
    return row
  }
  return (s) => plain[s] ?? own[s] ?? worked(s)
}

/** Work space, used again and again. */
const sum = new Float64Array(STATES)
const touched = new Int16Array(STATES)

/** Shares after a step in which each state leads to a row of others. */
export function spread(from: Shares, row: (s: number) => Row, leaveOut = 0): Shares {
  let n = 0
  for (let i = 0; i < from.states.length; i++) {
    const w = from.w[i] ?? 0
    if (w <= leaveOut) continue
    const { to, p } = row(from.states[i] ?? 0)
    for (let k = 0; k < to.length; k++) {
      const s = to[k] ?? 0
      const add = w * (p[k] ?? 0)
      if (sum[s] === 0 && add > 0) touched[n++] = s
      sum[s] = (sum[s] ?? 0) + add
    }
  }
  const states = touched.slice(0, n)
  const w = new Float64Array(n)
  for (let k = 0; k < n; k++) {
    const s = states[k] ?? 0
    w[k] = sum[s] ?? 0
    sum[s] = 0
  }
  return { states, w }
}

/** What an act does to a state. The weight of 'found dead' and the like is in {@link actChance}. */
export function actRow(s: number, step: Step & { kind: 'act' }, around: Around, rates: Rates): Row {
  const state = STATE[s]
  if (state === undefined) throw new RangeError(`actRow: no state ${s}`)
  const only = (to: number): Row => ({ to: [to], p: [1], tally: [TALLY.none] })
  const { stage, age, old } = state
  switch (step.act) {
    case 'cage':
      return only(pack(stage, age, old, true))
    case 'free':
      return freed(state, around.cage, rates)
    case 'open-cage':
      return state.caged ? freed(state, around.cage, rates) : only(s)
    case 'cage-lost':
      return only(pack(stage, age, old, false))
    case 'still-caged':
      return only(s)
    case 'cell': {
      if (stage !== Q.none || state.caged) return only(s)
      const p = GIVEN_CELL_DAYS.map(([, w]) => w * rates.givenCellTakes)
      return {
        to: [s, ...GIVEN_CELL_DAYS.map(([left]) => pack(Q.raising, left, old, false))],
        p: [1 - rates.givenCellTakes, ...p],
        tally: [0, ...p.map(() => TALLY.none)],
      }
    }
  }
}

/** How likely a cage is found so. A caged queen found dead or attacked points to another queen (Esoteria 16); judgement. */
export function actChance(s: number, step: Step & { kind: 'act' }): number {
  const state = STATE[s]
  if (state === undefined) return 0
  const other = state.stage === Q.laying || state.stage === Q.settling || state.stage === Q.virgin
  if (step.act === 'still-caged') return state.caged ? 1 : 0.001
  if (step.act === 'cage-lost') {
    if (!state.caged) return state.stage === Q.none ? 0.1 : 0.01
    return other ? 0.3 : 0.04
  }
  return 1
}

const sharesOf = (weights: Weights): Shares => ({
  states: Int16Array.from(weights.keys()),
  w: Float64Array.from(weights.values()),
})

function scaled(shares: Shares, chance: Float64Array): { shares: Shares; total: number } {
  const w = shares.w.map((x, i) => x * (chance[i] ?? 0))
  let total = 0
  for (const x of w) total += x
  return { shares: { states: shares.states, w: total > 0 ? w.map((x) => x / total) : w }, total }
}

/** How likely something is in each of those states, side by side with them. */
const chances = (states: Int16Array, chance: (s: number) => number): Float64Array =>
  Float64Array.from(states, chance)

/** A sighting with its chance in each state that was possible before it. */
export interface HeldSighting {
  what: LookedAt
  value: string
  chance: Float64Array
}

/** Every sighting of a look, held against every state possible before it. */
function heldAgainst(states: Int16Array, look: Inspection, around: Around, model: Model): HeldSighting[] {
  const { rates, tables } = model
  const sightings = sightingsOf(look, rates, tables)
  const out = sightings.map(({ what, value }) => ({ what, value, chance: new Float64Array(states.length) }))
  states.forEach((s, i) => {
    const state = STATE[s]
    if (state === undefined) return
    const brood = broodOf(state, around, rates, look.onFreshComb === true)
    sightings.forEach((x, k) => {
      const chance = out[k]?.chance
      if (chance !== undefined) chance[i] = x.chance(state, brood)
    })
  })
  return out
}

/** All sightings of a look together: given the state they multiply. */
function together(n: number, sightings: readonly HeldSighting[]): Float64Array {
  const all = new Float64Array(n).fill(1)
  for (const { chance } of sightings) for (let i = 0; i < n; i++) all[i] = (all[i] ?? 0) * (chance[i] ?? 0)
  return all
}

/** One step of the walk, kept for the way back. */
export interface Link {
  t: number
  kind: 'night' | 'look' | 'act'
  sightings: readonly HeldSighting[]
  /** The entry the link comes from; null for nights. */
  entry: StandingEntry | null
  /** Where a state leads, for nights and acts. */
  row: ((s: number) => Row) | null
  /** How likely what was seen is in each of the states before it, for looks and acts. */
  chance: Float64Array | null
  before: Shares
  after: Shares
}

export interface Walk {
  start: Shares
  links: Link[]
  /** Shares at nightfall of each day, given what was known by then. */
  byDay: Shares[]
  /** Natural logarithm of the chance of everything seen. */
  logChance: number
}

/** Forward through the days. */
export function walk(model: Model, intake: Intake, days: readonly DayOfStory[]): Walk {
  const { rates } = model
  let now = sharesOf(startingStories(intake, rates))
  const start = now
  const links: Link[] = []
  const byDay: Shares[] = []
  let logChance = 0
  for (const { t, around, overnight, atTheLook, steps } of days) {
    if (t > 0) {
      const row = nightRows(model, overnight)
      const after = spread(now, row, model.leaveOut)
      links.push({ t, kind: 'night', sightings: [], entry: null, row, chance: null, before: now, after })
      now = after
    }
    for (const step of steps) {
      const before = now
      const sightings = step.kind === 'look' ? heldAgainst(before.states, step.entry, atTheLook, model) : []
      const chance =
        step.kind === 'look'
          ? together(before.states.length, sightings)
          : chances(before.states, (s) => actChance(s, step))
      const row = step.kind === 'act' ? (s: number): Row => actRow(s, step, around, rates) : null
      const seen = scaled(now, chance)
      logChance += Math.log(seen.total)
      const after = row === null ? seen.shares : spread(seen.shares, row)
      links.push({ t, kind: step.kind, sightings, entry: step.entry, row, chance, before: now, after })
      now = after
    }
    byDay.push(now)
  }
  return { start, links, byDay, logChance }
}
