/** Apart from removals.ts because a phone's book imports it too, and a phone has no SQLite. */
import type { Problem } from '../journal/index.ts'
import { refused } from '../result.ts'
import type { Removals } from './removals.ts'

const notYours: Problem[] = [{ field: '', message: 'is for beekeepers and operators' }]

/** What somebody gets who may not see removal sheets: none. */
export const NO_REMOVALS: Removals = {
  list: () => [],
  get: () => null,
  version: () => null,
  save: () => refused(notYours),
  link: () => {},
  ofColony: () => null,
  withoutGo: () => [],
  everything: () => ({ versions: [], boxes: [] }),
  take: () => notYours.map((p) => `removal sheets: ${p.message}`),
  erase: () => 0,
  ownPhotos: () => [],
}
