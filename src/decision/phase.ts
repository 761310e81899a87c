/** One belief: a phase named by the facts is shown only while the belief gives it more than half. */
import type { Kind, KindShares } from '../forecast/index.ts'
import type { Action, Phase } from '../recovery/index.ts'

/** What of the belief bears a phase out. A closed colony, a cage in the box and "nobody knows" are no claims about a queen. */
const BORNE_OUT_BY: Record<Phase, readonly Kind[] | null> = {
  closed: null,
  'awaiting-release': null,
  'queen-unknown': null,
  'awaiting-eggs': ['laying', 'present', 'virgin'],
  rearing: ['raising', 'virgin'],
  'awaiting-new-queen': ['raising', 'virgin', 'laying'],
  laying: ['laying'],
  queenright: ['laying'],
  // Who raises a queen has none.
  queenless: ['chance', 'queenless', 'raising', 'laying-workers'],
  'laying-workers': ['laying-workers'],
}

/** Share of the belief that bears the phase out; 1 where it claims nothing. */
export function support(phase: Phase, odds: KindShares): number {
  const kinds = BORNE_OUT_BY[phase]
  return kinds === null ? 1 : kinds.reduce((sum, k) => sum + odds[k], 0)
}

/** Phases that the belief alone may name, when it contradicts the facts; proofs of a layer are not its to give. */
const NAMED_BY_BELIEF = ['rearing', 'queenless', 'laying-workers', 'awaiting-eggs'] as const

/** The phase, or what the belief holds likelier than not in its place, or that nobody knows. */
export function believable(phase: Phase, odds: KindShares): Phase {
  if (support(phase, odds) >= 0.5) return phase
  return NAMED_BY_BELIEF.find((p) => support(p, odds) >= 0.5) ?? 'queen-unknown'
}

/** A colony that goes without a queen costs its worth, a second look a few days: from one chance in thirty it is made. Judgement. */
const SURE_TO_GO = 0.97

/** Whether doing that goes against the belief: a queen that more likely than not lays, or is about to, is not given up or replaced; one that may have none does not go. */
export function against(action: Action, odds: KindShares): boolean {
  switch (action) {
    case 'buy-queen':
    case 'unite':
      return odds.laying + odds.present > 0.5
    case 'take-out-queen':
      return odds.laying > 0.5
    case 'move-out':
      return odds.laying < SURE_TO_GO
    default:
      return false
  }
}
