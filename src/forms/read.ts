/** From what was typed to an entry, with a sentence beside every field that cannot be read; and back. */
import type { Entry, EntryKind } from '../journal/index.ts'
import { plain, type Quantity, type Units, unitOf } from '../words/index.ts'
import { dayLabel } from './day-labels.ts'
import { COMMON, FIELDS, type FieldSpec, NEW_YARD, typedTwin } from './fields.ts'
import { numberTyped } from './numbers.ts'
import { type FieldProblem, many, one, type Typed } from './typed.ts'

/** One entry as read from a form: handed to the journal's schema next. */
export interface Draft {
  kind: EntryKind
  /** What the names of its own fields begin with in the form ('' or 'cage.'). */
  prefix: string
  raw: Record<string, unknown>
  problems: FieldProblem[]
  /** The form says that its yard, if nobody has used it before, is meant to be a new one. */
  newYard?: true
}

type Tree = Record<string, unknown>

/** Reads one entry's fields out of a form. Fields left empty are left out. Never throws. */
export function draftOf(kind: EntryKind, typed: Typed, units: Units, prefix = ''): Draft {
  const common = fieldsIn(COMMON, typed, units)
  const own = fieldsIn(FIELDS[kind], typed, units, prefix)
  return {
    kind,
    prefix,
    raw: { kind, ...common.raw, ...own.raw },
    problems: [...common.problems, ...own.problems],
    ...(one(typed, NEW_YARD) === 'yes' ? { newYard: true as const } : {}),
  }
}

/** Reads a list of fields. Those left empty are left out; those that cannot be read are told by name. Never throws. */
export function fieldsIn(
  specs: readonly FieldSpec[],
  typed: Typed,
  units: Units,
  prefix = '',
): { raw: Record<string, unknown>; problems: FieldProblem[] } {
  const raw: Tree = {}
  const problems: FieldProblem[] = []
  for (const spec of specs) {
    const name = prefix + spec.path
    const got = answerOf(spec, typed, name, units)
    if (got === undefined) continue
    if ('problem' in got) problems.push({ field: name, message: got.problem })
    else put(raw, spec.path.split('.'), got.value)
  }
  return { raw, problems }
}

function answerOf(
  spec: FieldSpec,
  typed: Typed,
  name: string,
  units: Units,
): { value: unknown } | { problem: string } | undefined {
  if (spec.as === 'list') {
    const values = many(typed, name)
    // One box says "looked, none seen": an empty list, which is not the same as not having looked.
    return values.length === 0 ? undefined : { value: values.filter((v) => v !== 'none') }
  }
  const tapped = one(typed, name)
  const byHand = spec.orTyped === undefined ? '' : one(typed, typedTwin(name))
  if (tapped !== '' && byHand !== '' && tapped !== byHand)
    return { problem: `has two answers, ${tapped} tapped and ${byHand.slice(0, 40)} typed: keep one of them` }
  const text = byHand || tapped
  if (text === '') return undefined
  if (spec.as === 'yes-no') return { value: text === 'yes' ? true : text === 'no' ? false : text }
  if (spec.as === 'number' || spec.as === 'whole') return numberOf(spec, text, units)
  return { value: text }
}

function numberOf(spec: FieldSpec, text: string, units: Units): { value: number } | { problem: string } {
  const unit = spec.quantity === undefined ? undefined : unitOf(units, spec.quantity)
  const n = numberTyped(text)
  if (n === null) return { problem: `must be a number, not “${text.slice(0, 40)}”` }
  if (spec.as === 'whole' && !Number.isInteger(n)) return { problem: `must be a whole number, not ${text}` }
  const stored = unit === undefined ? n : unit.store(n)
  const shown = (limit: number): string =>
    unit === undefined ? plain(limit) : `${plain(unit.show(limit), 0)} ${unit.symbol}`
  if (spec.min !== undefined && stored < spec.min)
    return { problem: `must be at least ${shown(spec.min)}, not ${text}` }
  if (spec.max !== undefined && stored > spec.max)
    return { problem: `must be at most ${shown(spec.max)}, not ${text}` }
  return { value: stored }
}

function put(tree: Tree, path: string[], value: unknown): void {
  const [head, ...rest] = path
  if (head === undefined) return
  if (rest.length === 0) tree[head] = value
  else {
    const branch = (tree[head] ?? {}) as Tree
    tree[head] = branch
    put(branch, rest, value)
  }
}

/** An entry as it would have been typed: fills the form of a correction. */
export const typedOf = (entry: Entry, units: Units): Typed =>
  typedFields([...COMMON, ...FIELDS[entry.kind]], entry, units)

/** Fields as they would have been typed. */
export function typedFields(specs: readonly FieldSpec[], from: object, units: Units): Typed {
  const typed: Typed = {}
  for (const spec of specs) {
    const value = spec.path
      .split('.')
      .reduce<unknown>((at, key) => (at === undefined ? undefined : (at as Tree)[key]), from)
    if (value === undefined) continue
    typed[spec.path] = shownValue(spec, value, units)
  }
  return typed
}

/** Depths are set to the eighth of an inch or finer; a correction of something else must not change how much was fed. */
const DECIMALS: Partial<Record<Quantity, number>> = { length: 4, volume: 3 }

function shownValue(spec: FieldSpec, value: unknown, units: Units): string[] {
  if (Array.isArray(value)) return value.length === 0 ? ['none'] : value.map(String)
  if (typeof value === 'boolean') return [value ? 'yes' : 'no']
  if (typeof value !== 'number') return [String(value)]
  const { quantity } = spec
  return [
    quantity === undefined
      ? plain(value)
      : plain(unitOf(units, quantity).show(value), DECIMALS[quantity] ?? 1),
  ]
}

/** The label of a field of a form. */
export function labelOf(kind: EntryKind, path: string): string {
  if (path === 'on') return dayLabel(kind)
  const spec = [...COMMON, ...FIELDS[kind]].find((s) => s.path === path)
  return spec?.label ?? ''
}
