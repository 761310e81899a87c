/** Acts that have steps (en/steps.ts, es/steps.ts), and which act an advice is. */
import type { Action, Check, Plan } from '../recovery/index.ts'

export const ACTS = [
  'first-brood-check',
  'outside-look',
  'caged-queen',
  'test-frame',
  'introduce',
  'unite',
  'boost',
  'feed',
  'mite-wash',
  'close-down',
  'close-up',
  'take-out-queen',
  'move-out',
] as const
export type Act = (typeof ACTS)[number]

export interface HowTo {
  title: string
  /** What to have in hand before the lid comes off. */
  bring: string
  steps: readonly [string, string, string, string, string]
}

/** Which act an action is; a look is named by its check. */
const BY_ACTION: Partial<Record<Action, Act>> = {
  'outside-look': 'outside-look',
  'release-queen': 'caged-queen',
  'give-egg-frame': 'test-frame',
  'buy-queen': 'introduce',
  unite: 'unite',
  boost: 'boost',
  feed: 'feed',
  wash: 'mite-wash',
  'call-inspector': 'close-up',
  'take-out-queen': 'take-out-queen',
  'move-out': 'move-out',
}

const BY_RULE: Partial<Record<Check['rule'], Act>> = {
  'outside-look': 'outside-look',
  'queen-release': 'caged-queen',
  'telling-visit': 'first-brood-check',
  'mite-wash': 'mite-wash',
}

/** The act that is advised, where it has steps; null for a look of another kind. `rule`: of the check that leads. */
export function actOf({ action, sign }: Plan['advice'], rule: Check['rule'] | undefined): Act | null {
  if (sign === 'robbing') return 'close-down'
  if (sign === 'deformed-wings') return 'mite-wash'
  const looks = action === 'open-and-look' && rule !== undefined ? BY_RULE[rule] : undefined
  return looks ?? BY_ACTION[action] ?? null
}
