/** What somebody found at a wall goes onto every version of its sheet: it does not wait for a clash over the way in. */
import type { Sheet } from './removal-sheet.ts'

type Found = Pick<Sheet, 'job' | 'site'>

/**
 * `onto` with what `from` found: pipes, hazards, people, wires near, bees that are none. `known`: the version that `from` was made
 * from; what a colleague took off since does not come back by it.
 */
export function withFound(onto: Sheet, from: Found, known: Found = { job: {}, site: {} }): Sheet {
  const { bees } = from.job
  const unsure = (bees === 'wasps' || bees === 'unsure') && bees !== known.job.bees
  const near = from.site.nearWires === true && known.site.nearWires !== true
  const added = <K extends 'behind' | 'hazards' | 'bystanders'>(key: K) => {
    const has = (s: Found, x: unknown): boolean =>
      (s.site[key] as unknown[] | undefined)?.includes(x) === true
    const came = (from.site[key] ?? []).filter((x) => !has(known, x) && !has(onto, x))
    return came.length === 0 ? {} : { [key]: [...(onto.site[key] ?? []), ...came] }
  }
  return {
    ...onto,
    ...(unsure ? { job: { ...onto.job, bees } } : {}),
    site: {
      ...onto.site,
      ...added('behind'),
      ...added('hazards'),
      ...added('bystanders'),
      ...(near ? { nearWires: true as const } : {}),
    },
  }
}

/** Somebody's refusal, or their “Wait” with a reason, that `known` did not have: undefined where there is none. */
export function heldIn(
  { decision: d }: Pick<Sheet, 'decision'>,
  known: Pick<Sheet, 'decision'> = {},
): Sheet['decision'] {
  const holds = d?.is === 'refuse' || (d?.is === 'wait' && d.reason !== undefined)
  return holds && JSON.stringify(d) !== JSON.stringify(known.decision) ? d : undefined
}
