/** What things are worth in this yard and what is at hand, as a form: an empty field goes by the default. */
import { COST_NAMES, type Costs, type Supplies } from '../../decision/index.ts'
import { type FieldProblem, numberTyped, one, type Typed } from '../../forms/index.ts'
import type { Repository, SettingValue } from '../../store/index.ts'

interface Choices {
  costs: SettingValue<'costs'>
  supplies: SettingValue<'supplies'>
}

export const COST_LABELS: Record<keyof Costs, string> = {
  worth: 'A colony that moves out with a laying queen',
  queen: 'A mated queen',
  frame: 'A frame of brood from a donor',
  opening: 'Opening a box',
  day: 'A day in the yard',
  unitedFrame: 'A frame of bees united with another colony',
}

/** With the largest number taken. */
export const SUPPLY_FIELDS: Record<keyof Supplies, { label: string; most: number }> = {
  queensInHand: { label: 'Mated queens at hand', most: 500 },
  daysUntilQueens: { label: 'Days until an ordered queen comes', most: 60 },
  eggFrames: { label: 'Frames of eggs that donors can spare', most: 500 },
}
export const SUPPLY_NAMES = Object.keys(SUPPLY_FIELDS) as (keyof Supplies)[]

const MOST_MONEY = 100_000

/** The name of a field of this form; null for one of another. */
export function costLabel(field: string): string | null {
  const cost = COST_NAMES.find((name) => field === costField(name))
  if (cost !== undefined) return COST_LABELS[cost]
  const supply = SUPPLY_NAMES.find((name) => field === name)
  return supply === undefined ? null : SUPPLY_FIELDS[supply].label
}

export const costField = (name: keyof Costs): string => `cost.${name}`

export function typedCosts(settings: Repository['settings']): Typed {
  const [costs, supplies] = [settings.get('costs'), settings.get('supplies')]
  return {
    ...Object.fromEntries(COST_NAMES.map((name) => [costField(name), [String(costs[name] ?? '')]])),
    ...Object.fromEntries(SUPPLY_NAMES.map((name) => [name, [String(supplies[name] ?? '')]])),
  }
}

/** What was typed; what cannot be read is named. */
export function readCosts(typed: Typed): { choices: Choices; problems: FieldProblem[] } {
  const problems: FieldProblem[] = []
  const take = (field: string, most: number, whole: boolean): number | undefined => {
    const text = one(typed, field)
    if (text === '') return undefined
    const n = numberTyped(text)
    if (n !== null && n >= 0 && n <= most && (!whole || Number.isInteger(n))) return n
    const kind = whole ? 'whole number' : 'number'
    problems.push({ field, message: `must be a ${kind} from 0 to ${most}, not “${text.slice(0, 40)}”` })
    return undefined
  }
  const costs = Object.fromEntries(
    COST_NAMES.flatMap((name) => {
      const n = take(costField(name), MOST_MONEY, false)
      return n === undefined ? [] : [[name, n]]
    }),
  )
  const supplies = Object.fromEntries(
    SUPPLY_NAMES.flatMap((name) => {
      const n = take(name, SUPPLY_FIELDS[name].most, true)
      return n === undefined ? [] : [[name, n]]
    }),
  )
  return { choices: { costs, supplies }, problems }
}
