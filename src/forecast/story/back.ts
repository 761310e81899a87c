/** The way back: what is seen later tells of earlier days too. */
import type { Inspection } from '../../journal/index.ts'
import type { Around } from './around.ts'
import { type Row, TALLY } from './night.ts'
import { STATES } from './state.ts'
import type { HeldSighting, Link, Shares, Walk } from './walk.ts'

export interface Hindsight {
  /** Shares at nightfall of each day, given everything known today. */
  byDay: Shares[]
  /** The same on the removal day, before anything was seen. */
  start: Shares
  /** Expected number of steps that decided each thing in {@link TALLY}. */
  tallies: number[]
  /** Every look with the shares of states then, given everything known today; only when counting. */
  looks: LookInHindsight[]
}

export interface LookInHindsight {
  states: Int16Array
  w: Float64Array
  sightings: readonly HeldSighting[]
  around: Around
  /** Chance that it was made in haste. */
  hasty: number
  /** What was said of its thoroughness. */
  said: Inspection['searched']
}

function ahead(row: Row, later: Float64Array): number {
  let sum = 0
  for (let k = 0; k < row.to.length; k++) sum += (row.p[k] ?? 0) * (later[row.to[k] ?? 0] ?? 0)
  return sum
}

const weighed = (shares: Shares, later: Float64Array): Shares => {
  const w = shares.w.map((x, i) => x * (later[shares.states[i] ?? 0] ?? 0))
  const total = w.reduce((a, b) => a + b, 0)
  return { states: shares.states, w: total > 0 ? w.map((x) => x / total) : w }
}

/**
 * How likely everything after the link is, for each state before it, written to `out`; scaled so that its greatest is 1.
 * `out` keeps old figures elsewhere: they are never read, since a link leads only to states that the next one starts from.
 */
function oneBack(link: Link, later: Float64Array, out: Float64Array): void {
  const { states } = link.before
  let most = 0
  for (let i = 0; i < states.length; i++) {
    const s = states[i] ?? 0
    const go = link.row === null ? (later[s] ?? 0) : ahead(link.row(s), later)
    const b = (link.chance === null ? 1 : (link.chance[i] ?? 0)) * go
    out[s] = b
    if (b > most) most = b
  }
  if (most > 0) for (const s of states) out[s] = (out[s] ?? 0) / most
}

function count(link: Link, later: Float64Array, tallies: number[]): void {
  const { row } = link
  if (row === null) return
  const found = new Array<number>(tallies.length).fill(0)
  let total = 0
  link.before.states.forEach((s, i) => {
    const w = (link.before.w[i] ?? 0) * (link.chance === null ? 1 : (link.chance[i] ?? 0))
    const r = row(s)
    for (let k = 0; k < r.to.length; k++) {
      const x = w * (r.p[k] ?? 0) * (later[r.to[k] ?? 0] ?? 0)
      total += x
      const what = r.tally[k] ?? TALLY.none
      if (what !== TALLY.none) found[what] = (found[what] ?? 0) + x
    }
  })
  if (total > 0)
    found.forEach((x, what) => {
      tallies[what] = (tallies[what] ?? 0) + x / total
    })
}

/** A look, in the light of what came later. */
function lookBack(link: Link, later: Float64Array): LookInHindsight | null {
  const { entry, chance, hasty, around } = link
  if (entry?.kind !== 'inspection' || chance === null || hasty === null || around === null) return null
  const { states } = link.before
  const w = link.before.w.map((x, i) => x * (chance[i] ?? 0) * (later[states[i] ?? 0] ?? 0))
  const total = w.reduce((a, b) => a + b, 0)
  if (!(total > 0)) return null
  let inHaste = 0
  link.before.w.forEach((x, i) => {
    inHaste += x * (hasty[i] ?? 0) * (later[states[i] ?? 0] ?? 0)
  })
  const said = entry.searched
  return {
    states,
    w: w.map((x) => x / total),
    sightings: link.sightings,
    around,
    hasty: inHaste / total,
    said,
  }
}

/** Everything known today, brought to bear on every day of the walk. `counting`: also the tallies, for learning. */
export function hindsight(walked: Walk, counting = false): Hindsight {
  const lastLook = walked.links.findLastIndex((l) => l.chance !== null)
  const byDay = [...walked.byDay]
  const tallies = new Array<number>(Object.keys(TALLY).length).fill(0)
  const looks: LookInHindsight[] = []
  const buffers = [new Float64Array(STATES), new Float64Array(STATES)]
  let later: Float64Array = new Float64Array(STATES).fill(1)
  for (let i = walked.links.length - 1; i >= 0; i--) {
    const link = walked.links[i]
    if (link === undefined) continue
    // After the last thing seen nothing looks back, so those days stand as they are.
    if (i > lastLook) continue
    // Nightfall of a day is after its last step.
    if (walked.links[i + 1]?.t !== link.t) byDay[link.t] = weighed(link.after, later)
    if (counting) {
      count(link, later, tallies)
      const look = link.kind === 'look' ? lookBack(link, later) : null
      if (look !== null) looks.push(look)
    }
    const out = buffers[i % 2] ?? new Float64Array(STATES)
    oneBack(link, later, out)
    later = out
  }
  const first = walked.links.findIndex((l) => l.t > 0)
  // Day 0 without any step of its own has no link: its nightfall is the start.
  if (lastLook >= 0 && first === 0) byDay[0] = weighed(walked.start, later)
  return { byDay, start: lastLook < 0 ? walked.start : weighed(walked.start, later), tallies, looks }
}
