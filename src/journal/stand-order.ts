/** The order in which one walks: by yard, then stand, then tag, numbers read as numbers. */

export interface StandPlace {
  id: string
  tag: string
  yard: string
  /** Null: nowhere in particular. */
  stand: string | null
}

/** As people walk and read: 'stand 2' before 'stand 10'. */
const collator = new Intl.Collator('en', { numeric: true, sensitivity: 'base' })

/** Most comparisons are of the same yard, and the collator is slow even for those. */
export const natural = (a: string, b: string): number => (a === b ? 0 : collator.compare(a, b))

/** Compares by yard, stand and tag; what stands nowhere in particular comes last. */
export function standOrder(a: StandPlace, b: StandPlace): number {
  const yard = natural(a.yard, b.yard)
  if (yard !== 0) return yard
  if ((a.stand === null) !== (b.stand === null)) return a.stand === null ? 1 : -1
  const stand = natural(a.stand ?? '', b.stand ?? '')
  if (stand !== 0) return stand
  return natural(a.tag, b.tag) || (a.id < b.id ? -1 : 1)
}
