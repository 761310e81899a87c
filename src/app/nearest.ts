/** Tags and names that look like the one asked for. */
import { distance } from 'fastest-levenshtein'

/** Letters and digits only, small, leading zeros of numbers dropped: 'W-07' and 'w7' are the same. */
const bare = (tag: string): string =>
  tag
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]/gu, '')
    .replaceAll(/(?<!\d)0+(?=\d)/g, '')

const LONGEST = 60

/** Up to `most` of the colonies whose tag is nearest to what was asked for; those far from it are left out. */
export function nearestTags<T extends { tag: string }>(asked: string, known: readonly T[], most = 5): T[] {
  const sought = bare(asked.slice(0, LONGEST))
  if (sought === '') return []
  return known
    .map((colony) => ({ colony, far: farness(sought, bare(colony.tag)) }))
    .filter((n) => n.far <= Math.max(2, sought.length / 2))
    .sort((a, b) => a.far - b.far || a.colony.tag.localeCompare(b.colony.tag))
    .slice(0, most)
    .map((n) => n.colony)
}

/** The name nearest to what was typed; undefined where none is like it. */
export const nearestName = (asked: string, known: readonly string[]): string | undefined =>
  nearestTags(
    asked,
    known.map((tag) => ({ tag })),
    1,
  )[0]?.tag

const farness = (a: string, b: string): number => (b.startsWith(a) || a.startsWith(b) ? 0.5 : distance(a, b))
