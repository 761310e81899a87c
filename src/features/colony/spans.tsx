/** What a colony's dates rest on: spans, and until when a sighting proves nothing. */

import type { Span } from '../../days.ts'
import { FromTo, On, SpanOf } from '../../parts/index.ts'
import type { Plan } from '../../recovery/index.ts'

const HORIZON = { eggs: 'eggs prove', open: 'open brood proves', capped: 'capped brood proves' } as const

export const Spans = ({ plan }: { plan: Plan }) => {
  const { spans, horizon, asOf } = plan
  const ambiguous = (['eggs', 'open', 'capped'] as const).filter((k) => {
    const until = horizon[k]
    return until !== null && until >= asOf
  })
  const rows: [string, Span | undefined][] = [
    ['The queen leaves her cell', spans.emergence],
    ['First egg', spans.firstEgg],
    ['Capped worker brood as proof', spans.workerBroodProof],
    ['Laying workers to be feared', spans.layingWorkerRisk],
  ]
  const shown = rows.flatMap(([label, span]) => (span === undefined ? [] : [{ label, span }]))
  if (Object.keys(spans).length === 0 && ambiguous.length === 0) return null
  return (
    <section class="section">
      <h2>What the dates say</h2>
      <dl class="stacked">
        {spans.cellsPossibleUntil === undefined ? null : (
          <>
            <dt>Cells can still be started until</dt>
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
            <dt>No capped brood (window for a mite treatment)</dt>
            <dd>
              <FromTo from={spans.broodless.from} to={spans.broodless.to} today={asOf} />
            </dd>
          </>
        )}
        {ambiguous.map((k) => (
          <>
            <dt>
              Until <On day={horizon[k] ?? asOf} today={asOf} />, {HORIZON[k]} nothing new
            </dt>
            <dd class="small">
              Other brood may explain it: what came along, or was given. On comb drawn since the intake it
              proves a layer all the same.
            </dd>
          </>
        ))}
      </dl>
      {spans.broodless ? (
        <p class="fine">
          A treatment then reaches mites that cannot hide in cells. Respirator, gloves, and the label
          registered where you are: the label is the law.
        </p>
      ) : null}
    </section>
  )
}
