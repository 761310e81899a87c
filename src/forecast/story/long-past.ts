/**
 * The far past of a colony that has stayed long, in coarse steps: seven stages without their ages, one typical state for
 * each. What lay months back tells next to nothing of today once the box has been looked at since, so following every story
 * through it would cost much and change nothing: see the test that holds odds with and without it against each other.
 */
import type { Rates } from '../rates.ts'
import { pack, Q, STATE, STATES } from './state.ts'
import type { DayOfStory } from './steps.ts'
import { actChance, heldAgainst, type Model, type Shares } from './walk.ts'

/** Nights followed one by one before today, for a colony older than {@link LONG}. */
const FOLLOWED = 75
const LONG = 110
/** A start is not put where a frame or a cage was given less than so many days before; as far back as this. */
const SETTLED = 12
const BACK_AT_MOST = 40

/** The day from which every night is followed: 0 unless the colony has been here long. */
export function followedFrom(days: readonly DayOfStory[], t: number): number {
  if (t <= LONG) return 0
  const acts = (d: number): boolean => {
    const day = days[d]
    if (day === undefined) return false
    const { around, steps } = day
    const young = around.gift >= 0 && around.gift <= SETTLED
    return (
      young || steps.some((s) => s.kind === 'act') || (around.cage !== null && around.cagedFor <= SETTLED)
    )
  }
  for (let back = 0; back <= BACK_AT_MOST; back++) if (!acts(t - FOLLOWED - back)) return t - FOLLOWED - back
  return t - FOLLOWED
}

/** A typical state of each stage, in the order of {@link Q}: ages in the middle of theirs, no brood of a former layer left. */
const TYPICAL = Int16Array.from([
  pack(Q.none, 15, 22, false),
  pack(Q.settling, 3, 22, false),
  pack(Q.laying, 22, 22, false),
  pack(Q.raising, 6, 8, false),
  pack(Q.virgin, 8, 17, false),
  pack(Q.workers, 15, 22, false),
  pack(Q.drones, 15, 22, false),
])

/** Days in a stage on average: a cell, and a virgin till her first egg or her end. */
const CELL_DAYS = 11
const VIRGIN_DAYS = 12

/** Share of colonies with young brood that begin a cell within six days. */
const begins = (r: Rates): number => 1 - (1 - r.cellStartPerDay) ** 6

function coarseNight(
  w: Float64Array<ArrayBuffer>,
  day: DayOfStory,
  r: Rates,
  workersBegin: number,
  settles: number,
): Float64Array<ArrayBuffer> {
  const next = new Float64Array(w)
  const move = (from: number, to: number, p: number): void => {
    const m = (w[from] ?? 0) * p
    next[to] = (next[to] ?? 0) + m
    next[from] = (next[from] ?? 0) - m
  }
  move(Q.none, Q.workers, workersBegin)
  move(Q.none, Q.settling, r.strayArrives)
  if (day.overnight.gift === 1)
    move(Q.none, Q.raising, begins(r) * day.overnight.giftWorth * (1 - workersBegin))
  move(Q.settling, Q.none, r.settlingDies)
  move(Q.settling, Q.laying, settles)
  move(Q.laying, Q.raising, r.layerFails * begins(r))
  move(Q.laying, Q.none, r.layerFails * (1 - begins(r)) * (1 - r.layerTurnsDrones))
  move(Q.laying, Q.drones, r.layerFails * (1 - begins(r)) * r.layerTurnsDrones)
  move(Q.raising, Q.none, (1 - r.cellEmerges) / CELL_DAYS)
  move(Q.raising, Q.virgin, r.cellEmerges / CELL_DAYS)
  const lays = day.overnight.mates * r.virginLays
  move(Q.virgin, Q.laying, lays / VIRGIN_DAYS)
  move(Q.virgin, Q.drones, r.virginDroneLayer / VIRGIN_DAYS)
  move(Q.virgin, Q.none, (1 - lays - r.virginDroneLayer) / VIRGIN_DAYS / 2)
  move(Q.drones, Q.none, r.droneLayerGoes)
  return next
}

