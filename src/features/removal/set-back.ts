/**
 * After going back to a backup, what was added since is not on the sheets: a gas pipe that somebody found at half past ten. What came in
 * with a file was judged by nobody here. No “go” that was given before stands over that; it is decided anew.
 */
import { dayIn } from '../../days.ts'
import { BROUGHT_IN, type Sheet } from '../../records/index.ts'
import type { Store } from '../../store/index.ts'
import { timeIn } from '../../time-of-day.ts'

/** Why nothing that was said before opens anything, and who writes that down. */
const BECAUSE = {
  'set-back': { by: 'Going back to a backup', as: { setBack: true as const } },
  import: { by: BROUGHT_IN, as: { because: 'import' as const } },
  'time-zone': { by: 'Another time zone', as: { because: 'time-zone' as const } },
}

/**
 * Lets every “go” fall that nothing came of yet, and has everything looked at and tapped again on each job that is not done, or on those
 * of `ids`. What a trade or a second person signed falls too where it came with a file. How many jobs there were.
 */
export function goesFall(
  removals: Store['removals'],
  { zone, now }: { zone: string; now: Date },
  why: keyof typeof BECAUSE = 'set-back',
  ids?: readonly string[],
): number {
  const [savedAt, on, at] = [now.toISOString(), dayIn(zone, now), timeIn(zone, now)]
  const brought = why === 'import'
  const { by, as } = BECAUSE[why]
  const standing = removals
    .list()
    .filter(
      ({ id, sheet: { decision: d, site, check, work, ended }, colonies }) =>
        ((d?.is === 'go' && d.fell === undefined) ||
          site.lookedAt !== undefined ||
          check.doneOn !== undefined ||
          (brought && (check.clearances ?? check.seconds) !== undefined)) &&
        ids?.includes(id) !== false &&
        ended === undefined &&
        work.boxedAt === undefined &&
        colonies.length === 0,
    )
  for (const { id, version, sheet } of standing) {
    const { decision, site, check, ...rest } = sheet
    const { lookedAt: _looks, ...found } = site
    const { doneOn: _on, done: _done, wires: _wires, clearances, seconds, ...asked } = check
    const signed = {
      ...(clearances === undefined ? {} : { clearances }),
      ...(seconds === undefined ? {} : { seconds }),
    }
    const again: Sheet = {
      ...rest,
      site: found,
      check: brought ? asked : { ...asked, ...signed },
      ...(decision === undefined
        ? {}
        : {
            decision:
              decision.is === 'go' && decision.fell === undefined
                ? { ...decision, fell: { by, on, at, ...as } }
                : decision,
          }),
    }
    const saved = removals.save(id, version, again, { savedAt, savedBy: by })
    if (!saved.ok) throw new Error(`removal sheet ${id}: ${JSON.stringify(saved)}`)
  }
  return standing.length
}

/**
 * Whoever decided has no account any more, or one that decides nothing: their “go” of today falls, and does not come back with the
 * account. `by`: who took it. How many fell.
 */
export function goFallsOf(
  removals: Store['removals'],
  { zone, now }: { zone: string; now: Date },
  { name, by }: { name: string; by: string },
): number {
  const [savedAt, on, at] = [now.toISOString(), dayIn(zone, now), timeIn(zone, now)]
  const theirs = removals.list().filter(({ sheet: { decision: d, work, ended }, colonies }) => {
    const isOpen = ended === undefined && work.boxedAt === undefined && colonies.length === 0
    return d?.is === 'go' && d.fell === undefined && d.by === name && d.on === on && isOpen
  })
  for (const { id, version, sheet } of theirs) {
    if (sheet.decision === undefined) continue
    const decision = { ...sheet.decision, fell: { by, on, at, because: 'account' as const } }
    const saved = removals.save(id, version, { ...sheet, decision }, { savedAt, savedBy: by })
    if (!saved.ok) throw new Error(`removal sheet ${id}: ${JSON.stringify(saved)}`)
  }
  return theirs.length
}
