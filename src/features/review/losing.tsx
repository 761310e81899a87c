/** What goes with losing a colony: hazard ratios on a doubling scale, each with its sentence. */

import { Part, Range, RangeHead, Reading, ratios, type Scale } from '../../parts/index.ts'
import { capital, FEW } from '../../words/index.ts'
import { CsvLinks } from './csv-links.tsx'
import type { FactorName } from './factor-columns.ts'
import type { Finding } from './factors.ts'
import { findingReading, findingsReading, isClear, times } from './findings-reading.ts'
import type { ReviewProps } from './part-props.ts'
import { named } from './words.ts'

const FACT_WORDS: Record<FactorName, string> = {
  type: 'removal type',
  heat: 'heat at removal',
  queen: 'queen at intake',
  brood: 'brood that came along',
  vacuum: 'vacuum',
  hours: 'hours open to boxed',
}

export const Losing = (p: ReviewProps) => {
  const { findings } = p.look
  const few = p.look.all.curve.colonies < FEW
  return (
    <Part id="losing" title="What goes with losing a colony">
      <Reading>
        {few
          ? `Nothing can be said of this from ${p.look.all.curve.colonies} colonies.`
          : `${findingsReading(findings)} Going together is not causing: colonies differ in more than is written down.`}
      </Reading>
      {few || findings.findings.length === 0 ? null : <Ratios of={p} />}
      {few || findings.leftOut.length === 0 ? null : (
        <p class="small soft">
          Left out: {findings.leftOut.map((l) => `${FACT_WORDS[l.factor]} (${l.why})`).join('; ')}.
        </p>
      )}
      {few || findings.findings.length === 0 ? null : (
        <CsvLinks of={p} files={{ ratios: 'These numbers as CSV' }} />
      )}
    </Part>
  )
}

const Ratios = ({ of: p }: { of: ReviewProps }) => {
  const findings = p.look.findings.findings.map((f) => named(f, p.frame.units))
  const scale = ratios(findings.flatMap((f) => [f.lower ?? 1, f.upper ?? 1]))
  const facts = [...new Set(findings.map((f) => f.factor))]
  return (
    <table class="ranges ratios">
      <caption>How many times as fast they were lost</caption>
      <thead>
        <tr>
          <td />
          <RangeHead scale={scale}>Times the rate of losing; 1 is no difference</RangeHead>
          <th scope="col">Times, and 95 % limits</th>
        </tr>
      </thead>
      {facts.map((fact) => (
        <tbody>
          <tr class="ratio-fact">
            <th scope="rowgroup" colspan={3}>
              {capital(FACT_WORDS[fact])}, against {findings.find((f) => f.factor === fact)?.against}
            </th>
          </tr>
          {findings
            .filter((f) => f.factor === fact)
            .map((f) => (
              <Ratio finding={f} scale={scale} />
            ))}
        </tbody>
      ))}
    </table>
  )
}

const Ratio = ({ finding: f, scale }: { finding: Finding; scale: Scale }) => (
  <>
    <tr class={isClear(f) ? 'ratio ratio-clear' : 'ratio'}>
      <th scope="row">{f.label}</th>
      <td class="range-col">
        {f.ratio === null ? null : (
          <Range scale={scale} marks={[{ value: f.ratio, lower: f.lower, upper: f.upper, shape: 'dot' }]} />
        )}
      </td>
      <td>
        {f.ratio === null || f.lower === null || f.upper === null ? null : (
          <>
            <b>{times(f.ratio)}</b>{' '}
            <span class="limits-words">
              {times(f.lower)} to {times(f.upper)}
            </span>
          </>
        )}
      </td>
    </tr>
    <tr class="ratio-words">
      <td colspan={3}>{findingReading(f)}</td>
    </tr>
  </>
)
