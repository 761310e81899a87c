/** A closing of many colonies taken back: its outcomes withdrawn, where they still stand as it made them. */

import type { Day } from '../../days.ts'
import type { Entry } from '../../journal/index.ts'
import { madeBy, takenBackBy } from './batch.ts'
import type { ColonyHistory } from './names.ts'

export function withdrawn(
  colonies: Iterable<ColonyHistory>,
  { id }: { id: string },
  { by, on }: { by: string; on: Day },
): Entry[] {
  const made: Entry[] = []
  for (const { id: colony, history } of colonies)
    if (history.outcome?.id === madeBy(id)(colony))
      made.push({
        id: takenBackBy(id)(colony),
        kind: 'withdrawal',
        colony,
        on,
        by,
        replaces: history.outcome.id,
        reason: 'Closed with many others, and taken back',
      })
  return made
}
