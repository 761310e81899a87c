/** The review's charts as CSV, one file a chart: the numbers themselves, with every digit. */
import { stringify } from 'csv-stringify/sync'
import { incidenceLimits } from '../../statistics/incidence.ts'
import { WAYS } from './cohort.ts'
import { type Group, LOOK_DAYS, type Look } from './look.ts'

type Cell = string | number | null

/** RFC 4180; a cell that a spreadsheet would take for a formula gets an apostrophe in front. */
const csv = (header: readonly string[], rows: readonly (readonly Cell[])[]): string =>
  stringify([header, ...rows], { record_delimiter: '\r\n', escape_formulas: true })

const groupsOf = (look: Look): Group[] => [look.all, ...look.groups]
const nameOf = (g: Group): string => (g.name === '' ? 'all' : g.name)

/** Survival by group: every day on which a colony was lost or left. */
const curves = (look: Look): string =>
  csv(
    ['group', 'day', 'at_risk', 'lost', 'left', 'survival', 'lower', 'upper'],
    groupsOf(look).flatMap((g) =>
      g.curve.steps.map((s) => [nameOf(g), s.day, s.atRisk, s.lost, s.left, s.survival, s.lower, s.upper]),
    ),
  )

/** Cumulative incidence by group and way of leaving. */
const ways = (look: Look): string =>
  csv(
    ['group', 'way', 'day', 'at_risk', 'gone', 'share', 'lower', 'upper'],
    groupsOf(look).flatMap((g) =>
      WAYS.flatMap((way, w) =>
        g.ways.days.map((day, i) => {
          const { share, stdErr, lost } = g.ways.ways[w] ?? { share: [], stdErr: [], lost: [] }
          const limits = incidenceLimits(share[i] ?? 0, stdErr[i] ?? 0)
          return [
            nameOf(g),
            way,
            day,
            g.ways.atRisk[i] ?? 0,
            lost[i] ?? 0,
            share[i] ?? 0,
            ...(limits ?? [null, null]),
          ]
        }),
      ),
    ),
  )

/** What had become of colonies by group: every day on which somebody left, moved out as a way of its own. */
const outcomes = (look: Look): string =>
  csv(
    ['group', 'day', 'outcome', 'share', 'lower', 'upper'],
    groupsOf(look).flatMap((g) =>
      g.review.outcomes.flatMap(({ day, ...shares }) =>
        Object.entries(shares).map(([outcome, s]) => [nameOf(g), day, outcome, s.share, s.lower, s.upper]),
      ),
    ),
  )

/** Survival on day 30 and 60 by group, with the pooled estimate. */
const days = (look: Look): string =>
  csv(
    [
      'group',
      'day',
      'colonies',
      'survival',
      'lower',
      'upper',
      'limits_by',
      'pooled',
      'pooled_lower',
      'pooled_upper',
      'next_ten_least',
      'next_ten_most',
    ],
    LOOK_DAYS.flatMap((day) => [
      ['all', day, ...aliveCells(look.alive[day]), null, null, null, null, null],
      ...look.onDay[day].map((t) => [
        t.name,
        day,
        ...aliveCells(t),
        t.pooled?.share ?? null,
        t.pooled?.lower ?? null,
        t.pooled?.upper ?? null,
        t.pooled?.ofNextTen[0] ?? null,
        t.pooled?.ofNextTen[1] ?? null,
      ]),
    ]),
  )

const aliveCells = (s: Look['alive'][30]): Cell[] => [s.colonies, s.survival, s.lower, s.upper, s.limitsBy]

/** Hazard ratios. */
const ratios = ({ findings }: Look): string =>
  csv(
    [
      'fact',
      'group',
      'against',
      'ratio',
      'lower',
      'upper',
      'p',
      'p_of_fact_holm',
      'colonies',
      'lost',
      'method',
      'others_held_equal',
    ],
    findings.findings.map((f) => [
      f.factor,
      f.label,
      f.against,
      f.ratio,
      f.lower,
      f.upper,
      f.p,
      f.holm,
      f.colonies,
      f.lost,
      f.method,
      findings.together ? 'yes' : 'no',
    ]),
  )

/** Recovery paths. */
const paths = (look: Look): string =>
  csv(
    ['path', 'colonies', 'days_median', 'days_least', 'days_most'],
    look.paths.map((p) => [
      p.path,
      p.colonies,
      p.days?.median ?? null,
      p.days?.least ?? null,
      p.days?.most ?? null,
    ]),
  )

/** Share proven queenright by day. */
function queenright({ queenright: i }: Look): string {
  const [proven] = i.ways
  return csv(
    ['day', 'at_risk', 'proven', 'share', 'lower', 'upper'],
    i.days.map((day, k) => {
      const share = proven?.share[k] ?? 0
      const limits = incidenceLimits(share, proven?.stdErr[k] ?? 0)
      return [day, i.atRisk[k] ?? 0, proven?.lost[k] ?? 0, share, limits?.[0] ?? null, limits?.[1] ?? null]
    }),
  )
}

/** Days in the yard by group. */
const stays = (look: Look): string =>
  csv(
    [
      'group',
      'colonies',
      'left',
      'quarter_by',
      'median',
      'median_lower',
      'median_upper',
      'three_quarters_by',
    ],
    groupsOf(look).map((g) => [
      nameOf(g),
      g.stay.colonies,
      g.stay.left,
      g.stay.quarter.day,
      g.stay.median.day,
      g.stay.median.lower,
      g.stay.median.upper,
      g.stay.threeQuarters.day,
    ]),
  )

/** Money and hours, in all and for each colony kept. */
const money = ({ money: m }: Look): string =>
  csv(
    ['what', 'total', 'per_colony_kept', 'without_a_price'],
    (['queens', 'feed', 'other', 'hours'] as const).map((what) => [
      what,
      m.total[what],
      m.perKept?.[what] ?? null,
      what === 'other' ? null : m.unpriced[what],
    ]),
  )

/** The files there are, by name. */
export const REVIEW_CSV = { outcomes, curves, ways, days, ratios, paths, queenright, stays, money } as const
export type ReviewCsv = keyof typeof REVIEW_CSV
