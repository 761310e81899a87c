/** What is looked at before the cut: forecast, depth, vacuum, and what somebody ticks off with their own eyes. */

import { type DrawnIn, Fields, Group, idOf, one } from '../../forms/index.ts'
import { unitOf } from '../../words/index.ts'
import { PART_FIELDS } from './fields.ts'
import { FORECAST_ROWS } from './form.ts'

export const CheckFields = (p: DrawnIn) => (
  <>
    <Group legend="Heat">
      <Fields {...p} of={PART_FIELDS.check} show={[['on', 'from', 'until'], 'hottestC']} />
      <Forecast {...p} />
    </Group>
    <Group legend="The cut">
      <Fields {...p} of={PART_FIELDS.check} show={['cutMm', 'vacuum']} />
    </Group>
    <Group legend="Seen with your own eyes">
      <Fields {...p} of={PART_FIELDS.check} show={['done']} />
    </Group>
  </>
)

/** Hours and temperatures side by side; a row without a temperature counts for nothing. */
const Forecast = ({ form, frame }: DrawnIn) => {
  const { symbol } = unitOf(frame.units, 'temperature')
  const bad = (name: string) => form.problems.find((p) => p.field === name)?.message
  return (
    <div class="field">
      <p class="forecast-title" id="forecast-label">
        Forecast by the hour: time, then {symbol}
      </p>
      <ul class="forecast" aria-labelledby="forecast-label">
        {Array.from({ length: FORECAST_ROWS }, (_, i) => {
          const [at, c] = [`hours.${i}.at`, `hours.${i}.c`]
          const problem = bad(c) ?? bad(at)
          return (
            <li class={problem === undefined ? '' : 'has-problem'}>
              <input
                id={idOf(at)}
                name={at}
                type="text"
                inputmode="numeric"
                maxlength={5}
                autocomplete="off"
                class="forecast-hour"
                aria-label={`Hour ${i + 1}`}
                value={one(form.typed, at)}
              />
              <input
                id={idOf(c)}
                name={c}
                type="text"
                inputmode="decimal"
                maxlength={6}
                autocomplete="off"
                aria-label={`Temperature of hour ${i + 1}, ${symbol}`}
                value={one(form.typed, c)}
              />
              {problem === undefined ? null : <span class="problem">{problem}</span>}
            </li>
          )
        })}
      </ul>
    </div>
  )
}
