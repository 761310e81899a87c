/** Closing up: what is not done keeps a job from being finished, and nothing else. Common practice. */
import type { Sheet } from '../../records/index.ts'
import { cuts } from './hazards.ts'
import { isInside } from './swarm.ts'

export const CLOSING = ['comb', 'void', 'smell', 'entrance', 'stragglers', 'photo'] as const
export type ClosingId = (typeof CLOSING)[number]

/** What is left to do at the place. A swarm leaves no hole. */
export function leftToClose(s: Sheet): ClosingId[] {
  // Asked like a nest, because nobody could tell, “by the road” leaves no hole all the same.
  const { where, ...site } = s.site
  if (!cuts(isInside(where) ? s : { ...s, site })) return []
  const { work: w } = s
  const done: Record<ClosingId, boolean> = {
    comb: w.cleaned === 'all',
    void: w.closedUp?.includes('void') === true,
    smell: w.closedUp?.includes('smell') === true,
    entrance: w.sealed === 'yes',
    stragglers: w.closedUp?.includes('stragglers') === true,
    photo: (w.photos ?? []).length > 0,
  }
  return CLOSING.filter((id) => !done[id])
}
