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

type Removals = Store['removals']
type Job = ReturnType<Removals['list']>[number]

const isOpen = ({ sheet: { work, ended }, colonies }: Job): boolean =>
  ended === undefined && work.boxedAt === undefined && colonies.length === 0

const stands = ({ decision: d }: Sheet): boolean => d?.is === 'go' && d.fell === undefined

/** Saves each as `made` has it. How many there were. */
function saveAll(
  removals: Removals,
  jobs: readonly Job[],
  stamp: { savedAt: string; savedBy: string },
  made: (sheet: Sheet) => Sheet,
): number {
  for (const { id, version, sheet } of jobs) {
    const saved = removals.save(id, version, made(sheet), stamp)
    if (!saved.ok) throw new Error(`removal sheet ${id}: ${JSON.stringify(saved)}`)
  }
  return jobs.length
}

/**
 * Lets every “go” fall that nothing came of yet, and has everything looked at and tapped again on each job that is not done, or on those
 * of `ids`. What a trade or a second person signed falls too where it came with a file. How many jobs there were.
 */
export function goesFall(
  removals: Removals,
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
      (job) =>
        isOpen(job) &&
        (stands(job.sheet) ||
          job.sheet.site.lookedAt !== undefined ||
          job.sheet.check.doneOn !== undefined ||
          (brought && (job.sheet.check.clearances ?? job.sheet.check.seconds) !== undefined)) &&
        ids?.includes(job.id) !== false,
    )
  return saveAll(removals, standing, { savedAt, savedBy: by }, (sheet) => {
    const { decision, site, check, ...rest } = sheet
    const { lookedAt: _looks, ...found } = site
    const { doneOn: _on, done: _done, wires: _wires, clearances, seconds, ...asked } = check
    const signed = {
      ...(clearances === undefined ? {} : { clearances }),
      ...(seconds === undefined ? {} : { seconds }),
    }
    return {
      ...rest,
      site: found,
      check: brought ? asked : { ...asked, ...signed },
      ...(decision === undefined
        ? {}
        : {
            decision: stands(sheet) ? { ...decision, fell: { by, on, at, ...as } } : decision,
          }),
    }
  })
}

/**
 * Whoever decided has no account any more, or one that decides nothing: their “go” of today falls, and does not come back with the
 * account. `by`: who took it. How many fell.
 */
export function goFallsOf(
  removals: Removals,
  { zone, now }: { zone: string; now: Date },
  { name, by }: { name: string; by: string },
): number {
  const [savedAt, on, at] = [now.toISOString(), dayIn(zone, now), timeIn(zone, now)]
  const theirs = removals
    .list()
    .filter(
      (job) =>
        isOpen(job) && stands(job.sheet) && job.sheet.decision?.by === name && job.sheet.decision.on === on,
    )
  const fell = { by, on, at, because: 'account' as const }
  return saveAll(removals, theirs, { savedAt, savedBy: by }, ({ decision, ...s }) => ({
    ...s,
    ...(decision === undefined ? {} : { decision: { ...decision, fell } }),
  }))
}
