/** Colonies as lists show them: a row of the projection, found and put in order the same way on server and phone. */
import type { Plan } from '../recovery/plan-types.ts'
import type { ColonyRow } from './project.ts'
import type { ColonyFilter, ColonySummary } from './types.ts'

/** A colony's row without its plan: the plans of a thousand colonies are most of the bytes, and lists need few. */
export type ListRow = Omit<ColonyRow, 'plan'>

/** As people walk and read: 'stand 2' before 'stand 10'. */
const collator = new Intl.Collator('en', { numeric: true, sensitivity: 'base' })
/** Most comparisons are of the same yard; the collator is slow even for those. */
export const natural = (a: string, b: string): number => (a === b ? 0 : collator.compare(a, b))

/** By yard, stand and tag; what stands nowhere in particular last. */
export function walkingOrder(a: ColonySummary, b: ColonySummary): number {
  const yard = natural(a.yard, b.yard)
  if (yard !== 0) return yard
  if ((a.stand === null) !== (b.stand === null)) return a.stand === null ? 1 : -1
  const stand = natural(a.stand ?? '', b.stand ?? '')
  if (stand !== 0) return stand
  return natural(a.tag, b.tag) || (a.id < b.id ? -1 : 1)
}

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
export function matches(c: ColonySummary, { open, yard, text }: ColonyFilter): boolean {
  if (open !== undefined && (c.closedOn === null) !== open) return false
  if (yard !== undefined && c.yard !== yard) return false
  const sought = text?.trim().toLowerCase() ?? ''
  if (sought === '') return true
  return [c.tag, c.yard, c.stand ?? '', c.removalType].some((t) => t.toLowerCase().includes(sought))
}
