/** What to load before a round: by what the plans ask on its day, and what was seen at the boxes. */

import type { Day } from '../../days.ts'
import type { History, StandingEntry } from '../../journal/index.ts'
import type { Plan, Rule } from '../../recovery/index.ts'
import { ITEMS, type Item } from '../../words/index.ts'
import { asks } from './box.ts'
import { answerable } from './urgency.ts'

export interface Load {
  item: Item
  /** Tags of the boxes it is for; of frames and queens, one each. */
  tags: string[]
}

interface Asked {
  tag: string
  plan: Plan
  history: History
}

/** What these boxes need on the day of their plans. Only boxes that ask something on that day count. */
export function loadFor(boxes: readonly Asked[]): Load[] {
  const asked = boxes.filter((b) => asks(b.plan))
  return ITEMS.flatMap((item) => {
    const tags = asked.filter((b) => NEEDS[item](b)).map((b) => b.tag)
    return tags.length === 0 ? [] : [{ item, tags }]
  })
}

const opensIt = (plan: Plan): boolean => plan.advice.action !== 'outside-look'
const asksFor = (plan: Plan, rule: Rule): boolean =>
  opensIt(plan) && answerable(plan).some((c) => c.rule === rule)

const NEEDS: Record<Item, (box: Asked) => boolean> = {
  'egg-frame': ({ plan }) => plan.advice.action === 'give-egg-frame',
  'mated-queen': ({ plan }) => plan.advice.action === 'buy-queen',
  'unite-or-boost': ({ plan }) => plan.advice.action === 'unite',
  syrup: ({ history }) => isShort(history),
  'cage-tools': ({ plan }) => plan.advice.action === 'release-queen',
  'mite-wash': ({ plan }) => asksFor(plan, 'mite-wash'),
  'band-cutter': ({ plan }) => asksFor(plan, 'comb-ties'),
  moving: ({ plan }) => plan.advice.action === 'move-out',
}

/** Low on stores when last looked at, and not fed since. */
function isShort(history: History): boolean {
  const since = lastDay(history, (e) => e.kind === 'inspection' && e.stores !== undefined)
  if (since === null || since.kind !== 'inspection' || since.stores !== 'low') return false
  const fed = lastDay(history, (e) => e.kind === 'given' && e.what === 'syrup')
  return fed === null || fed.on < since.on
}

const lastDay = (history: History, is: (e: StandingEntry) => boolean): (StandingEntry & { on: Day }) | null =>
  history.entries.findLast(is) ?? null
