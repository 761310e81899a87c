/**
 * A colony's state at nightfall, packed into one small whole number.
 *
 * Two stories that agree in these five things have the same future and look the same from today on, so they are counted
 * together. That makes the enumeration exact and small: every story is there, none is followed twice.
 */

/** What the colony has by way of a queen. */
export const Q = {
  /** Nobody: `age` = days without a queen and without open brood. */
  none: 0,
  /** A mated queen is free but has not laid here yet: `age` = days free. */
  settling: 1,
  /** A queen lays worker brood: `age` = days since her first egg. */
  laying: 2,
  /** A queen cell: `age` = days until she leaves it. */
  raising: 3,
  /** A virgin: `age` = days since she left her cell. From 29 she is too old to mate. */
  virgin: 4,
  /** Workers lay: `age` = days since they began. */
  workers: 5,
  /** A queen lays drones only: `age` = days since her first egg. */
  drones: 6,
} as const
export type Stage = (typeof Q)[keyof typeof Q]

/** Ages beyond these make no difference and are counted as these. */
export const LAST_AGE = [24, 11, 22, 18, 29, 22, 22] as const
/** `old` of this or more: no brood of a former layer is left. */
export const NO_OLD = 22
const AGES = 30
const OLDS = NO_OLD + 1
const STAGES = 7
/** One more than the greatest state number. */
export const STATES = STAGES * AGES * OLDS * 2

export interface State {
  stage: Stage
  age: number
  /** Days since the last egg of a former layer (the old queen, to begin with); NO_OLD: none of her brood is left. */
  old: number
  /** A queen sits in a cage in this box. */
  caged: boolean
}

/** The number of a state. */
export const pack = (stage: number, age: number, old: number, caged: boolean): number =>
  ((stage * AGES + Math.min(age, LAST_AGE[stage] ?? 0)) * OLDS + Math.min(old, NO_OLD)) * 2 + (caged ? 1 : 0)

/** The state of a number. Inverse of {@link pack}. */
function unpack(n: number): State {
  const caged = n % 2 === 1
  const rest = (n - (caged ? 1 : 0)) / 2
  const old = rest % OLDS
  const both = (rest - old) / OLDS
  const age = both % AGES
  return { stage: ((both - age) / AGES) as Stage, age, old, caged }
}

/** Every state, unpacked once. */
export const STATE: readonly State[] = Array.from({ length: STATES }, (_, n) => unpack(n))
