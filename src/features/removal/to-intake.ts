/** What of a sheet an intake takes over, so that nothing is typed twice. */
import type { Intake } from '../../journal/index.ts'
import { openToBoxed, type Sheet } from '../../records/index.ts'
import { minutesFrom } from '../../time-of-day.ts'

/** Minutes after midnight. */
/** Hours from one time of day to another, over midnight where the second is earlier. Example: hoursBetween('09:00', '13:30') = 4.5. */
export function hoursBetween(from: string, to: string): number {
  const length = minutesFrom(from, to)
  return Math.round(((length < 0 ? length + 1440 : length) / 60) * 100) / 100
}

/** As many as an intake takes: a trap-out stands for weeks. */
const MOST_HOURS = 240

type Filled = Partial<Omit<Intake, 'kind' | 'removal' | 'on'>> & {
  on?: string
  removal: Partial<Intake['removal']>
}

/** Drops what is undefined, so that an exact optional field is left out rather than empty. */
function kept<T extends object>(fields: { [K in keyof T]: T[K] | undefined }): T {
  return Object.fromEntries(Object.entries(fields).filter(([, v]) => v !== undefined)) as T
}

/**
 * The intake as far as the sheet knows it: the yard, the stand and the tag are still to be said. `said`: sentences for whoever receives the box, such as what the heat did.
 */
export function intakeFrom(s: Sheet, said: readonly string[] = []): Filled {
  const { work: w, site, job, check } = s
  const removedOn = w.on ?? job.plannedOn
  const hours = openToBoxed(s)
  const removal = kept<Partial<Intake['removal']>>({
    type: site.type,
    removedOn,
    outdoorC: w.outdoorC,
    hoursOpenToBoxed: hours !== undefined && hours <= MOST_HOURS ? hours : undefined,
    // What was to take them off, where nobody has said what did: asked on the form of the box itself.
    method:
      w.method ??
      (check.vacuum === 'bee-vacuum' ? 'vacuum' : check.vacuum === 'none' ? 'brushed' : undefined),
    sprayed: site.sprayed,
    site:
      [job.name, job.address]
        .filter((x) => x !== undefined)
        .join(', ')
        .slice(0, 300) || undefined,
  })
  return {
    ...kept<Omit<Filled, 'removal'>>({
      queen: w.queen,
      brood: w.brood,
      broodCare: w.broodCare,
      queenCells: w.queenCells,
      bees: w.bees,
      deadBeesKg: w.deadBeesKg,
      tiedComb: w.tiedComb,
      temper: w.temper ?? (site.temper === 'unknown' ? undefined : site.temper),
      note: noteOf(s, said),
    }),
    removal,
  }
}

const SEALED = {
  yes: 'Entrance sealed.',
  no: 'Entrance not sealed.',
  owner: 'Entrance left to the owner to seal.',
}
const CLEANED = {
  all: 'All comb taken out.',
  part: 'Part of the comb is still in there.',
  none: 'The comb was left.',
}

/** What an intake has no field for, in sentences. Nothing about the customer: everybody in the yard reads the journal. */
function noteOf({ work: w }: Sheet, said: readonly string[]): string | undefined {
  const onSite =
    w.arrivedAt === undefined || w.leftAt === undefined ? undefined : `On site ${w.arrivedAt} to ${w.leftAt}.`
  const found = w.queenFoundAt === undefined ? undefined : `Queen found at ${w.queenFoundAt}.`
  const lines = [
    onSite,
    found,
    w.sealed === undefined ? undefined : SEALED[w.sealed],
    w.cleaned === undefined ? undefined : CLEANED[w.cleaned],
    ...said,
    w.note,
  ].filter((l) => l !== undefined)
  return lines.length === 0 ? undefined : lines.join(' ').slice(0, 2000)
}
