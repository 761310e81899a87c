/** One night over the compact states, as a sparse table, for colonies of a certain strength at a certain time of the year. */
import { freed, type Model, NOTHING_AROUND, nightFrom, Q, STATE } from '../forecast/index.ts'
import { COMPACT, COMPACT_STATES, compactOf } from './compact.ts'

/** In season; cells begun now come too late to mate; out of it. */
export type Season = 'in' | 'closing' | 'out'

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

export function nightsOf(model: Model, strength: number, season: Season): Nights {
  const { dies } = STRENGTHS[strength] ?? STRENGTHS[2]
  return tableOf(
    COMPACT.map((s) => {
      // A queen that leaves her cell late in the year meets no drones; one that is out already may just make it.
      const tooLate = season === 'out' || (season === 'closing' && s.stage !== Q.virgin)
      const row = nightFrom(
        s,
        { ...NOTHING_AROUND, mates: season === 'in' ? 1 : season === 'closing' ? 0.5 : 0 },
        model.rates,
        model.tables,
      )
      const lives = 1 - dies * (s.stage === Q.laying ? LAYER_DIES : 1)
      const sums = new Map<number, number>()
      row.to.forEach((n, k) => {
        const next = STATE[n]
        if (next === undefined) return
        const born = s.stage === Q.raising && next.stage === Q.virgin
        const to = compactOf(born && tooLate ? { ...next, age: 29 } : next, -1)
        sums.set(to, (sums.get(to) ?? 0) + lives * (row.p[k] ?? 0))
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
