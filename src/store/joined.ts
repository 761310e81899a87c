/** Which colonies were united into which: told by those that left, and shown by those that took them in. */

import { type Day, earlier } from '../days.ts'
import type { ColonyId, Tag } from '../ids.ts'
import type { ColonySummary, Repository } from './types.ts'

export interface Joined {
  /** Id of the colony that took it in. */
  into: string
  /** Id of the colony that was united, and its tag. */
  colony: ColonyId
  tag: Tag
  on: Day
  by: string
}

const FAR: Day = '9999-12-31'

/** Every uniting into one of these colonies during its stay, by day. Only what stands: one taken back is none. */
export function joinings(
  book: Pick<Repository, 'happenings' | 'colony'>,
  receivers: readonly ColonySummary[],
): Joined[] {
  const [first] = receivers
  if (first === undefined) return []
  const from = receivers.reduce((day, s) => earlier(day, s.intakeOn), first.intakeOn)
  // The brief of an entry says whom it names; only those that name one of these are read whole.
  const named = book
    .happenings(from, FAR, 'outcome')
    .filter((h) => h.into !== null && receivers.some((s) => isNamed(s, h.into ?? '')))
  return [...new Set(named.map((h) => h.colony))].flatMap((id) => {
    const found = book.colony(id)
    const outcome = found?.history.outcome ?? null
    if (found === null || outcome === null || outcome.what !== 'united') return []
    const { on, by, into = '' } = outcome
    const receiver = receivers.find(
      (s) => s.id !== id && isNamed(s, into) && s.intakeOn <= on && on <= (s.closedOn ?? FAR),
    )
    return receiver === undefined ? [] : [{ into: receiver.id, colony: id, tag: found.summary.tag, on, by }]
  })
}

/** By its id, or by its tag whatever the capitals. */
const isNamed = (s: ColonySummary, name: string): boolean =>
  name === s.id || name.toLowerCase() === s.tag.toLowerCase()
