/** The table that `npm run bench -- advice` prints. */
import type { Results } from './measure.ts'
import type { Result } from './play.ts'
import { RULES } from './rules/all.ts'
import { cost, type Estimate, paired, type Row, rowOf, saved } from './tally.ts'
import type { World } from './world.ts'

const percent = (e: Estimate): string => `${(100 * e.mean).toFixed(0)} %`
const percentLimits = (e: Estimate): string =>
  `${(100 * e.mean).toFixed(1)} % (${(100 * e.lower).toFixed(1)} to ${(100 * e.upper).toFixed(1)})`
const limits = (e: Estimate, digits: number): string =>
  `${e.mean.toFixed(digits)} (${e.lower.toFixed(digits)} to ${e.upper.toFixed(digits)})`

const COLUMNS: readonly [string, (row: Row) => string][] = [
  ['saved, with 95 % limits', (r) => percentLimits(r.fates.saved)],
  ['in error', (r) => percent(r.fates['moved-out-in-error'])],
  ['united', (r) => percent(r.fates.united)],
  ['died', (r) => percent(r.fates.died)],
  ['here', (r) => percent(r.fates['still-here'])],
  ['openings', (r) => r.openings.mean.toFixed(1)],
  ['cost a queen', (r) => r.queensLostToOpening.mean.toFixed(3)],
  ['queens', (r) => r.queens.mean.toFixed(2)],
  ['frames', (r) => r.frames.mean.toFixed(2)],
  ['days', (r) => r.days.mean.toFixed(0)],
  ['cost a colony', (r) => limits(r.cost, 0)],
]

function table(rows: readonly Row[]): string {
  const cells = [
    ['rule', ...COLUMNS.map(([name]) => name)],
    ...rows.map((row) => [row.rule, ...COLUMNS.map(([, of]) => of(row))]),
  ]
  const widths = (cells[0] ?? []).map((_, i) => Math.max(...cells.map((line) => line[i]?.length ?? 0)))
  return cells.map((line) => `| ${line.map((c, i) => c.padEnd(widths[i] ?? 0)).join(' | ')} |`).join('\n')
}

/** The rule of the family with the most saved, or the least cost. */
export function best(results: Results, read: (r: Result) => number, sign: 1 | -1): [string, Result[]] | null {
  let found: [string, Result[]] | null = null
  const total = (rows: Result[]): number => sign * rows.reduce((sum, r) => sum + read(r), 0)
  for (const rule of RULES.filter((r) => r.family === 'fixed')) {
    const rows = results[rule.name]
    if (rows !== undefined && (found === null || total(rows) > total(found[1]))) found = [rule.name, rows]
  }
  return found
}

/** The advice against the best fixed rule, and how far it is on the way to the rule that knows. */
function comparison(results: Results): string[] {
  const advice = results['the advice']
  const [most, cheapest] = [best(results, saved, 1), best(results, cost, -1)]
  if (advice === undefined || most === null || cheapest === null) return []
  const more = paired(advice, most[1], saved)
  const less = paired(advice, cheapest[1], cost)
  const truth = results['a rule that knows the truth']
  const way = truth === undefined ? null : paired(truth, most[1], saved).mean
  return [
    `saved, the advice less "${most[0]}": ${percentLimits(more)}`,
    `cost a colony, the advice less "${cheapest[0]}": ${limits(less, 1)}`,
    ...(way === null || way <= 0
      ? []
      : [`of the way from the best fixed rule to the truth: ${((100 * more.mean) / way).toFixed(0)} %`]),
  ]
}

export function reportOf(world: World, results: Results): string {
  const rows = Object.entries(results).map(([rule, list]) => rowOf(rule, list))
  return [`\n## ${world.name}: ${world.about}`, table(rows), ...comparison(results)].join('\n')
}
