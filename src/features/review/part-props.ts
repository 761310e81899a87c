/** What every part of the review is given. */

import type { Frame } from '../../parts/index.ts'
import type { CallBackCount } from '../removal/index.ts'
import type { ChartData } from './chart-data.ts'
import type { Choice } from './choice.ts'
import { addressOf } from './choice-form.ts'
import type { Cohort } from './cohort.ts'
import type { Rates } from './job-money.ts'
import type { Group, ReviewView } from './view.ts'
import { groupName, type Naming } from './words.ts'

export interface ReviewProps {
  frame: Frame
  look: ReviewView
  charts: ChartData
  naming: Naming
  /** The names that can be chosen, of all colonies there are. */
  names: Record<Cohort, string[]>
  /** Colonies there are in all. */
  total: number
  /** Colonies that count as still here and are long gone, more likely than not. */
  unseen: number
  /** Jobs that called the yard back, by kind. */
  callBacks: CallBackCount[]
  /** What a visit, a day and a frame cost the yard. */
  rates: Rates
  /** Sign of the yard's currency. */
  currency: string
  /** What in the address was not understood. */
  problems: string[]
}

/** A group's name as it is shown. */
export const nameIn = (p: Pick<ReviewProps, 'look' | 'naming'>, g: Pick<Group, 'name'>): string =>
  g.name === '' ? 'all' : groupName(p.look.choice.by, g.name, p.naming)

/** Where one of the review's pages or files is, for the same choice. */
export const pathIn = (
  p: Pick<ReviewProps, 'look' | 'frame'>,
  path: string,
  more: Partial<Choice> = {},
): string => `/review${path}${addressOf({ ...p.look.choice, ...more }, p.frame.today)}`
