/**
 * What became of colonies, by day since intake: moved out, died, absconded, united, left otherwise, or still in the yard.
 * Every way of leaving is a way of its own (Aalen-Johansen), so the shares of a day add up to 1 and mean what they say:
 * "moved out by day 60: 41 %" is of all colonies of the kind, not of those that had not moved out.
 */
import type { DayCounts } from '../../statistics/day-counts.ts'
import { grayTest } from '../../statistics/gray.ts'
import { cumulativeIncidence, incidenceLimits } from '../../statistics/incidence.ts'
import { lossWays, wayNumber } from './cohort.ts'

/** 95 % limits on the log scale, as R's survfit gives them; null where the share is 0. */
export interface Share {
  share: number
  lower: number | null
  upper: number | null
}

/** What the ways are called in the public format, by their number less one. */
const NAMES = ['died', 'absconded', 'united', 'movedOut', 'other', 'unknown'] as const

export interface OutcomeRow {
  /** Days since intake. */
  day: number
  movedOut: Share
  died: Share
  absconded: Share
  united: Share
  other: Share
  /** Left, and nobody knows how; only where there are such colonies. Then the seven add up to 1, else the six do. */
  unknown?: Share
  stillHere: Share
}

const shareOf = (share: number, stdErr: number): Share => {
  const limits = incidenceLimits(share, stdErr)
  // Sums of many days can stand a rounding above 1.
  return { share: Math.min(1, share), lower: limits?.[0] ?? null, upper: limits?.[1] ?? null }
}

/** A row for every day on which somebody left; `counts` by every way of ALL_WAYS. */
export function outcomeRows(counts: DayCounts): OutcomeRow[] {
  const incidence = cumulativeIncidence(counts)
  const unknown = counts.lost[wayNumber('unknown') - 1]?.some((n) => n > 0) ?? false
  return incidence.days.flatMap((day, i): OutcomeRow[] => {
    if (incidence.ways.every((w) => (w.lost[i] ?? 0) === 0)) return []
    const [died, absconded, united, movedOut, other, lost] = NAMES.map((_, w) =>
      shareOf(incidence.ways[w]?.share[i] ?? 0, incidence.ways[w]?.stdErr[i] ?? 0),
    )
    if (!died || !absconded || !united || !movedOut || !other || !lost) return []
    return [
      {
        day,
        movedOut,
        died,
        absconded,
        united,
        other,
        ...(unknown ? { unknown: lost } : {}),
        stillHere: shareOf(incidence.free[i] ?? 1, incidence.freeStdErr[i] ?? 0),
      },
    ]
  })
}

/** What the test is about, and the ways that count as it. */
export const TESTED = ['moved-out', 'died', 'absconded', 'united', 'lost'] as const

export interface TypesTest {
  outcome: (typeof TESTED)[number]
  chisq: number | null
  df: number | null
  p: number | null
}

/** Gray's test between groups for each outcome; figures are null where nothing can be compared. */
export function typesTests(groups: readonly DayCounts[], unitedIsLoss = false): TypesTest[] {
  return TESTED.map((outcome) => {
    const test = grayTest(groups, outcome === 'lost' ? lossWays(unitedIsLoss) : [wayNumber(outcome)])
    return { outcome, chisq: test?.chisq ?? null, df: test?.df ?? null, p: test?.p ?? null }
  })
}
