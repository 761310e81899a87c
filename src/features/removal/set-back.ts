/**
 * After going back to a backup, what was added since is not on the sheets: a gas pipe that somebody found at half past ten. No
 * “go” that was given before stands over that; it is decided anew.
 */
import type { Sheet } from '../../records/index.ts'
import type { Store } from '../../store/index.ts'

/**
 * Lets every “go” fall that nothing came of yet, and has everything looked at and tapped again on each job that is not done. How many
 * jobs there were. `on`, `at`: now, in the yard's time.
 */
export function goesFall(
  removals: Store['removals'],
  now: { savedAt: string; on: string; at: string },
): number {
  const { savedAt, on, at } = now
  const standing = removals
    .list()
    .filter(
      ({ sheet: { decision: d, site, check, work, ended }, colonies }) =>
        (d?.is === 'go' || site.lookedAt !== undefined || check.doneOn !== undefined) &&
        d?.fell === undefined &&
        ended === undefined &&
        work.boxedAt === undefined &&
        colonies.length === 0,
    )
  for (const { id, version, sheet } of standing) {
    const { decision, site, check, ...rest } = sheet
    const { lookedAt: _looks, ...found } = site
    const { doneOn: _on, done: _done, wires: _wires, ...asked } = check
    const fell = { by: BY, on, at, setBack: true as const }
    const again: Sheet = {
      ...rest,
      site: found,
      check: asked,
      ...(decision === undefined
        ? {}
        : { decision: decision.is === 'go' ? { ...decision, fell } : decision }),
    }
    const saved = removals.save(id, version, again, { savedAt, savedBy: BY })
    if (!saved.ok) throw new Error(`removal sheet ${id}: ${JSON.stringify(saved)}`)
  }
  return standing.length
}

const BY = 'Going back to a backup'
