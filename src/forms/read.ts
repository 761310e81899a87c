/** From what was typed to an entry, with a sentence beside every field that cannot be read; and back. */
import type { Entry, EntryKind } from '../journal/index.ts'
import { type FieldProblem, type Problems, type Result, refused } from '../result.ts'
import { plain, type Quantity, type Units, unitOf, type Words, wordsIn } from '../words/index.ts'
import { COMMON, fieldsOf, fieldsSaid, NEW_YARD, unasked } from './fields.ts'
import { numberTyped } from './numbers.ts'
import { type FieldSpec, type FieldSpecs, typedTwin } from './spec.ts'
import { many, one, type Typed } from './typed.ts'

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
  const own = fieldsIn(fieldsOf(kind), typed, units, prefix)
  return {
    kind,
    prefix,
    raw: { kind, ...common.raw, ...own.raw },
    problems: [...common.problems, ...own.problems],
    ...(one(typed, NEW_YARD) === 'yes' ? { newYard: true as const } : {}),
  }
}

/** The same of an entry that is corrected: what no form asks stays as it was. */
export function correctionOf(entry: Entry, typed: Typed, units: Units): Draft {
  const draft = draftOf(entry.kind, typed, units)
  return { ...draft, raw: { ...unasked(entry, draft.raw.on), ...draft.raw } }
}

/** Reads a list of fields. Those left empty are left out; those that cannot be read are named. Never throws. */
export function fieldsIn(
  specs: FieldSpecs,
  typed: Typed,
  units: Units,
  prefix = '',
): { raw: Record<string, unknown>; problems: FieldProblem[] } {
  const raw: Tree = {}
  const problems: FieldProblem[] = []
  for (const [path, spec] of Object.entries(specs)) {
    const name = prefix + path
    const got = answerOf(spec, typed, name, units)
    if (got === undefined) continue
    if (got.ok) put(raw, path.split('.'), got.value)
    else problems.push(...got.problems.map((message) => ({ field: name, message })))
  }
  return { raw, problems }
}

function answerOf(
  spec: FieldSpec,
  typed: Typed,
  name: string,
  units: Units,
): Result<{ value: unknown }, Problems<string>> | undefined {
  if (spec.as === 'list' || spec.as === 'photos') {
    const values = many(typed, name)
    // One box says "looked, none seen": an empty list, which is not the same as not having looked.
    return values.length === 0 ? undefined : { ok: true, value: values.filter((v) => v !== 'none') }
  }
  const tapped = one(typed, name)
  const byHand = spec.other === undefined ? '' : one(typed, typedTwin(name))
  if (tapped !== '' && byHand !== '' && tapped !== byHand)
    return refused([`has two answers, ${tapped} tapped and ${byHand.slice(0, 40)} typed: keep one of them`])
  const text = byHand || tapped
  if (text === '') return undefined
  if (spec.as === 'yes-no') return { ok: true, value: text === 'yes' ? true : text === 'no' ? false : text }
  if (spec.as === 'number' || spec.as === 'whole') return numberOf(spec, text, units)
  return { ok: true, value: text }
}

function numberOf(spec: FieldSpec, text: string, units: Units): Result<{ value: number }, Problems<string>> {
  const unit = spec.quantity === undefined ? undefined : unitOf(units, spec.quantity)
  const n = numberTyped(text)
  if (n === null) return refused([`must be a number, not “${text.slice(0, 40)}”`])
  if (spec.as === 'whole' && !Number.isInteger(n)) return refused([`must be a whole number, not ${text}`])
  const stored = unit === undefined ? n : unit.store(n)
  const shown = (limit: number): string =>
    unit === undefined ? plain(limit) : `${plain(unit.show(limit), 0)} ${unit.symbol}`
  if (spec.min !== undefined && stored < spec.min)
    return refused([`must be at least ${shown(spec.min)}, not ${text}`])
  if (spec.max !== undefined && stored > spec.max)
    return refused([`must be at most ${shown(spec.max)}, not ${text}`])
  return { ok: true, value: stored }
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
  typedFields({ ...COMMON, ...fieldsOf(entry.kind) }, entry, units)

/** Fields as they would have been typed. */
export function typedFields(specs: FieldSpecs, from: object, units: Units): Typed {
  const typed: Typed = {}
  for (const [path, spec] of Object.entries(specs)) {
    const value = path
      .split('.')
      .reduce<unknown>((at, key) => (at === undefined ? undefined : (at as Tree)[key]), from)
    if (value === undefined) continue
    typed[path] = shownValue(spec, value, units)
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
export function labelOf(kind: EntryKind, path: string, w: Words = wordsIn('en')): string {
  if (path === 'on') return w.fields.days[kind]
  return { ...fieldsSaid(COMMON, w), ...fieldsSaid(fieldsOf(kind), w) }[path]?.label ?? ''
}
