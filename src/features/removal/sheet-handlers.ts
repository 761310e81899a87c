/** Handlers of one removal sheet: the form is read first, then the sheet, so that nobody can save in between. */

import { type AppContext, type Deps, signedIn, typedIn, unknownPage } from '../../app/index.ts'
import type { Typed } from '../../forms/index.ts'
import type { Sheet } from '../../records/index.ts'
import type { SavedSheet } from '../../store/index.ts'
import { sheetIn } from './view.ts'

export type Saved = SavedSheet & { id: string; path: string }
type Handler = (c: AppContext, saved: Saved, typed: Typed) => Response | Promise<Response>

export const onSheet =
  (deps: Deps) =>
  (handler: Handler) =>
  async (c: AppContext): Promise<Response> => {
    const typed = c.req.method === 'POST' ? await typedIn(c) : {}
    const saved = sheetIn(c, deps)
    return saved === null ? unknownPage(c) : handler(c, saved, typed)
  }

/** Writes the sheet as it now is over its last version. Throws when it does not fit: what is written here was checked. */
export function keep(c: AppContext, deps: Deps, saved: Saved, sheet: Sheet): void {
  const stamp = { savedAt: deps.clock().toISOString(), savedBy: signedIn(c) }
  const result = deps.store.removals.save(saved.id, saved.last.version, sheet, stamp)
  if (!result.ok) throw new Error(`removal sheet ${saved.id}: ${JSON.stringify(result)}`)
}
