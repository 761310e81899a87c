/** Changes a colony's move-out record from what it is now. */

import type { FieldProblem } from '../../forms/index.ts'
import type { ColonyId } from '../../ids.ts'
import type { MoveRecord } from '../../records/index.ts'
import type { Store } from '../../store/index.ts'

/** What the schema would not have; empty when it is saved. It is read and saved in one breath, so nobody comes between. */
export function changeRecord(
  { after: { records } }: Pick<Store, 'after'>,
  id: ColonyId,
  change: (record: MoveRecord) => MoveRecord,
  stamp: { savedAt: string; savedBy: string },
): FieldProblem[] {
  const [last] = records.of(id)
  const saved = records.save(id, last?.version ?? 0, change(last?.record ?? {}), stamp)
  if (saved.ok) return []
  if ('problems' in saved) return saved.problems
  throw new Error(`the record of ${id} changed between reading and saving`)
}
