/**
 * What became of colonies, by day since intake: moved out, died, absconded, united, left otherwise, or still in the yard.
 * Every way of leaving is a way of its own (Aalen-Johansen), so the shares of a day add up to 1 and mean what they say:
 * "moved out by day 60: 41 %" is of all colonies of the kind, not of those that had not moved out.
 */
import {
  cumulativeIncidence,
  type DayCounts,
  grayTest,
  incidenceLimits,
  jeffreys,
  smallSampleLimits,
  stepAt,
  type ThinDay,
  thinDay,
  thisWayOrOther,
  zFor,
} from '../../statistics/index.ts'
import { FEW } from '../../words/index.ts'
import { lossWays, wayNumber } from './cohort.ts'

/**
 * 95 % limits. In the rows, which are the public format, on the log scale as R's survfit gives them, null where the share is 0; on
 * the days that are read as {@link outcomesOn} says.
 */
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

/** Days on which the shares are told first. */
export const OUTCOME_DAYS = [30, 60, 90] as const

export interface OutcomesOnDay {
  day: number
  colonies: number
  /** Of these, those of which it is known what had become of them by the day. */
  known: number
  /** Null when nobody was followed to that day and some were still there, or where the shares hang on a handful. */
  shares: (Omit<OutcomeRow, 'day'> & { lost: Share }) | null
  /** Set where they hang on a handful. */
  thin: ThinDay | null
}

/**
 * What had become of colonies by each of some days; `rows` from {@link outcomeRows}. Limits are on the log-log scale, which holds
 * with few colonies; those of a share of 0 or 1 are Jeffreys' interval, for the colonies of which it is known.
 * Example: of 10, 4 moved out on day 28 and 6 still there on day 35: 40 % and 60 % on day 30.
 */
export function outcomesOn(
  counts: DayCounts,
  rows: readonly OutcomeRow[],
  days: readonly number[],
  unitedIsLoss = false,
): OutcomesOnDay[] {
  const { colonies } = counts
  const thin = thinDay(counts)
  const losses = cumulativeIncidence(thisWayOrOther(counts, lossWays(unitedIsLoss)))
  return days.map((day): OutcomesOnDay => {
    const known = colonies - counts.left.slice(0, day).reduce((a, b) => a + b, 0)
    const none: OutcomesOnDay = { day, colonies, known, shares: null, thin: null }
    if (thin !== null && thin.day <= day) return { ...none, thin }
    const row = rows.findLast((r) => r.day <= day)
    if (known === 0 || (day > counts.lastDay && row?.stillHere.share !== 0)) return none
    const { day: _, ...shares } = row ?? { day, ...nobodyLeft() }
    const i = stepAt(losses.days, day)
    const lost = shareOf(losses.ways[0]?.share[i] ?? 0, losses.ways[0]?.stdErr[i] ?? 0)
    const told = (s: Share): Share => withLimits(s, known)
    const { unknown, ...rest } = shares
    return {
      ...none,
      shares: {
        movedOut: told(rest.movedOut),
        died: told(rest.died),
        absconded: told(rest.absconded),
        united: told(rest.united),
        other: told(rest.other),
        ...(unknown === undefined ? {} : { unknown: told(unknown) }),
        stillHere: told(rest.stillHere),
        lost: told(lost),
      },
    }
  })
}

/** Nearer to 1 than this a share is 1 but for rounding. */
const ROUNDING = 1e-9

/** None of 6 does not mean that none will, nor all of 6 that all will. */
function withLimits({ share, lower }: Share, known: number): Share {
  if (share <= 0) return { share: 0, lower: 0, upper: jeffreys(0, known)[1] }
  if (share >= 1 - ROUNDING) return { share: 1, lower: jeffreys(known, known)[0], upper: 1 }
  // The limits of the row are on the log scale: half their width is the standard error of the log.
  const stdErr = lower === null ? 0 : (share * Math.log(share / lower)) / zFor(0.95)
  const limits = smallSampleLimits(share, stdErr)
  return { share, lower: limits?.[0] ?? null, upper: limits?.[1] ?? null }
}

function nobodyLeft(): Omit<OutcomeRow, 'day'> {
  const none: Share = { share: 0, lower: null, upper: null }
  const all: Share = { share: 1, lower: 1, upper: 1 }
  return { movedOut: none, died: none, absconded: none, united: none, other: none, stillHere: all }
}

/** What the test is about, and the ways that count as it. */
export const TESTED = ['moved-out', 'died', 'absconded', 'united', 'lost'] as const

export interface TypesTest {
  outcome: (typeof TESTED)[number]
  chisq: number | null
  df: number | null
  p: number | null
}

/**
 * The groups between which a test is read: chi-square leans on numbers. Shuffled among the invented yard's 190 colonies 1,000
 * times, Gray's test called types different where none were 11 times of 100 for moving out and 8 for losses with all types in it,
 * 8 and 7 with those of ten colonies or more. The public format holds the tests of all groups.
 */
export const testable = (groups: readonly DayCounts[]): DayCounts[] => groups.filter((g) => g.colonies >= FEW)

/** Gray's test between groups for each outcome; figures are null where nothing can be compared. */
export function typesTests(groups: readonly DayCounts[], unitedIsLoss = false): TypesTest[] {
  return TESTED.map((outcome) => {
    const test = grayTest(groups, outcome === 'lost' ? lossWays(unitedIsLoss) : [wayNumber(outcome)])
    return { outcome, chisq: test?.chisq ?? null, df: test?.df ?? null, p: test?.p ?? null }
  })
}
