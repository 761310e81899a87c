/** What an opened box may show, boiled down to what decides: eggs, capped brood, cells. 27 outcomes. */
import {
  type Around,
  broodSeen,
  cappedChances,
  cellChances,
  eggsChances,
  type Model,
  type Rates,
  type State,
} from '../forecast/index.ts'

export const OUTCOMES = 27
/** An outcome is eggs * 9 + capped * 3 + cells. eggs: 0 none, 1 single, 2 several a cell. capped: 0 none, 1 worker, 2 raised drone caps. cells: 0 none, 1 a queen is in one, 2 she has left it, or it is torn down. */
export const eggsOf = (o: number): number => Math.floor(o / 9)
export const cappedOf = (o: number): number => Math.floor(o / 3) % 3
export const cellsOf = (o: number): number => o % 3

function addTo(out: Float64Array, w: number, s: State, a: Around, r: Rates, m: Model, fresh: boolean): void {
  const brood = broodSeen(s, a, r, fresh)
  const eggs = eggsChances(s, brood, r)
  const capped = cappedChances(brood, r)
  const c = cellChances(s, r, m.tables)
  const [none = 0, cups = 0, open = 0, sealed = 0, emerged = 0, torn = 0] = c
  const cells = [none + cups, open + sealed, emerged + torn]
  let o = 0
  for (let e = 0; e < 3; e++)
    for (let k = 0; k < 3; k++) {
      const both = w * (eggs[e] ?? 0) * (capped[k] ?? 0)
      for (let q = 0; q < 3; q++) {
        out[o] = (out[o] ?? 0) + both * (cells[q] ?? 0)
        o++
      }
    }
}

/** Chance of each outcome in a state, of a look made with ordinary care. `fresh`: only brood of whoever lays now is thought of. */
export function outcomesIn(s: State, around: Around, model: Model, fresh = false): Float64Array {
  const out = new Float64Array(OUTCOMES)
  const haste = model.rates.careless
  addTo(out, 1 - haste, s, around, model.rates, model, fresh)
  addTo(out, haste, s, around, model.hasty, model, fresh)
  // Words are mistaken now and then, so that nothing is ever impossible.
  const { misread } = model.rates
  for (let o = 0; o < OUTCOMES; o++) out[o] = (1 - misread) * (out[o] ?? 0) + misread / OUTCOMES
  return out
}
