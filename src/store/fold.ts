/** A colony's rows folded into its history. Pure, so that the phone folds the same way. */

import type { ColonyId, Tag } from '../ids.ts'
import { type History, historyAs, type Intake, standing } from '../journal/index.ts'
import type { JournalRow } from './types.ts'

/** JSON with sorted keys and nothing undefined: equal content, equal text. */
export function canonical(value: unknown): string {
  return JSON.stringify(value, (_key, v: unknown) =>
    v !== null && typeof v === 'object' && !Array.isArray(v)
      ? Object.fromEntries(Object.entries(v).sort(([a], [b]) => (a < b ? -1 : 1)))
      : v,
  )
}

/** A whole number from 1 to 2³² by which a content is known again: FNV-1a of its canonical text. For mix-ups, not for secrets. */
export function fingerprint(value: unknown): number {
  let hash = 0x811c9dc5
  for (const letter of canonical(value)) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193)
  return (hash >>> 0) + 1
}

/** The same as a number over 0 and at most a half, to stand beside a whole one. */
export const fractionOf = (value: unknown): number => fingerprint(value) / 2 ** 33

/** What one colony's rows add up to. */
export interface Folded {
  /** The tag of the intake that stands, else of the last one there was. */
  tag: Tag
  /** Null when no intake stands. */
  history: History | null
}

/** A colony's rows, folded when that is first asked for. */
export interface Known {
  rows: readonly JournalRow[]
  readonly folded: Folded
}

export function knownBy(id: ColonyId, rows: readonly JournalRow[]): Known {
  let folded: Folded | undefined
  return {
    rows,
    get folded() {
      folded ??= fold(id, rows)
      return folded
    },
  }
}

/** Folds one colony's rows. */
export function fold(id: ColonyId, rows: readonly JournalRow[]): Folded {
  const entries = rows.map((r) => r.entry)
  const stands = standing(entries)
  const intake = stands.find((e): e is Intake => e.kind === 'intake')
  const named =
    intake === undefined
      ? rows.findLast((r) => r.entry.kind === 'intake')
      : rows.find((r) => r.entry === intake)
  const tag = named?.written ?? id
  return { tag, history: intake === undefined ? null : historyAs(tag, stands) }
}
