/**
 * Follows all stories at once, day by day, and back again: the shares of every state on every day, given everything seen.
 *
 * This is the forward-backward sum over a finite chain (Rabiner 1989, Proc. IEEE 77:257-286): exact, since every story is
 * in it and none is cut off, however small its share.
 */
import type { Inspection, Intake, StandingEntry } from '../../journal/index.ts'
import type { Month } from '../../recovery/index.ts'
import { toTheEnd } from '../../steps.ts'
import type { Rates } from '../rates.ts'
import { type Around, nightKey } from './around.ts'
import { hasteOf, inHaste, onAverage } from './haste.ts'
import { broodOf, type LookedAt, type Sighting, sightingsOf } from './look.ts'
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
  /** The same for a look in haste, and for an ordinary look, care and haste taken together. */
  hasty: Rates
  seen: Rates
  /** Months in which queens mate here; empty: not said, so in all. */
  matingMonths: readonly Month[]
  /** Shares below this are dropped every night; 0: none. */
  leaveOut: number
  tables: Tables
  /** Nights already worked out of states that nothing in the box can touch, by how readily queens mate in quarters, then by state. */
  plain: readonly (Row | undefined)[][]
  /** Nights of the others (nobody there, or a cage), by what is in the box, then by state. */
  inBox: Map<string, (Row | undefined)[]>
}

/**
 * A model of those rates. `leaveOut`: shares below it are dropped every night (0: none, exact). With 3e-6 odds move by less
 * than 0.001 and a list of many colonies takes half the time.
 */
export const modelOf = (rates: Rates, leaveOut = 0, matingMonths: readonly Month[] = []): Model => ({
  rates,
  hasty: inHaste(rates),
  seen: onAverage(rates),
  matingMonths,
  leaveOut,
  tables: tablesOf(rates),
  plain: [[], [], [], [], []],
  inBox: new Map(),
})

/** For lists of many colonies: a third of the time, odds within a thousandth. */
export const listModelOf = (rates: Rates, matingMonths: readonly Month[] = []): Model =>
  modelOf(rates, 1e-5, matingMonths)

/** Where each state leads in a night with that in the box, each worked out once. */
function nightRows(model: Model, around: Around): (s: number) => Row {
  const key = nightKey(around)
  const own: (Row | undefined)[] = model.inBox.get(key) ?? []
  model.inBox.set(key, own)
  const plain = model.plain[around.mates * 4] ?? []
  const worked = (s: number): Row => {
    const state = STATE[s]
    if (state === undefined) throw new RangeError(`nightRows: no state ${s}`)
    const row = nightFrom(state, around, model.rates, model.tables)
    if (state.caged || state.stage === Q.none || state.stage === Q.workers) own[s] = row
    else plain[s] = row
    return row
  }
  return (s) => plain[s] ?? own[s] ?? worked(s)
}

/** Work space, used again and again. */
const sum = new Float64Array(STATES)
const touched = new Int16Array(STATES)

/** Shares after a step in which each state leads to a row of others. */
function spread(from: Shares, row: (s: number) => Row, leaveOut = 0): Shares {
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
function actRow(s: number, step: Step & { kind: 'act' }, around: Around, rates: Rates): Row {
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

/** A look held against every state possible before it. */
export interface HeldLook {
  sightings: HeldSighting[]
  /** How likely all of it together is, by state; and the part of that in which it was made in haste. */
  chance: Float64Array
  hasty: Float64Array
}

/** Given the state, and whether there was haste, sightings do not depend on each other: they multiply. */
export function heldAgainst(states: Int16Array, look: Inspection, around: Around, model: Model): HeldLook {
  const haste = hasteOf(look, model.rates)
  const careful = sightingsOf(look, model.rates, model.tables)
  const hurried = sightingsOf(look, model.hasty, model.tables)
  const fresh = look.onFreshComb === true
  const n = states.length
  const sightings = careful.map(({ what, value }) => ({ what, value, chance: new Float64Array(n) }))
  const chance = new Float64Array(n)
  const hasty = new Float64Array(n)
  for (let i = 0; i < n; i++) {
    const state = STATE[states[i] ?? 0]
    if (state === undefined) continue
    const brood = broodOf(state, around, model.rates, fresh)
    const hurriedBrood = broodOf(state, around, model.hasty, fresh)
    let [withCare, inHurry] = [1 - haste, haste]
    for (let k = 0; k < careful.length; k++) {
      const c = (careful[k] as Sighting).chance(state, brood)
      const h = (hurried[k] as Sighting).chance(state, hurriedBrood)
      withCare *= c
      inHurry *= h
      const held = sightings[k]
      if (held !== undefined) held.chance[i] = (1 - haste) * c + haste * h
    }
    chance[i] = withCare + inHurry
    hasty[i] = inHurry
  }
  return { sightings, chance, hasty }
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
  /** Of a look: the part of that chance in which it was made in haste. */
  hasty: Float64Array | null
  /** Of a look: what was in the box. */
  around: Around | null
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

/** Days followed between two pauses. */
const PAUSE_EVERY = 8

/**
 * Forward through the days from `first` on, whose nightfall is `start`. Pauses now and then, so that others get a turn.
 * `wayBack`: the links are kept; who asks only what is known by each day needs none.
 */
export function* walking(
  model: Model,
  start: Shares,
  days: readonly DayOfStory[],
  first = 0,
  wayBack = true,
): Generator<undefined, Walk> {
  let now = start
  const links: Link[] = []
  const byDay: Shares[] = []
  let logChance = 0
  for (let d = first; d < days.length; d++) {
    const day = days[d]
    if (day === undefined) continue
    const { t, around, overnight, atTheLook, steps } = day
    if (t > 0 && d > first) {
      const row = nightRows(model, overnight)
      const after = spread(now, row, model.leaveOut)
      if (wayBack) links.push({ ...NO_SIGHT, t, kind: 'night', row, before: now, after })
      now = after
    }
    for (const step of steps) {
      const before = now
      const look = step.kind === 'look' ? heldAgainst(before.states, step.entry, atTheLook, model) : null
      const chance =
        look?.chance ??
        (step.kind === 'act' ? chances(before.states, (s) => actChance(s, step)) : new Float64Array(0))
      const row = step.kind === 'act' ? (s: number): Row => actRow(s, step, around, model.rates) : null
      const seen = scaled(now, chance)
      logChance += Math.log(seen.total)
      const after = row === null ? seen.shares : spread(seen.shares, row)
      const { sightings, hasty } = look ?? NO_SIGHT
      const { kind, entry } = step
      if (wayBack)
        links.push({ t, kind, sightings, entry, row, chance, hasty, around: atTheLook, before, after })
      now = after
    }
    byDay[t] = now
    if (d % PAUSE_EVERY === PAUSE_EVERY - 1) yield
  }
  return { start, links, byDay, logChance }
}

const NO_SIGHT = { sightings: [], entry: null, row: null, chance: null, hasty: null, around: null }

/** Forward through the days from the removal on. */
export const walk = (model: Model, intake: Intake, days: readonly DayOfStory[]): Walk =>
  toTheEnd(walking(model, startShares(intake, model), days))

/** All stories on the removal day. */
export const startShares = (intake: Intake, model: Model): Shares =>
  sharesOf(startingStories(intake, model.rates))

/** One more night with that in the box. */
export const overnight = (model: Model, shares: Shares, around: Around): Shares =>
  spread(shares, nightRows(model, around), model.leaveOut)
