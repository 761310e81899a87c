/**
 * What in an entry is private: where a colony came from, what was paid, where it went. Helpers never get it, and exports
 * can leave it out. The list is here and nowhere else.
 */
import type { Entry, EntryKind, History } from '../journal/index.ts'
import type { Stay } from '../stays/index.ts'
import type { JournalRow } from '../store/index.ts'

/** Private fields of each kind, as dotted paths. Every one is optional in the schema, so an entry without is whole. */
export const PRIVATE_FIELDS: Partial<Record<EntryKind, readonly string[]>> = {
  intake: ['removal.site'],
  given: ['cost'],
  outcome: ['destination'],
}

type Tree = Record<string, unknown>

/** The entry without its private fields. Never changes what it is given. */
export function withoutPrivate<E extends Entry>(entry: E): E {
  return (PRIVATE_FIELDS[entry.kind] ?? []).reduce<E>((e, path) => without(e, path.split('.')) as E, entry)
}

function without(tree: Tree, [head = '', ...rest]: string[]): Tree {
  const { [head]: value, ...others } = tree
  if (value === undefined) return tree
  return rest.length === 0 ? others : { ...tree, [head]: without(value as Tree, rest) }
}

export const rowWithoutPrivate = <R extends JournalRow>(row: R): R => ({
  ...row,
  entry: withoutPrivate(row.entry),
})

export function historyWithoutPrivate(history: History): History {
  return {
    ...history,
    intake: withoutPrivate(history.intake),
    entries: history.entries.map(withoutPrivate),
    outcome: history.outcome === null ? null : withoutPrivate(history.outcome),
  }
}

/** Costs are private, so nothing is known to have been spent. */
export const stayWithoutPrivate = (stay: Stay): Stay => ({
  ...stay,
  spending: { ...stay.spending, queens: 0, feed: 0, other: 0 },
})

/**
 * A correction by somebody who could not see the private fields of what it corrects: they stay as they were. Without
 * this, a helper mending a slip would wipe out a cost that was never shown.
 */
export function keepingPrivate(correction: Tree, corrected: Entry): Tree {
  if (correction.kind !== corrected.kind) return correction
  return (PRIVATE_FIELDS[corrected.kind] ?? []).reduce<Tree>((made, path) => {
    const value = at(corrected as Tree, path.split('.'))
    return value === undefined ? made : put(made, path.split('.'), value)
  }, correction)
}

const at = (tree: Tree, path: string[]): unknown =>
  path.reduce<unknown>((v, key) => (v === undefined ? undefined : (v as Tree)[key]), tree)

function put(tree: Tree, [head = '', ...rest]: string[], value: unknown): Tree {
  if (rest.length === 0) return { ...tree, [head]: value }
  const branch = tree[head]
  const below = branch !== null && typeof branch === 'object' ? (branch as Tree) : {}
  return { ...tree, [head]: put(below, rest, value) }
}
