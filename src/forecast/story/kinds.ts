/** What a keeper distinguishes: seven kinds of state, in the order in which charts stack them. */
import { OLDEST_FOR_QUEEN } from '../../biology/index.ts'
import type { Around } from './around.ts'
import { Q, type State } from './state.ts'

export const KINDS = [
  'laying',
  'present',
  'raising',
  'virgin',
  'chance',
  'queenless',
  'laying-workers',
] as const
export type Kind = (typeof KINDS)[number]

/** Place of the state's kind in {@link KINDS}. A queen in a cage counts as present while nothing else goes on. */
export function kindOf(state: State, around: Around): number {
  switch (state.stage) {
    case Q.laying:
      return 0
    case Q.settling:
      return 1
    case Q.raising:
      return 2
    case Q.virgin:
      return 3
    case Q.workers:
    case Q.drones:
      return 6
    default:
      if (state.caged) return around.cage === 'virgin' ? 3 : 1
      return state.old <= OLDEST_FOR_QUEEN || (around.gift >= 0 && around.gift <= OLDEST_FOR_QUEEN) ? 4 : 5
  }
}
