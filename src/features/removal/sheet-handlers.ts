/** Handlers of one removal sheet: the form is read first, then the sheet, so that nobody can save in between. */

import {
  type AppContext,
  type PageDeps,
  signedIn,
  typedIn,
  unknownPage,
  withPhotos,
} from '../../app/index.ts'
import type { Typed } from '../../forms/index.ts'
import type { Sheet } from '../../records/index.ts'
import type { SavedSheet } from '../../store/index.ts'
import { sheetIn } from './view.ts'

export type Saved = SavedSheet & { id: string; path: string }
type Handler = (c: AppContext, saved: Saved, typed: Typed) => Response | Promise<Response>

export const onSheet =
  (deps: PageDeps) =>
  (handler: Handler) =>
  async (c: AppContext): Promise<Response> => {
    const typed = c.req.method === 'POST' ? (await withPhotos(c, deps, await typedIn(c))).typed : {}
    const saved = sheetIn(c, deps)
    return saved === null ? unknownPage(c) : handler(c, saved, typed)
  }

/** The crew, as far as the sheet knows it: whoever wrote on it, and who signed as a second person. None of them clears a hazard. */
export const crewOf = (first: readonly string[], saved: SavedSheet | null): string[] => [
  ...first,
  ...(saved?.versions.map((v) => v.savedBy) ?? []),
  ...(saved?.last.sheet.check.seconds?.map((x) => x.by) ?? []),
]

/** Who saves, and when. */
export const stampOf = (c: AppContext, deps: PageDeps) => ({
  savedAt: deps.clock().toISOString(),
  savedBy: signedIn(c),
})

/** Writes the sheet as it now is over its last version. Throws when it does not fit: what is written here was checked. */
export function keep(c: AppContext, deps: PageDeps, saved: Saved, sheet: Sheet): void {
  const result = deps.store.removals.save(saved.id, saved.last.version, sheet, stampOf(c, deps))
  if (!result.ok) throw new Error(`removal sheet ${saved.id}: ${JSON.stringify(result)}`)
}
