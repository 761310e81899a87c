/**
 * States for reckoning ahead: the stages and ages of the belief, with brood of former layers kept only where it decides
 * something (nobody there, and brood young enough to raise a queen or to hold laying workers back). About 140 states,
 * so that what a plan of many steps is worth in each of them can be worked out once for all colonies.
 */
import { type Around, LAST_AGE, NO_OLD, pack, Q, STATE, type State } from '../forecast/index.ts'

/** Open brood this old or younger holds laying workers back; it is the first of the states without a queen. */
const OPEN_UNTIL = 9

/** Where each stage's states begin. */
const BEGIN: number[] = []
/** The state of the belief that stands for each. */
const standsFor: State[] = []

const put = (stage: State['stage'], age: number, old: number): void => {
  standsFor.push({ stage, age, old, caged: false })
}
for (let y = 0; y <= OPEN_UNTIL; y++) put(Q.none, 0, y)
for (const stage of [Q.none, Q.settling, Q.laying, Q.raising, Q.virgin, Q.workers, Q.drones] as const) {
  BEGIN[stage] = standsFor.length
  for (let age = 0; age <= (LAST_AGE[stage] ?? 0); age++) put(stage, age, broodAge(stage, age))
}

/**
 * Days since the last egg of who laid before: a cell is begun on brood about two days old and left eleven days later; a virgin was
 * such a cell. Others forget it.
 */
function broodAge(stage: State['stage'], age: number): number {
  if (stage === Q.raising) return Math.max(2, Math.min(NO_OLD, 13 - age))
  return stage === Q.virgin ? Math.min(NO_OLD, 13 + age) : NO_OLD
}

export const COMPACT: readonly State[] = standsFor
export const COMPACT_STATES = standsFor.length

/** The compact state of one of the belief's, where a frame of young brood may lie in the box. */
export function compactOf(s: State, gift: number): number {
  if (s.stage === Q.none) {
    const young = gift >= 0 ? Math.min(s.old, gift) : s.old
    return young <= OPEN_UNTIL ? young : (BEGIN[Q.none] ?? 0) + s.age
  }
  return (BEGIN[s.stage] ?? 0) + Math.min(s.age, LAST_AGE[s.stage] ?? 0)
}

/** Compact state by the number of the belief's state, when no frame lies in the box. */
const PLAIN: Int16Array = Int16Array.from(STATE, (s) => compactOf(s, -1))

export const compactOfNumber = (n: number, around: Around): number => {
  const plain = PLAIN[n] ?? 0
  // Only an orphaned colony makes anything of a frame.
  return around.gift >= 0 && around.gift <= OPEN_UNTIL && plain < (BEGIN[Q.settling] ?? 0)
    ? compactOf(STATE[n] as State, around.gift)
    : plain
}

/** The compact state of a stage at an age. */
export const at = (stage: State['stage'], age: number): number =>
  compactOf(STATE[pack(stage, age, NO_OLD, false)] as State, -1)

/** Nobody, with a frame of eggs just given. */
export const FRESH_FRAME = 0
