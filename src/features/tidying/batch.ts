/** Changes made to many entries at once, each under one id, noted in the yard's settings so that they can be taken back. */

import type { Settings, Tidied } from '../../store/index.ts'
import { idFor } from '../import/node.ts'
import type { IdOf, Named } from './names.ts'

/** Ids of the entries of a change. */
export const madeBy =
  (id: string): IdOf =>
  (of) =>
    idFor(id, of, 0)

/** Ids of the entries that take a change back. */
export const takenBackBy =
  (id: string): IdOf =>
  (of) =>
    idFor(id, of, 1)

export const noteOf = (settings: Settings, id: string): Tidied | null =>
  settings.get('tidied').find((t) => t.id === id) ?? null

/** Notes a change; the same one sent twice is noted once. */
export function keep(settings: Settings, note: Tidied): void {
  if (noteOf(settings, note.id) === null) settings.set('tidied', [...settings.get('tidied'), note])
}

export function noteTakenBack(settings: Settings, id: string, at: string): void {
  settings.set(
    'tidied',
    settings.get('tidied').map((t) => (t.id === id ? { ...t, takenBack: at } : t)),
  )
}

/** What the yard keeps by name beside its journal: types of its own, how many stands a yard has. Stands that have no yard now. */
export function renameSettings(
  settings: Settings,
  what: Named,
  { from, to }: { from: readonly string[]; to: string },
): Record<string, number> {
  if (what === 'removalType') {
    const own = settings.get('removalTypes')
    if (own.some((t) => from.includes(t)))
      settings.set('removalTypes', [...new Set(own.map((t) => (from.includes(t) ? to : t)))])
  }
  if (what !== 'yard') return {}
  const stands = settings.get('stands')
  const gone = Object.fromEntries(
    Object.entries(stands).filter(([yard]) => from.includes(yard) && yard !== to),
  )
  const left = Object.entries(stands).filter(([yard]) => !(yard in gone))
  // Two spellings of one yard have the same stands, not twice as many.
  const most = Math.max(0, stands[to] ?? 0, ...Object.values(gone))
  if (Object.keys(gone).length > 0) settings.set('stands', { ...Object.fromEntries(left), [to]: most })
  return gone
}

/** Names that were in the settings before a renaming are there again. */
export function restoreSettings(settings: Settings, note: Tidied): void {
  if (note.what === 'removalType' && settings.get('removalTypes').includes(note.to))
    settings.set('removalTypes', [...new Set([...settings.get('removalTypes'), ...note.from])])
  if (note.stands !== undefined && Object.keys(note.stands).length > 0)
    settings.set('stands', { ...settings.get('stands'), ...note.stands })
}
