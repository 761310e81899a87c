/** What a colony's dates rest on: spans, and until when a sighting proves nothing. */
import type { Plan } from '../../src/recovery/plan-types.ts'
import { dayWords, fromTo, spanWords } from '../words/dates.ts'

const HORIZON = { eggs: 'eggs prove', open: 'open brood proves', capped: 'capped brood proves' } as const

export const Spans = ({ plan }: { plan: Plan }) => {
  const { spans, horizon, asOf } = plan
  const ambiguous = (['eggs', 'open', 'capped'] as const).filter((k) => {
    const until = horizon[k]
    return until !== null && until >= asOf
  })
  const rows: [string, string | null][] = [
    [
      'Cells can still be started until',
      spans.cellsPossibleUntil ? dayWords(spans.cellsPossibleUntil, asOf) : null,
    ],
    ['The queen leaves her cell', spans.emergence ? spanWords(spans.emergence, asOf) : null],
    ['First egg', spans.firstEgg ? spanWords(spans.firstEgg, asOf) : null],
    ['Capped worker brood as proof', spans.workerBroodProof ? spanWords(spans.workerBroodProof, asOf) : null],
    ['Laying workers to be feared', spans.layingWorkerRisk ? spanWords(spans.layingWorkerRisk, asOf) : null],
    [
      'No capped brood (window for a mite treatment)',
      spans.broodless ? fromTo(spans.broodless.from, spans.broodless.to, asOf) : null,
    ],
  ]
  const shown = rows.filter((r): r is [string, string] => r[1] !== null)
  if (shown.length === 0 && ambiguous.length === 0) return null
  return (
    <section class="section">
      <h2>What the dates say</h2>
      <dl class="stacked">
        {shown.map(([label, value]) => (
          <>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </>
        ))}
        {ambiguous.map((k) => (
          <>
            <dt>
              Until {dayWords(horizon[k] ?? asOf, asOf)}, {HORIZON[k]} nothing new
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
