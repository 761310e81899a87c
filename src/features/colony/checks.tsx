/** A colony's checks: what is asked now, what comes, what was answered; each with its window, reason and source. */

import { useWords } from '../../forms/index.ts'
import { Mark, SpanOf, WindowOf } from '../../parts/index.ts'
import type { Check, Plan } from '../../recovery/index.ts'
import { afterQuiet, coming, inUnits, isQuiet, lidStaysOn, live, type Units } from '../../words/index.ts'

interface ChecksProps {
  plan: Plan
  units: Units
}

export const Checks = ({ plan, units }: ChecksProps) => {
  const past = plan.checks.filter((c) => c.status === 'answered' || c.status === 'void')
  return (
    <>
      <ol class="checks">
        {[...live(plan), ...coming(plan)].map((c) => (
          <CheckCard check={c} plan={plan} units={units} />
        ))}
      </ol>
      {past.length === 0 ? null : (
        <details class="caution">
          <summary>{useWords().colony.checks.past(past.length)}</summary>
          <ol class="checks">
            {past.map((c) => (
              <CheckCard check={c} plan={plan} units={units} />
            ))}
          </ol>
        </details>
      )}
    </>
  )
}

const LidFirst = ({ check, plan }: { check: Check; plan: Plan }) => {
  const from = check.status === 'answered' || check.status === 'void' ? null : afterQuiet(check, plan)
  if (from === null || plan.quiet === null) return null
  const { colony, dates } = useWords()
  const day = dates.day(from, plan.asOf)
  return (
    <p>
      {isQuiet(plan)
        ? colony.checks.notWhileShut(day)
        : colony.checks.shutFrom(dates.day(plan.quiet.from, plan.asOf), day)}
    </p>
  )
}

const CheckCard = ({ check, plan, units }: ChecksProps & { check: Check }) => {
  const { reasons, trade } = useWords()
  return (
    <li class={`check check-${check.status}`}>
      <p class="check-name">
        <strong>{trade.rules[check.rule].name}</strong>
        <Mark shape={check.status} />
        {lidStaysOn(check, plan) && check.status !== 'answered' ? <Mark shape="lid" /> : null}
      </p>
      <p>
        {check.rule === 'move-out' && check.status === 'waiting' ? (
          <SpanOf
            span={{ earliest: check.opens, likely: check.due, latest: check.closes }}
            today={plan.asOf}
          />
        ) : (
          <WindowOf check={check} today={plan.asOf} />
        )}
      </p>
      <LidFirst check={check} plan={plan} />
      <p class="soft">{inUnits(reasons.all([check.reason]), units)}</p>
      <p class="fine">{trade.sources[check.rule]}</p>
    </li>
  )
}
