/** With which version of a sheet something became so: who said it, and what was changed with it. A phone keeps the last version alone. */
import type { AppContext, SheetHistory } from '../../app/index.ts'
import type { Sheet } from '../../records/index.ts'
import type { Repository, SheetVersion } from '../../store/index.ts'
import { differing, saidAgain } from './sheet-facts.ts'
import { isSaidOn } from './since-open.ts'
import { PARTS } from './stage.ts'

/** The first version of those in a row until now of which it is so, and the one before it; undefined where there is none. */
function becameSo(
  { removals }: Repository,
  id: string,
  isSo: (s: Sheet) => boolean,
): { came: SheetVersion; before: SheetVersion } | undefined {
  let came: SheetVersion | undefined
  for (const { version } of removals.get(id)?.versions ?? []) {
    const at = removals.version(id, version)
    if (at === null) return
    if (!isSo(at.sheet)) return came && { came, before: at }
    came = at
  }
  return
}

export const historyOf =
  (store: Repository) =>
  ({ var: { frame } }: AppContext, id: string): SheetHistory => ({
    changedAtFall() {
      const fell = becameSo(store, id, (s) => s.decision?.fell !== undefined)
      if (fell === undefined) return []
      const [was, is] = [fell.before.sheet, fell.came.sheet]
      const [go, fallen] = [was.decision, is.decision]
      // Another version than that brought the “go” along, or somebody else's: nobody knows what it fell over.
      if (go?.on !== fallen?.on || go?.at !== fallen?.at || fallen?.fell?.by !== fell.came.savedBy) return []
      const at = { units: frame.units, today: frame.today, currency: store.settings.get('currency') }
      return [...new Set(PARTS.flatMap((part) => differing(part, was, is, at).map(([label]) => label)))]
    },
    saidBy(text) {
      const came = becameSo(store, id, (s) => isSaidOn(s, text))?.came
      return came && { by: came.savedBy, at: came.savedAt }
    },
    asideBy(said, day) {
      const isSo = ({ check }: Sheet): boolean => check.doneOn === day && saidAgain(check).includes(said)
      return becameSo(store, id, isSo)?.came.savedBy
    },
  })
