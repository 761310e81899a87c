/** One item of what to check before the cut. */
import type { TradeHazard } from '../../records/index.ts'
import type { Part } from './stage.ts'

/** Items somebody ticks when they are so; the others follow from the rest of the sheet. */
export const TICKED = [
  'free',
  'not-alone',
  'ladder-person',
  'sting-plan',
  'allergy',
  'children',
  'exclusion',
  'fierce',
  'water',
  'droppings',
  'insulation',
  'stopcock',
  'kit',
] as const
export type TickedId = (typeof TICKED)[number]

export const ITEMS = [
  'trade-electric',
  'trade-electric-in-cut',
  'trade-gas',
  'trade-asbestos',
  'trade-flue',
  'trade-lead-paint',
  'trade-weak-structure',
  'trade-near-wires',
  'services',
  'old-building',
  'heat',
  'vacuum',
  'cut-depth',
  'bystanders',
  'temper',
  'wires',
  'other-sheet',
  'notes',
  ...TICKED,
  'sprayed',
  'caller',
  'agreement',
  'without-go',
] as const satisfies readonly (TickedId | `trade-${TradeHazard}` | string)[]
export type ItemId = (typeof ITEMS)[number]

/**
 * What it takes to go while an item is unmet. `trade`: nothing; it waits for whoever is licensed, or for a look. `second`:
 * the name of a second person for this item. `reason`: a reason from whoever decides.
 */
type Weight = 'trade' | 'second' | 'reason'

/** `signed`: unmet, and a second person answers for it by name. */
type State = 'met' | 'unmet' | 'unsaid' | 'not-needed' | 'signed'

export interface Facts {
  state: State
  /** What is missing, or why it is asked. */
  why: string
  /** It was answered for another place, or for hours that are over: said, and not only counted. */
  moved?: true
  /** What lacks is asked elsewhere than the item is. */
  at?: { part: Part; field: string }
  /** Whose paper meets it, written down right there. */
  paper?: TradeHazard
}

/** Not asked at this job, and said nowhere. */
export const NOT_NEEDED: Facts = { state: 'not-needed', why: '' }

/** Its name says all of it. */
export const MET: Facts = { state: 'met', why: '' }

export interface Item extends Facts {
  id: ItemId
  what: string
  /** Who decides about it. */
  decides: string
  weight: Weight
}
