/** One night over the compact states, as a sparse table, for colonies of a certain strength at a certain time of the year. */
import {
  freed,
  type Model,
  NO_OLD,
  NOTHING_AROUND,
  nightFrom,
  Q,
  STATE,
  type State,
} from '../forecast/index.ts'
import { COMPACT, COMPACT_STATES, compactOf } from './compact.ts'

/** How readily queens mate, 0-1: a virgin that is out now, one that leaves a cell at hand, one of a cell begun now; and how fast the year closes. */
export interface Season {
  now: number
  soon: number
  begun: number
  /** Share of its worth that a colony loses a night, because it may not be shown before the cold that it can go. */
  shut: number
}

/** Where each state leads: entries `begin[s]` to `begin[s + 1]` of `to` and `p`. What is missing to 1 has died out. */
export interface Nights {
  begin: Int32Array
  to: Int16Array
  p: Float64Array
}

/**
 * Strength: frames of bees, with those soon to emerge. Upper ends of the classes, and the chance that a colony in which nobody
 * lays dies out or leaves, per night. Judgement: a queenless package is gone in two months; a handful of bees in three weeks.
 */
export const STRENGTHS = [
  { upTo: 0.8, dies: 0.04 },
  { upTo: 1.5, dies: 0.015 },
  { upTo: 2.5, dies: 0.006 },
  { upTo: 4, dies: 0.003 },
  { upTo: Number.POSITIVE_INFINITY, dies: 0.0015 },
] as const

export const strengthClass = (frames: number): number => STRENGTHS.findIndex((s) => frames <= s.upTo)

function tableOf(rows: readonly { to: number[]; p: number[] }[]): Nights {
  const begin = new Int32Array(rows.length + 1)
  rows.forEach((r, i) => {
    begin[i + 1] = (begin[i] ?? 0) + r.to.length
  })
  return {
    begin,
    to: Int16Array.from(rows.flatMap((r) => r.to)),
    p: Float64Array.from(rows.flatMap((r) => r.p)),
  }
}

/** A layer in a box that small is lost less often than an orphaned colony: her brood is coming. */
const LAYER_DIES = 0.25

/** Share of virgins that come to lay where they mate so readily. */
function layingIn(model: Model, mates: number): number {
  const { virginLays, virginDrones, virginLost } = model.tables
  let [left, lays] = [1, 0]
  for (let v = 1; v < TOO_OLD; v++) {
    const now = mates * (virginLays[v] ?? 0)
    lays += left * now
    left *= 1 - now - (virginDrones[v] ?? 0) - (virginLost[v] ?? 0)
  }
  return lays
}

/** Age of a virgin too old to mate. */
const TOO_OLD = 29

export function nightsOf(model: Model, strength: number, season: Season): Nights {
  const { dies } = STRENGTHS[strength] ?? STRENGTHS[2]
  const mates = Math.max(season.now, season.soon)
  const [most, soon, begun] = [mates, season.soon, season.begun].map((m) => layingIn(model, m))
  // Of virgins that leave their cells, and of cells that are begun, so many come in time.
  const born = (most ?? 0) > 0 ? (soon ?? 0) / (most ?? 1) : 1
  const inTime = (soon ?? 0) > 0 ? Math.min(1, (begun ?? 0) / (soon ?? 1)) : 0
  return tableOf(
    COMPACT.map((s) => {
      const row = nightFrom(s, { ...NOTHING_AROUND, mates }, model.rates, model.tables)
      const lives = (1 - dies * (s.stage === Q.laying ? LAYER_DIES : 1)) * (1 - season.shut)
      const sums = new Map<number, number>()
      const lead = (next: State, p: number): void => {
        const to = compactOf(next, -1)
        if (p > 0) sums.set(to, (sums.get(to) ?? 0) + lives * p)
      }
      row.to.forEach((n, k) => {
        const [next, p] = [STATE[n], row.p[k] ?? 0]
        if (next === undefined) return
        const emerges = s.stage === Q.raising && next.stage === Q.virgin
        const begins = s.stage === Q.none && next.stage === Q.raising
        const good = emerges ? born : begins ? inTime : 1
        lead(next, p * good)
        // Too late: an old virgin in the end, or nobody.
        if (good < 1)
          lead(
            emerges ? { ...next, age: TOO_OLD } : { ...next, stage: Q.none, age: 0, old: NO_OLD },
            p * (1 - good),
          )
      })
      return { to: [...sums.keys()], p: [...sums.values()] }
    }),
  )
}

/** A bought queen let out of her cage in each state: she is taken, or nothing changes. Cells and virgins are looked for first. */
export function introducing(model: Model): Nights {
  return tableOf(
    COMPACT.map((s) => {
      const row = freed(s, 'bought', model.rates)
      return { to: row.to.map((n) => compactOf(STATE[n] ?? s, -1)), p: row.p }
    }),
  )
}

/** What is worth `later` in each state after a step is worth before it. */
export function before(table: Nights, later: Float64Array, perStep: number, out: Float64Array): void {
  const { begin, to, p } = table
  for (let s = 0; s < COMPACT_STATES; s++) {
    let sum = 0
    for (let k = begin[s] ?? 0; k < (begin[s + 1] ?? 0); k++) sum += (p[k] ?? 0) * (later[to[k] ?? 0] ?? 0)
    out[s] = sum + perStep
  }
}