function coarseSteps(w: Float64Array<ArrayBuffer>, day: DayOfStory, model: Model): Float64Array<ArrayBuffer> {
  const { rates } = model
  let now = w
  for (const step of day.steps) {
    const chance =
      step.kind === 'look'
        ? heldAgainst(TYPICAL, step.entry, day.atTheLook, model).chance
        : Float64Array.from(TYPICAL, (s) => actChance(s, step))
    // A typical state stands for many: no single look may rule its stage out.
    const seen = now.map((x, i) => x * Math.max(chance[i] ?? 0, 1e-4))
    const total = seen.reduce((a, b) => a + b, 0)
    now = seen.map((x) => x / total)
    if (step.kind === 'look') continue
    const to =
      step.act === 'cell' ? Q.raising : step.act === 'cage' || step.act === 'free' ? Q.settling : null
    if (to === null) continue
    const took = (now[Q.none] ?? 0) * (to === Q.raising ? rates.givenCellTakes : rates.boughtTakes)
    now = now.map((x, i) => (i === Q.none ? x - took : i === to ? x + took : x))
  }
  return now
}

/** Shares of a stage's states by day without looking: what a coarse share is spread over where the nights begin. */
function spreadOut(w: Float64Array): Shares {
  const full = new Float64Array(STATES)
  const put = (stage: number, from: number, to: number, old: (age: number) => number): void => {
    for (let age = from; age <= to; age++) {
      const s = pack(stage, age, old(age), false)
      full[s] = (full[s] ?? 0) + (w[stage] ?? 0) / (to - from + 1)
    }
  }
  put(Q.none, 0, 24, (age) => Math.min(22, 10 + age))
  put(Q.settling, 0, 6, () => 22)
  put(Q.laying, 0, 22, () => 22)
  put(Q.raising, 1, 12, (age) => 14 - age)
  put(Q.virgin, 0, 29, (age) => Math.min(22, 13 + age))
  put(Q.workers, 0, 22, () => 22)
  put(Q.drones, 0, 22, () => 22)
  const states = Int16Array.from(STATE.keys()).filter((s) => (full[s] ?? 0) > 0)
  return { states, w: Float64Array.from(states, (s) => full[s] ?? 0) }
}

/** Days followed coarsely before the first that is followed night by night, where only today is asked for. */
const COARSE = 180

/**
 * Coarse shares at nightfall of every day before `first`, and the shares from which the nights are followed. Unless
 * `whole`, days farther back than {@link COARSE} are not looked at: all of them carry the shares of the start.
 */
export function longPast(
  start: Shares,
  days: readonly DayOfStory[],
  first: number,
  model: Model,
  whole = false,
): { byDay: Shares[]; start: Shares } {
  let w = new Float64Array(TYPICAL.length)
  start.states.forEach((s, i) => {
    const state = STATE[s]
    if (state === undefined) return
    const stage = state.caged ? Q.settling : state.stage
    w[stage] = (w[stage] ?? 0) + (start.w[i] ?? 0)
  })
  const begun = model.tables.workersBegin.at(-1) ?? 0
  const settles = model.tables.settles[3] ?? 0
  const from = whole ? 0 : Math.max(0, first - COARSE)
  const unread: Shares = { states: TYPICAL, w }
  const byDay: Shares[] = new Array<Shares>(from).fill(unread)
  for (let t = from; t < first; t++) {
    const day = days[t]
    if (day === undefined) continue
    if (t > 0) w = coarseNight(w, day, model.rates, begun, settles)
    if (day.steps.length > 0) w = coarseSteps(w, day, model)
    byDay.push({ states: TYPICAL, w })
  }
  return { byDay, start: spreadOut(w) }
}
