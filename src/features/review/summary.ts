/** The review in plain text, for a terminal: a table of types, then what it means in sentences. */

import { type Day, inWordsWithYear } from '../../days.ts'
import { asLost, kaplanMeier, together } from '../../statistics/index.ts'
import { FEW, FEW_MEANS, fewWords, percent, percentRange } from '../../words/index.ts'
import { knownOn, lossWays } from './cohort.ts'
import { type ShareAlive, shareAlive, type TypeOnDay, typesOnDay } from './comparison.ts'
import { goesWithLosing } from './factors.ts'
import type { ColonyFacts } from './facts.ts'
import { fatesOf, fatesReading } from './fates.ts'
import { findingReading, findingsReading } from './findings-reading.ts'
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
  const findings = goesWithLosing(colonies, asOf, { unitedIsLoss })
  const smallest = curves.reduce((m, c) => Math.min(m, c.colonies), Number.POSITIVE_INFINITY)
  return [
    head,
    fatesReading(fatesOf(colonies, asOf), unitedIsLoss),
    '',
    'Estimated share alive of those that stay that long:',
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
    medianReading('', review.overall),
    meanReading('', 60, review.overall),
    waysReading('', 60, review.overall),
    ...(names.length > 1 ? [logRankReading(review.logRank, smallest)] : []),
    '',
    ...on30.map((t) => aliveReading(t.name, 30, t)),
    ...(names.length > 1 ? on30.filter((t) => t.colonies < FEW).map((t) => pooledReading(30, t)) : []),
    '',
    'What goes with losing a colony:',
    findingsReading(findings),
    ...findings.findings.map(findingReading),
  ]
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
      .map((text, j) => (j === 1 || j === 2 ? text.padStart(widths[j] ?? 0) : text.padEnd(widths[j] ?? 0)))
      .join('  ')
      .trimEnd(),
  )
}
