/** Colonies as lists show them: a row of the projection, found and put in order the same way on server and phone. */
import type { Plan } from '../recovery/index.ts'

export { natural, standOrder as walkingOrder } from '../journal/index.ts'

import type { ColonyRow } from './project.ts'
import type { ColonyFilter, ColonySummary } from './types.ts'

/** A colony's row without its plan: the plans of a thousand colonies are most of the bytes, and lists need few. */
export type ListRow = Omit<ColonyRow, 'plan'>

/** A row as people see it; `plan` is asked for when it is first looked at. */
export function summaryOf({ toDo, ...rest }: ListRow, planOf: () => Plan): ColonySummary {
  let plan: Plan | undefined
  return {
    ...rest,
    toDo: toDo === 1,
    get plan() {
      plan ??= planOf()
      return plan
    },
  }
}

/** Whether a list with that filter holds the colony. */
export function matches(c: ColonySummary, { open, yard, intakeFrom, text }: ColonyFilter): boolean {
  if (open !== undefined && (c.closedOn === null) !== open) return false
  if (intakeFrom !== undefined && c.intakeOn < intakeFrom) return false
  if (yard !== undefined && c.yard !== yard) return false
  const sought = text?.trim().toLowerCase() ?? ''
  if (sought === '') return true
  return [c.tag, c.yard, c.stand ?? '', c.removalType].some((t) => t.toLowerCase().includes(sought))
}
