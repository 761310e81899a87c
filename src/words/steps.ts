/** Which steps an advice asks for; what they say is in the catalogue. */
import type { Action, Check, Plan } from '../recovery/index.ts'
import type { Act } from './acts.ts'

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
