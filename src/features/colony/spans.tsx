/** What a colony's dates rest on: spans, and until when a sighting proves nothing. */

import type { Span } from '../../days.ts'
import { useWords } from '../../forms/index.ts'
import { FromTo, On, SpanOf } from '../../parts/index.ts'
import type { Plan } from '../../recovery/index.ts'

export const Spans = ({ plan }: { plan: Plan }) => {
  const { spans, horizon, asOf } = plan
  const { colony, dates } = useWords()
  const said = colony.dates
  const ambiguous = (['eggs', 'open', 'capped'] as const).filter((k) => {
    const until = horizon[k]
    return until !== null && until >= asOf
  })
  const rows: [string, Span | undefined][] = [
    [said.emergence, spans.emergence],
    [said.firstEgg, spans.firstEgg],
    [said.workerBroodProof, spans.workerBroodProof],
    [said.layingWorkerRisk, spans.layingWorkerRisk],
  ]
  const shown = rows.flatMap(([label, span]) => (span === undefined ? [] : [{ label, span }]))
  if (Object.keys(spans).length === 0 && ambiguous.length === 0) return null
  return (
    <section class="section">
      <h2>{said.title}</h2>
      <dl class="stacked">
        {spans.cellsPossibleUntil === undefined ? null : (
          <>
            <dt>{said.cellsUntil}</dt>
            <dd>
              <On day={spans.cellsPossibleUntil} today={asOf} />
            </dd>
          </>
        )}
        {shown.map(({ label, span }) => (
          <>
            <dt>{label}</dt>
            <dd>
              <SpanOf span={span} today={asOf} />
            </dd>
          </>
        ))}
        {spans.broodless === undefined ? null : (
          <>
            <dt>{said.broodless}</dt>
            <dd>
              <FromTo from={spans.broodless.from} to={spans.broodless.to} today={asOf} />
            </dd>
          </>
        )}
        {ambiguous.map((k) => (
          <>
            <dt>{said.provesNothing[k](dates.day(horizon[k] ?? asOf, asOf))}</dt>
            <dd class="small">{said.otherBrood}</dd>
          </>
        ))}
      </dl>
      {spans.broodless ? <p class="fine">{said.treatment}</p> : null}
    </section>
  )
}
