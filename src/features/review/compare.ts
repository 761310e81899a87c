/**
 * Years, yards, people, methods, heat beside each other: what became of their colonies by a day, as it was, and held to one
 * mix of jobs where the numbers allow it. Whoever takes the hard jobs loses more colonies; that alone says nothing of them.
 */

import type { Day } from '../../days.ts'
import {
  asLost,
  countByDay,
  type DayCounts,
  grayTest,
  logRank,
  smallSampleLimits,
  stdErrBehind,
  stratifiedLogRank,
  together,
  zFor,
} from '../../statistics/index.ts'
import { FEW } from '../../words/index.ts'
import {
  ALL_WAYS,
  type Cohort,
  type CohortOptions,
  cohortOf,
  inOrder,
  knownOn,
  lossWays,
  staysOf,
  UNKNOWN,
  wayNumber,
  withDays,
} from './cohort.ts'
import type { ColonyFacts } from './facts.ts'
import { type OutcomesOnDay, outcomeRows, outcomesOn, type Share, testable } from './outcomes.ts'
import { nobody } from './review.ts'

/** A kind of job counts for the adjustment where every group has had this many whose fate by the day is known (our choice). */
const FEWEST_OF_JOB = 5
/** The kinds of job held equal must be at least this part of all colonies compared, or the figure tells of another yard (our choice). */
const SHARE_HELD = 0.5

interface ComparedGroup {
  name: string
  colonies: number
  /** As it was. */
  was: OutcomesOnDay
  /** Had every group had the same mix of jobs; null where the numbers do not allow it. */
  held: { movedOut: Share; lost: Share } | null
}

export interface Comparison {
  by: Cohort
  day: number
  /** In the order in which a list of them reads. Those of which it was not recorded are left out. */
  groups: ComparedGroup[]
  notRecorded: number
  /** The kinds of job that were held equal, and the part of all colonies compared that they are; null: none could be. */
  held: { types: string[]; share: number } | null
  /** Why nothing was held equal. */
  whyNot: string | null
  /** p that alike groups would differ so much: in colonies lost and moved out; `lostHeld` within kinds of job. */
  p: { lost: number | null; movedOut: number | null; lostHeld: number | null }
}

interface Cells {
  names: string[]
  types: string[]
  /** By group, then type. */
  counts: DayCounts[][]
}

/** Compares the groups of a cohort. Pure. Example: compareBy(facts, today, 'year', { heatLimitC: 29.4 }, 60). */
export function compareBy(
  all: readonly ColonyFacts[],
  asOf: Day,
  by: Cohort,
  options: CohortOptions & { unitedIsLoss?: boolean },
  day = 60,
): Comparison {
  const known = knownOn(all, asOf)
  const nameOf = (c: ColonyFacts): string => cohortOf(c, by, options)
  const colonies = known.filter((c) => nameOf(c) !== UNKNOWN)
  const cells = cellsOf(colonies, asOf, nameOf, inOrder(new Set(colonies.map(nameOf)), by, options))
  const losses = lossWays(options.unitedIsLoss ?? false)
  const groups = cells.counts.map((row) => (row.length === 0 ? nobody() : together(row)))
  const shares = by === 'removalType' ? [] : sharesOf(cells, day, options.unitedIsLoss)
  const held = typesToHold(cells, shares)
  const share = held.reduce((sum, t) => sum + t.colonies, 0) / Math.max(1, colonies.length)
  const holds = held.length > 0 && share >= SHARE_HELD
  return {
    by,
    day,
    notRecorded: known.length - colonies.length,
    groups: cells.names.map((name, g) => ({
      name,
      colonies: groups[g]?.colonies ?? 0,
      was: onDay(groups[g] ?? nobody(), day, options.unitedIsLoss),
      held: holds ? standardised(shares[g] ?? [], held) : null,
    })),
    held: holds ? { types: held.map((t) => t.name), share } : null,
    whyNot: holds ? null : whyNot(by, cells.names.length, share),
    p: {
      lost: logRank(testable(groups).map((c) => asLost(c, losses)))?.p ?? null,
      movedOut: grayTest(testable(groups), [wayNumber('moved-out')])?.p ?? null,
      lostHeld: stratifiedP(cells, losses),
    },
  }
}

