/** What is asked of an order, as typed in the address of the Supplies page. */
import { DEFAULT_ORDER, type OrderOptions } from '../../forecast/index.ts'
import type { FieldProblem, Typed } from '../../forms/index.ts'

interface NumberField {
  name: keyof OrderOptions
  label: string
  /** Largest number taken; days whole, money with cents. */
  most: number
  whole: boolean
}

export const ORDER_FIELDS: readonly NumberField[] = [
  { name: 'leadDays', label: 'Days until queens arrive', most: 14, whole: true },
  { name: 'coverDays', label: 'Days they must last', most: 14, whole: true },
  { name: 'inHand', label: 'Queens on hand or on the way', most: 500, whole: true },
  { name: 'costOver', label: 'Cost of a queen too many', most: 100_000, whole: false },
  { name: 'costShort', label: 'Cost of a queen too few', most: 100_000, whole: false },
]

/** Chances of running short that can be chosen. */
export const CHANCES = [0.25, 0.2, 0.1, 0.05, 0.02, 0.01] as const

const labelled = new Map(ORDER_FIELDS.map((f) => [f.name as string, f.label]))
export const orderLabel = (field: string): string => labelled.get(field) ?? 'Chance of running short'

/** The options asked for; what cannot be read keeps its default and is named. */
export function orderIn(query: URLSearchParams): {
  options: OrderOptions
  typed: Typed
  problems: FieldProblem[]
} {
  const options = { ...DEFAULT_ORDER }
  const problems: FieldProblem[] = []
  const typed: Record<string, string[]> = {}
  for (const { name, most, whole } of ORDER_FIELDS) {
    const text = (query.get(name) ?? '').trim().replace(',', '.')
    typed[name] = [text === '' ? String(DEFAULT_ORDER[name]) : text]
    if (text === '') continue
    const n = Number(text)
    if (!Number.isFinite(n) || n < 0 || n > most || (whole && !Number.isInteger(n)))
      problems.push({
        field: name,
        message: `must be a ${whole ? 'whole number' : 'number'} from 0 to ${most}, not "${text}"`,
      })
    else options[name] = n
  }
  const short = query.get('chanceShort')
  const chosen = CHANCES.find((p) => String(p) === short)
  if (chosen !== undefined) options.chanceShort = chosen
  else if (short !== null && short !== '')
    problems.push({ field: 'chanceShort', message: `must be one of ${CHANCES.join(', ')}, not "${short}"` })
  typed.chanceShort = [String(options.chanceShort)]
  return { options, typed, problems }
}
