/** What a sighting on day d proves: when its egg was laid, as days before d. Arithmetic on `STAGES`. */
import { QUEEN, WORKER } from './development.ts'

/** Both days included. */
export interface DaysBefore {
  first: number
  last: number
}

/** Worker brood: the egg was laid `first` to `last` days before the sighting. */
export const WORKER_EGG_LAID = {
  eggs: { first: WORKER.hatch, last: 0 },
  open: { first: WORKER.cap, last: WORKER.hatch },
  capped: { first: WORKER.emerge, last: WORKER.cap },
} as const satisfies Record<string, DaysBefore>

/** Queen cells: the egg was laid `first` to `last` days before the sighting. */
export const QUEEN_EGG_LAID = {
  open: { first: QUEEN.cap, last: QUEEN.hatch },
  capped: { first: QUEEN.emerge, last: QUEEN.cap },
} as const satisfies Record<string, DaysBefore>
