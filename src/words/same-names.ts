/** Names that differ only in how they are written: Wall, wall and WALL; Home and home. Offered for merging, never merged unasked. */

/** Names taken to mean one thing, the one to keep first. */
export interface SameName {
  keep: string
  others: string[]
}

/** As names are compared: small letters, no spaces, dashes, underscores or dots. Example: bareName('Hay-Barn') = 'haybarn'. */
export const bareName = (name: string): string =>
  name
    .normalize('NFKC')
    .toLowerCase()
    .replaceAll(/[\s\-_.]+/g, '')

/**
 * Groups of names that differ in nothing but letters' size, spaces and dashes. Kept is the spelling that is known already
 * (`known`), else the most usual one, else the first by the alphabet. `names` may hold a name as often as it is used.
 * Example: sameNames(['Wall', 'wall', 'wall', 'tree']) = [{ keep: 'wall', others: ['Wall'] }].
 */
export function sameNames(names: readonly string[], known: readonly string[] = []): SameName[] {
  const groups = new Map<string, Map<string, number>>()
  for (const name of names) {
    const spellings = groups.get(bareName(name)) ?? new Map<string, number>()
    spellings.set(name, (spellings.get(name) ?? 0) + 1)
    groups.set(bareName(name), spellings)
  }
  return [...groups].flatMap(([key, spellings]) => {
    const own = known.find((k) => bareName(k) === key)
    const sorted = [...spellings].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1)).map(([name]) => name)
    const keep = own ?? sorted[0] ?? ''
    const others = sorted.filter((name) => name !== keep)
    return others.length === 0 ? [] : [{ keep, others }]
  })
}

/** Example: 'Wall, WALL and wall are counted as different types; merge them if they are one.' '' when there are none. */
export const sameNameReading = (same: readonly SameName[], what = 'types'): string =>
  same
    .map(
      ({ keep, others }) =>
        `${others.join(', ')} and ${keep} are counted as different ${what}; merge them if they are one.`,
    )
    .join(' ')
