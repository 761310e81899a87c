/**
 * After going back to a backup, what was added since is not on the sheets: a gas pipe that somebody found at half past ten. No
 * “go” that was given before stands over that; it is decided anew.
 */
import type { Store } from '../../store/index.ts'

/** Lets every “go” fall that nothing came of yet. How many there were. `on`, `at`: now, in the yard's time. */
export function goesFall(
  removals: Store['removals'],
  now: { savedAt: string; on: string; at: string },
): number {
  const { savedAt, on, at } = now
  const standing = removals
    .list()
    .filter(
      ({ sheet: { decision: d, work, ended }, colonies }) =>
        d?.is === 'go' &&
        d.fell === undefined &&
        ended === undefined &&
        work.boxedAt === undefined &&
        colonies.length === 0,
    )
  for (const { id, version, sheet } of standing) {
    const { decision } = sheet
    if (decision === undefined) continue
    const fell = { by: BY, on, at, setBack: true as const }
    const saved = removals.save(
      id,
      version,
      { ...sheet, decision: { ...decision, fell } },
      { savedAt, savedBy: BY },
    )
    if (!saved.ok) throw new Error(`removal sheet ${id}: ${JSON.stringify(saved)}`)
  }
  return standing.length
}

const BY = 'Going back to a backup'
