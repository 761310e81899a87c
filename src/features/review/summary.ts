/** The review in plain text, for a terminal: a table of types, then what it means in sentences. */

import { type Day, inWordsWithYear } from '../../days.ts'
import { asLost, kaplanMeier, logRank, thinDay, together } from '../../statistics/index.ts'
import {
  FEW,
  FEW_MEANS,
  fewWords,
  percent,
  percentRange,
  sameNameReading,
  sameNames,
} from '../../words/index.ts'
import { knownOn, lossWays } from './cohort.ts'
import { type ShareAlive, shareAlive, type TypeOnDay, typesOnDay } from './comparison.ts'
import { goesWithLosing } from './factors.ts'
import type { ColonyFacts } from './facts.ts'
import { fatesOf, fatesReading } from './fates.ts'
import { findingLines, findingsReading } from './findings-reading.ts'
import {
  OUTCOME_DAYS,
  type OutcomesOnDay,
  outcomeRows,
  outcomesOn,
  testable,
  typesTests,
} from './outcomes.ts'
import {
  MOST_TOLD,
  outcomeCell,
  outcomesReading,
  type Sized,
  smallestDifferenceReading,
  typesTestsReading,
  withoutDayReading,
} from './outcomes-reading.ts'
import {
  aliveReading,
  CURVE_CAUTION,
  coloniesOf,
  logRankReading,
  meanReading,
  medianReading,
  pooledReading,
  waysReading,
} from './readings.ts'
import { countedBy, reviewOfTypes } from './review.ts'

/** Lines of text, without colours. */
export function summaryOf(all: readonly ColonyFacts[], asOf: Day, unitedIsLoss = false): string[] {
  const colonies = knownOn(all, asOf)
  const types = countedBy(colonies, asOf, (c) => c.removalType)
  const { names, counts } = types
  const review = reviewOfTypes(types, asOf, unitedIsLoss)
  const curves = counts.map((c) => kaplanMeier(asLost(c, lossWays(unitedIsLoss))))
  const [on30, on60] = [typesOnDay(names, curves, 30), typesOnDay(names, curves, 60)]
  const lost = unitedIsLoss ? 'died, absconded or united' : 'died or absconded'
  const head = `${coloniesOf(colonies.length, '')} as of ${inWordsWithYear(asOf)}; lost means ${lost}`
  if (colonies.length === 0) return [head]
  const whole = together(counts)
  const findings = goesWithLosing(colonies, asOf, { unitedIsLoss })
  const became = counts.map((c) => outcomesOn(c, outcomeRows(c), OUTCOME_DAYS, unitedIsLoss))
  const largest = names
    .map((name, i) => ({ name, i, n: counts[i]?.colonies ?? 0 }))
    .sort((a, b) => b.n - a.n || (a.name < b.name ? -1 : 1))
  const told = largest.slice(0, MOST_TOLD)
  const untold = largest.length - told.length
  const more =
    untold > 0 ? [`The other ${untold} ${untold === 1 ? 'type stands' : 'types stand'} in the table.`] : []
  const sized = largest.flatMap(({ name, i }): Sized[] => {
    const on60 = became[i]?.[1]
    return on60?.shares ? [{ name, known: on60.known, share: on60.shares.movedOut.share }] : []
  })
  const ratesDiffer = logRank(testable(counts).map((c) => asLost(c, lossWays(unitedIsLoss))))
  const smallest = curves.reduce((m, c) => Math.min(m, c.colonies), Number.POSITIVE_INFINITY)
  return [
    head,
    fatesReading(fatesOf(colonies, asOf), unitedIsLoss),
    ...[
      withoutDayReading(types.withoutDay.reduce((a, b) => a + b, 0)),
      sameNameReading(sameNames(names)),
    ].filter(Boolean),
    '',
    'What became of them, estimated share of all:',
    ...outcomesTable(names, became),
    '',
    ...told.flatMap(({ name, i }) => became[i]?.slice(1, 2).map((o) => outcomesReading(name, o)) ?? []),
    ...more,
    ...(names.length > 1
      ? [
          typesTestsReading(typesTests(testable(counts), unitedIsLoss)),
          smallestDifferenceReading(sized),
        ].filter(Boolean)
      : []),
    '',
    'Estimated share alive in the yard of those that stay that long:',
    ...table([
      ['type', 'colonies', 'lost', 'at day 30', 'at day 60', 'next one, day 30'],
      ...on30.map((t, i) => [
        t.name,
        String(t.colonies),
        String(curves[i]?.lost ?? 0),
        `${cell(t)}${fewWords(t.colonies)}`,
        `${cell(on60[i])}${fewWords(t.colonies)}`,
        pooledCell(t),
      ]),
    ]),
    ...(smallest < FEW ? [FEW_MEANS] : []),
    '',
    CURVE_CAUTION,
    aliveReading('', 30, shareOfAll(counts, 30, unitedIsLoss)),
    aliveReading('', 60, shareOfAll(counts, 60, unitedIsLoss)),
    medianReading('', review.overall, thinDay(asLost(whole, lossWays(unitedIsLoss)))),
    meanReading('', 60, review.overall),
    waysReading('', 60, review.overall),
    ...(names.length > 1 ? [logRankReading(ratesDiffer, smallest)] : []),
    '',
    ...told.flatMap(({ i }) => toldOf(on30[i], names.length > 1)),
    ...more,
    '',
    'What goes with losing a colony:',
    findingsReading(findings),
    ...findingLines(findings),
  ]
}

/** A type's sentence on day 30; of a small one also what to expect, leaning on all types. */
function toldOf(t: TypeOnDay | undefined, pooled: boolean): string[] {
  if (t === undefined) return []
  return [aliveReading(t.name, 30, t), ...(pooled && t.colonies < FEW ? [pooledReading(30, t)] : [])]
}

function outcomesTable(names: readonly string[], became: readonly (readonly OutcomesOnDay[])[]): string[] {
  const days = OUTCOME_DAYS.flatMap((d) => [`moved out by ${d}`, `lost by ${d}`])
  return table([
    ['type', 'colonies', ...days],
    ...names.map((name, i) => [
      name,
      String(became[i]?.[0]?.colonies ?? 0),
      ...(became[i] ?? []).flatMap(({ shares }) => [
        outcomeCell(shares?.movedOut),
        outcomeCell(shares?.lost),
      ]),
    ]),
  ])
}

function shareOfAll(counts: Parameters<typeof together>[0], day: number, unitedIsLoss: boolean): ShareAlive {
  return shareAlive(kaplanMeier(asLost(together(counts), lossWays(unitedIsLoss))), day)
}

function cell(t: ShareAlive | undefined): string {
  if (t === undefined || t.survival === null) return 'not yet known'
  return t.lower === null || t.upper === null
    ? percent(t.survival)
    : `${percent(t.survival)} (${percentRange(t.lower, t.upper)})`
}

const pooledCell = (t: TypeOnDay): string =>
  t.pooled === null ? '' : `${percent(t.pooled.share)} (${percentRange(t.pooled.lower, t.pooled.upper)})`

/** Columns padded to their widest cell; numbers to the right. */
function table(rows: readonly (readonly string[])[]): string[] {
  const widths = (rows[0] ?? []).map((_, j) => Math.max(...rows.map((r) => (r[j] ?? '').length)))
  return rows.map((r) =>
    r
      .map((text, j) => (/^\d+$/.test(text) ? text.padStart(widths[j] ?? 0) : text.padEnd(widths[j] ?? 0)))
      .join('  ')
      .trimEnd(),
  )
}
