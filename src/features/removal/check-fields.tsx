/** What is looked at before the cut: forecast, depth, vacuum, and what somebody ticks off with their own eyes. */

import { Choices, idOf, one, TextField, Ticks } from '../../forms/index.ts'
import { unitOf } from '../../words/index.ts'
import { TICKED } from './before-cut.ts'
import { FORECAST_ROWS } from './form.ts'
import type { PartFieldsProps } from './part-fields.tsx'
import { VACUUM } from './words.ts'

const TICK_WORDS: Record<(typeof TICKED)[number], string> = {
  services: 'Wires, pipes, flues located',
  'ladder-person': 'Second person for the ladder',
  'not-alone': 'Somebody within call',
  clothing: 'Protective clothing for all',
  'sting-plan': 'Plan for stings',
  water: 'Water and shade',
  exclusion: 'Area kept clear',
  fire: 'Smoker off dry grass and dust',
  tools: 'Tools and boxes loaded',
  'queen-clip': 'Queen clip ready',
  'brood-chest': 'Lidded insulated chest for brood',
  codes: 'Local codes looked up',
}

export const CheckFields = ({ form, frame }: Omit<PartFieldsProps, 'types' | 'currency'>) => (
  <>
    <fieldset class="group">
      <legend>Heat</legend>
      <div class="field-row">
        <TextField form={form} name="on" label="Day of the forecast" type="date" />
        <TextField form={form} name="from" label="Work from" type="time" />
        <TextField form={form} name="until" label="until" type="time" />
      </div>
      <Forecast form={form} frame={frame} />
    </fieldset>
    <fieldset class="group">
      <legend>The cut</legend>
      <TextField
        form={form}
        name="cutMm"
        label="Blade set to"
        hint="No deeper than the sheathing and the small margin of the protocol."
        unit={unitOf(frame.units, 'length').symbol}
        inputmode="text"
        maxlength={10}
      />
      <TextField
        form={form}
        name="clearedBy"
        label="Cleared by the licensed trade"
        hint="Who, what, when; where wires, gas, asbestos, lead or weak beams were found."
        maxlength={300}
        wide
      />
      <Choices form={form} name="vacuum" label="How the bees come off" choices={VACUUM} across={2} />
    </fieldset>
    <fieldset class="group">
      <legend>Seen with your own eyes</legend>
      <Ticks
        form={form}
        name="done"
        label="Tick what is so now"
        choices={TICKED.map((value) => ({ value, label: TICK_WORDS[value] }))}
        across={2}
      />
    </fieldset>
  </>
)

/** Hours and temperatures side by side; a row without a temperature counts for nothing. */
const Forecast = ({ form, frame }: Pick<PartFieldsProps, 'form' | 'frame'>) => {
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
