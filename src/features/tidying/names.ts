/**
 * Names that can be merged and renamed: removal types, yards, people. A name is changed by correcting the entries that have it,
 * each by a new entry in its place, so that nothing is lost and all of it can be turned back.
 */

import type { ColonyId } from '../../ids.ts'
import type { Entry, History, StandingEntry } from '../../journal/index.ts'
import { type SameName, sameNames } from '../../words/index.ts'

export const NAMED = ['removalType', 'yard', 'person'] as const
export type Named = (typeof NAMED)[number]

/** The name of that kind in an entry; null when it has none. */
function nameIn(e: Entry, what: Named): string | null {
  if (what === 'person') return e.by
  if (what === 'removalType') return e.kind === 'intake' ? e.removal.type : null
  return e.kind === 'intake' || e.kind === 'move' ? e.yard : null
}

/** The same entry under another name. */
function withName(e: StandingEntry, what: Named, name: string): StandingEntry {
  if (what === 'person') return { ...e, by: name }
  if (what === 'yard') return e.kind === 'intake' || e.kind === 'move' ? { ...e, yard: name } : e
  return e.kind === 'intake' ? { ...e, removal: { ...e.removal, type: name } } : e
}

export interface NameCount {
  name: string
  /** Entries that have it. */
  entries: number
}

export type Names = Record<Named, NameCount[]>

export interface ColonyHistory {
  id: ColonyId
  history: History
}

/** Every name in use, the most used first. */
export function namesIn(colonies: Iterable<ColonyHistory>): Names {
  const counts = { removalType: new Map(), yard: new Map(), person: new Map() } satisfies Record<
    Named,
    Map<string, number>
  >
  for (const { history } of colonies)
    for (const e of history.entries)
      for (const what of NAMED) {
        const name = nameIn(e, what)
        if (name !== null) counts[what].set(name, (counts[what].get(name) ?? 0) + 1)
      }
  const listed = (of: Map<string, number>): NameCount[] =>
    [...of]
      .map(([name, entries]) => ({ name, entries }))
      .sort((a, b) => b.entries - a.entries || (a.name < b.name ? -1 : 1))
  return {
    removalType: listed(counts.removalType),
    yard: listed(counts.yard),
    person: listed(counts.person),
  }
}

/** Names of one kind that look like one. `known`: spellings to keep. */
export const offered = (names: readonly NameCount[], known: readonly string[]): SameName[] =>
  sameNames(
    names.flatMap(({ name, entries }) => Array.from({ length: entries }, () => name)),
    known,
  )

/** Makes the id of the entry that takes another's place, out of both: a change sent twice is one change. */
export type IdOf = (replaced: string) => string

/** Corrections that give the entries named so another name. */
export function renamed(
  colonies: Iterable<ColonyHistory>,
  what: Named,
  { from, to }: { from: ReadonlySet<string>; to: string },
  idOf: IdOf,
): Entry[] {
  const made: Entry[] = []
  for (const { history } of colonies)
    for (const e of history.entries) {
      const name = nameIn(e, what)
      if (name === null || name === to || !from.has(name)) continue
      made.push({ ...withName(e, what, to), id: idOf(e.id), replaces: e.id })
    }
  return made
}

/**
 * Corrections that give entries back the name they had before a renaming. `was`: the entry that one took the place of. What was
 * corrected by somebody since stands as it is.
 */
export function turnedBack(
  colonies: Iterable<ColonyHistory>,
  what: Named,
  { madeBy, idOf, was }: { madeBy: IdOf; idOf: IdOf; was: (id: string) => Entry | null },
): Entry[] {
  const made: Entry[] = []
  for (const { history } of colonies)
    for (const e of history.entries) {
      if (e.replaces === undefined || e.id !== madeBy(e.replaces)) continue
      const before = was(e.replaces)
      const name = before === null ? null : nameIn(before, what)
      if (name !== null) made.push({ ...withName(e, what, name), id: idOf(e.id), replaces: e.id })
    }
  return made
}
