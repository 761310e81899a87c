/** One tap on “Go” is no look: what comes back as it stood in a form keeps the hour at which it was first tapped. */
import { isUnderWay, type Sheet } from '../../records/index.ts'
import { placeOf, samePlace } from './place.ts'
import { tickedTooEarly } from './ticked-when.ts'

/** The hour of ticks that a form of that day showed as tapped at `shownAt`; undefined where it showed none. */
export function stoodSince(
  shown: Sheet,
  { done, wires }: { done: readonly string[]; wires: string },
  day: string,
  shownAt: string,
): string | undefined {
  const { check } = shown
  const stood =
    check.doneOn === day &&
    samePlace(check.doneAt ?? {}, placeOf(shown)) &&
    (isUnderWay(shown, day) || !tickedTooEarly(shown, shownAt)) &&
    // To have looked for wires at six is a look of six, whatever else is tapped later.
    (check.done?.some((d) => done.includes(d)) === true || (check.wires === 'none' && wires === 'none'))
  return stood ? check.tickedAt : undefined
}
