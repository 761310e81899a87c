/** The protocol as a form: an empty field is the default; what equals the default is no choice of the yard's. */

import { type FieldProblem, numberTyped, one, type Typed } from '../../forms/index.ts'
import { problemsOf } from '../../journal/index.ts'
import {
  DEFAULT_PROTOCOL,
  MONTHS,
  type Month,
  type ProtocolOverrides,
  protocolOverrides,
  protocolWith,
  RULES,
  type Rule,
  type Window,
} from '../../recovery/index.ts'
import { MONTH_NAMES, plain, type Quantity, RULE_WORDS, type Units, unitOf } from '../../words/index.ts'
import { NUMBERS, type NumberSetting, SETTING_WORDS } from './words.ts'

export type WindowKey = Rule | 'salvagedQueenRelease'
export const WINDOW_KEYS: readonly WindowKey[] = RULES.flatMap((rule): WindowKey[] =>
  rule === 'queen-release' ? ['salvagedQueenRelease', rule] : [rule],
)
export const WINDOW_PARTS = ['opens', 'due', 'closes'] as const

export const QUANTITY: Partial<Record<NumberSetting, Quantity>> = {
  heatLimitC: 'temperature',
  cutMarginMm: 'length',
}

export const windowField = (key: WindowKey, part: (typeof WINDOW_PARTS)[number]): string => `w.${key}.${part}`
export const MATING_FIELD = 'matingMonths'
export const monthField = (month: Month): string => `month.${month}`

export const windowName = (key: WindowKey): string =>
  key === 'salvagedQueenRelease' ? 'Look to her own queen’s cage' : RULE_WORDS[key].name

/** The default window, which for the mite wash follows the hold. */
export const defaultWindow = (key: WindowKey, holdDays?: number): Window =>
  key === 'salvagedQueenRelease'
    ? DEFAULT_PROTOCOL.salvagedQueenRelease
    : protocolWith(holdDays === undefined ? {} : { holdDays }).windows[key]

export interface ProtocolDraft {
  overrides: ProtocolOverrides
  problems: FieldProblem[]
}

/** Reads the whole form. */
export function protocolTyped(typed: Typed, units: Units): ProtocolDraft {
  const problems: FieldProblem[] = []
  const raw: Record<string, unknown> = {}
  const take = (field: string, quantity?: Quantity): number | undefined => {
    const text = one(typed, field)
    if (text === '') return undefined
    const n = numberTyped(text)
    if (n === null) problems.push({ field, message: `must be a number, not “${text.slice(0, 40)}”` })
    return n === null ? undefined : quantity === undefined ? n : unitOf(units, quantity).store(n)
  }
  for (const key of NUMBERS) {
    const n = take(key, QUANTITY[key])
    // Shown and typed back in other units, a default must still count as the default.
    if (n !== undefined && Math.abs(n - DEFAULT_PROTOCOL[key]) > 0.05) raw[key] = n
  }
  const months = Object.fromEntries(
    MONTHS.flatMap((m) => [[m, take(monthField(m))]]).filter(([, n]) => n !== undefined),
  )
  if (Object.keys(months).length > 0) raw.miteThresholdByMonth = months
  const mating = typed[MATING_FIELD] ?? []
  // Every month is no choice: it rules nothing out.
  if (mating.length > 0 && mating.length < MONTHS.length) raw.matingMonths = mating
  const windows: Partial<Record<Rule, Window>> = {}
  for (const key of WINDOW_KEYS) {
    const made = windowTyped(key, typeof raw.holdDays === 'number' ? raw.holdDays : undefined, take)
    if (made === null) continue
    if (key === 'salvagedQueenRelease') raw.salvagedQueenRelease = made
    else windows[key] = made
  }
  if (Object.keys(windows).length > 0) raw.windows = windows
  const parsed = protocolOverrides.safeParse(raw)
  if (!parsed.success)
    problems.push(
      ...problemsOf(parsed.error, raw).map((p) => ({ field: fieldOf(p.field), message: inWords(p.message) })),
    )
  return { overrides: parsed.success ? parsed.data : {}, problems: unique(problems) }
}

/** A window of the yard's own, or null where every part is the default. */
function windowTyped(
  key: WindowKey,
  holdDays: number | undefined,
  take: (field: string) => number | undefined,
): Window | null {
  const usual = defaultWindow(key, holdDays)
  const own = {
    opens: take(windowField(key, 'opens')) ?? usual.opens,
    due: take(windowField(key, 'due')) ?? usual.due,
    closes: take(windowField(key, 'closes')) ?? usual.closes,
  }
  return WINDOW_PARTS.every((part) => own[part] === usual[part]) ? null : own
}

const inWords = (message: string): string =>
  message.startsWith('must have opens')
    ? `must be in order: it opens, then it is due, then comes its last day (now ${[...message.matchAll(/:(\d+)/g)].map((m) => m[1]).join(', ')})`
    : message.replace(/^must be an int,/, 'must be a whole number,')

/** The form's field for a path in the overrides. */
function fieldOf(path: string): string {
  const window = path.match(/^(?:windows\.)?([a-zA-Z-]+)(?:\.(opens|due|closes))?$/)
  const key = window?.[1]
  if (path.startsWith('windows.') || path.startsWith('salvagedQueenRelease'))
    return windowField(key as WindowKey, (window?.[2] as 'opens' | undefined) ?? 'opens')
  const month = path.match(/^miteThresholdByMonth\.(\d+)$/)
  if (path.startsWith(MATING_FIELD)) return MATING_FIELD
  return month === null ? path : monthField(month[1] as Month)
}

function unique(problems: FieldProblem[]): FieldProblem[] {
  const seen = new Set<string>()
  return problems.filter((p) => !seen.has(p.field) && seen.add(p.field))
}

/** The yard's own values as typed; defaults stay empty. */
export function typedProtocol(o: ProtocolOverrides, units: Units): Typed {
  const typed: Typed = {}
  for (const key of NUMBERS) {
    const value = o[key]
    if (value !== undefined) typed[key] = [shown(key, value, units)]
  }
  for (const m of MONTHS) {
    const value = o.miteThresholdByMonth?.[m]
    if (value !== undefined) typed[monthField(m)] = [plain(value)]
  }
  if (o.matingMonths !== undefined) typed[MATING_FIELD] = [...o.matingMonths]
  for (const key of WINDOW_KEYS) {
    const window = key === 'salvagedQueenRelease' ? o.salvagedQueenRelease : o.windows?.[key]
    if (window !== undefined)
      for (const part of WINDOW_PARTS) typed[windowField(key, part)] = [String(window[part])]
  }
  return typed
}

/** A value as one types it. */
function shown(key: NumberSetting, value: number, units: Units): string {
  const quantity = QUANTITY[key]
  if (quantity === undefined) return plain(value)
  return plain(unitOf(units, quantity).show(value), quantity === 'length' ? 4 : 1)
}

export function protocolLabel(field: string): string {
  const window = field.match(/^w\.([a-zA-Z-]+)\.(opens|due|closes)$/)
  if (window !== null) return windowName(window[1] as WindowKey)
  const month = field.match(/^month\.(\d+)$/)
  if (month !== null) return `Mites in ${MONTH_NAMES[month[1] as Month] ?? ''}`
  if (field === MATING_FIELD) return 'Months in which queens mate'
  if (field === 'reason') return 'Why'
  return SETTING_WORDS[field as NumberSetting]?.label ?? ''
}