function whyNot(by: Cohort, groups: number, share: number): string {
  if (by === 'removalType') return 'kinds of job are what is compared'
  if (groups < 2) return 'there are not two groups'
  return share === 0
    ? `no kind of job has ${FEWEST_OF_JOB} colonies in every group`
    : `only ${Math.round(100 * share)} % of the colonies are of a kind of job that every group has had ${FEWEST_OF_JOB} times`
}

function cellsOf(
  colonies: readonly ColonyFacts[],
  asOf: Day,
  nameOf: (c: ColonyFacts) => string,
  names: string[],
): Cells {
  const dated = withDays(colonies)
  const types = [...new Set(colonies.map((c) => c.removalType))].sort()
  const [groupAt, typeAt] = [placesOf(names), placesOf(types)]
  const of = Int32Array.from(
    dated,
    (c) => (groupAt.get(nameOf(c)) ?? 0) * types.length + (typeAt.get(c.removalType) ?? 0),
  )
  const count = names.length * types.length
  const all = count === 0 ? [] : countByDay(staysOf(dated, asOf), ALL_WAYS.length, { of, count })
  return { names, types, counts: names.map((_, g) => all.slice(g * types.length, (g + 1) * types.length)) }
}

const placesOf = (names: readonly string[]): Map<string, number> => new Map(names.map((name, i) => [name, i]))

const onDay = (counts: DayCounts, day: number, unitedIsLoss?: boolean): OutcomesOnDay => {
  const [on] = outcomesOn(counts, outcomeRows(counts), [day], unitedIsLoss)
  if (on === undefined) throw new RangeError('onDay: no day')
  return on
}

interface HeldType {
  name: string
  place: number
  colonies: number
}

/** The kinds of job that every group has had often enough, with a share on the day. */
function typesToHold({ types }: Cells, shares: readonly OutcomesOnDay[][]): HeldType[] {
  if (shares.length < 2) return []
  return types.flatMap((name, place) => {
    const cells = shares.flatMap((row) => row[place] ?? [])
    if (cells.some((c) => c.shares === null || c.known < FEWEST_OF_JOB)) return []
    return [{ name, place, colonies: cells.reduce((sum, c) => sum + c.colonies, 0) }]
  })
}

/** What had become of every cell by the day, by group, then type; worked out once, for they are many. */
const sharesOf = ({ counts }: Cells, day: number, unitedIsLoss?: boolean): OutcomesOnDay[][] =>
  counts.length < 2 ? [] : counts.map((row) => row.map((c) => onDay(c, day, unitedIsLoss)))

/**
 * Direct standardisation: each kind's share in this group, weighed by how many of all colonies are of that kind. Rothman
 * KJ, Greenland S, Lash TL (2008) Modern Epidemiology, 3rd ed., chapter 15.
 */
function standardised(row: readonly OutcomesOnDay[], held: readonly HeldType[]): ComparedGroup['held'] {
  const all = held.reduce((sum, t) => sum + t.colonies, 0)
  const cells = held.map((t) => ({
    weight: t.colonies / all,
    shares: row[t.place]?.shares ?? null,
  }))
  const mix = (pick: (s: NonNullable<OutcomesOnDay['shares']>) => Share): Share => {
    let [share, variance] = [0, 0]
    for (const { weight, shares } of cells) {
      if (shares === null) continue
      const s = pick(shares)
      share += weight * s.share
      variance += (weight * stdErrOf(s)) ** 2
    }
    const limits = smallSampleLimits(share, Math.sqrt(variance))
    return { share, lower: limits?.[0] ?? null, upper: limits?.[1] ?? null }
  }
  return { movedOut: mix((s) => s.movedOut), lost: mix((s) => s.lost) }
}

/** The error behind a share's limits; of a share of 0 or 1 as if its limits were two errors apart from it. */
const stdErrOf = ({ share, lower, upper }: Share): number =>
  share > 0 && share < 1 && lower !== null
    ? stdErrBehind(share, lower)
    : Math.max((upper ?? share) - share, share - (lower ?? share)) / zFor(0.95)

function stratifiedP({ types, counts }: Cells, losses: number[]): number | null {
  const rows = counts.filter((row) => row.length > 0 && together(row).colonies >= FEW)
  const strata = types.map((_, t) => rows.map((row) => asLost(row[t] ?? nobody(), losses)))
  return stratifiedLogRank(strata)?.p ?? null
}
