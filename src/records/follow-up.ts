/** After they left: when the new keeper is asked how a colony fares. */

import { type Day, daysBetween } from '../days.ts'
import type { FollowUp } from './move-out-record.ts'

/** A colony that moved out, and what was told of it since. `by` does not matter here. */
export interface MovedOut {
  movedOutOn: Day
  followUps: readonly Omit<FollowUp, 'by'>[]
}

/** When the new keeper is asked, in days after moving out: once, when a season has passed. Nobody is asked a second time. */
const ASK_FROM = 90
const ASK_UNTIL = 120

/** Whether a follow-up is asked for on a day. `asked`: it was before. */
export function asksForFollowUp({ movedOutOn, followUps }: MovedOut, asked: boolean, today: Day): boolean {
  const day = daysBetween(movedOutOn, today)
  return !asked && day >= ASK_FROM && day <= ASK_UNTIL && !followUps.some((f) => f.on > movedOutOn)
}
