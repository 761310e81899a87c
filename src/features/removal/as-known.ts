/** What a phone without signal knows of a job is of the day on which it last heard of it: yesterday's is no ground for a “go”. */

import { dayIn } from '../../days.ts'
import type { Problem } from '../../journal/index.ts'
import type { Frame } from '../../parts/index.ts'
import { instantWords } from '../../words/index.ts'
import { sharesName } from './same-name.ts'

/** 'Thu 11 Jun, 08:00' where this phone made the page itself and has heard nothing today; null anywhere else. */
export function heardBefore({ phone, zone, today }: Frame): string | null {
  const at = phone?.fetchedAt
  if (at === undefined || at === null) return null
  const then = new Date(at)
  return dayIn(zone, then) === today ? null : instantWords(then.toISOString(), zone, today)
}

/** “Bram, 09:40”: an hour, and one of those who could have read it; where nobody else has an account, anybody. */
const readAloud = (reason: string, others: readonly string[]): boolean =>
  /\b\d{1,2}[:.h]\d\d\b/.test(reason) &&
  (others.length === 0 ? /\p{L}{2}/u.test(reason) : others.some((name) => sharesName(name, reason)))

/** Why no “go” is taken here. Somebody who has a signal may read the list aloud: that is written down. `others`: who has an account. */
export function notHeard(frame: Frame, reason: string | undefined, others: readonly string[]): Problem[] {
  const heard = heardBefore(frame)
  return heard === null || readAloud(reason ?? '', others)
    ? []
    : [
        {
          field: 'reason',
          message: `is needed: this phone last heard of the job ${heard}. Go where there is a signal and open this page; or call somebody who has one, have the list read to you, and write who read it and when, as in “${others[0] ?? 'Bram'}, 09:40”`,
        },
      ]
}
