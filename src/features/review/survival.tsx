/** Survival curves: the large chart, each group by itself, and every step in tables. */

import { Counted, Numbers, Part, Reading, Wide } from '../../parts/index.ts'
import { FEW, fewWords, percent, shortRange } from '../../words/index.ts'
import { survivalLine } from './chart-data.ts'
import { CHOICE_FORM } from './choose.tsx'
import { shareAlive } from './comparison.ts'
import { CsvLinks } from './csv-links.tsx'
import { nameIn, type ReviewProps } from './part-props.ts'
import { Plot, StepChart, StepLine } from './plot.tsx'
import { aliveReading, CURVE_CAUTION, logRankReading } from './readings.ts'
import type { Group } from './view.ts'
import { MOST_DRAWN } from './view.ts'
import { aboutGroup, COHORT_WORDS } from './words.ts'

export const Survival = (p: ReviewProps) => {
  const { look, charts } = p
  const reading = comparison(p)
  const beyond = (look.all.curve.steps.at(-1)?.day ?? 0) > charts.axis.end
  return (
    <Part
      id="survival"
      title={`Alive by day${look.groups.length > 1 ? `, by ${COHORT_WORDS[look.choice.by]}` : ''}`}
    >
      <Reading>{reading}</Reading>
      <StepChart
        id="survival"
        axis={charts.axis}
        lines={charts.survival}
        counted="Colonies still followed on that day"
        named={charts.survival.length > 1}
        text={`Share of colonies not lost, by days since intake. ${reading} The tables below hold every value.`}
      />
      <p class="readout" data-readout="survival">
        {charts.survival.length > 1
          ? 'Bars on days 30 and 60: 95 % limits of each group'
          : 'Shaded: 95 % limits'}
        . Small ticks: colonies that left, or are still here, counted up to that day.
        {beyond ? ` Drawn up to day ${charts.axis.end}, where few are left; the tables go on.` : ''}
      </p>
      <p class="small">{CURVE_CAUTION}</p>
      <WhichLines {...p} />
      <Tables {...p} />
      <CsvLinks of={p} files={{ curves: 'These numbers as CSV' }} />
      {look.groups.length > 1 ? <Multiples {...p} /> : null}
    </Part>
  )
}

/** Whether the groups differ. */
export function comparison({ look }: Pick<ReviewProps, 'look'>): string {
  if (look.groups.length < 2) return aliveReading('', 30, look.alive[30])
  const smallest = Math.min(...look.groups.map((g) => g.curve.colonies))
  const text = logRankReading(look.logRank, smallest)
  return look.choice.by === 'removalType' ? text : text.replaceAll(/\btypes\b/g, 'groups')
}

/** Boxes that choose the lines of the large chart; they belong to the form on top. */
const WhichLines = (p: ReviewProps) => {
  const { groups, drawn } = p.look
  if (groups.length < 2) return null
  return (
    <details class="caution">
      <summary>Choose the lines</summary>
      <fieldset class="field choices">
        <legend class="unseen">Lines in the chart beside “all”, at most {MOST_DRAWN}</legend>
        <p class="hint">At most {MOST_DRAWN} beside “all”; more cannot be told apart.</p>
        <div class="taps taps-3">
          {groups.map((g) => (
            <label class="tap">
              <input
                type="checkbox"
                name="show"
                value={g.name}
                form={CHOICE_FORM}
                checked={drawn.includes(g)}
              />
              <span>
                {nameIn(p, g)} ({g.curve.colonies})
              </span>
            </label>
          ))}
        </div>
      </fieldset>
      <p class="buttons">
        <button class="button" type="submit" form={CHOICE_FORM}>
          Draw these
        </button>
      </p>
    </details>
  )
}

/** Each group by itself, over all colonies in grey. */
const Multiples = (p: ReviewProps) => {
  const { look, charts } = p
  const whole = { ...survivalLine('all', look.all.curve, look.all.counts, charts.axis), left: [] }
  return (
    <>
      <h3 class="multiples-title">Each by itself</h3>
      <p class="small soft">
        The line and its limits, over all colonies (thin). Up to day {charts.axis.end}.
      </p>
      <ul class="multiples">
        {look.groups.map((g) => (
          <li class={g.curve.colonies < FEW ? 'multiple multiple-few' : 'multiple'}>
            <h4>
              {nameIn(p, g)} <Counted n={g.curve.colonies} />
            </h4>
            <Plot axis={charts.axis}>
              <g class="backdrop">
                <StepLine line={whole} place={0} axis={charts.axis} limits="none" />
              </g>
              <StepLine
                line={survivalLine('', g.curve, g.counts, charts.axis)}
                place={1}
                axis={charts.axis}
              />
            </Plot>
            <p class="small">{aliveWords(p, g)}</p>
          </li>
        ))}
      </ul>
    </>
  )
}

const aliveWords = (p: Pick<ReviewProps, 'look' | 'naming'>, g: Group): string =>
  aboutGroup(p.look.choice.by, g.name, p.naming, (name) => aliveReading(name, 30, shareAlive(g.curve, 30)))

/** Every step of every curve. */
const Tables = (p: ReviewProps) => (
  <details class="caution">
    <summary>Every day in numbers</summary>
    {[p.look.all, ...(p.look.groups.length > 1 ? p.look.groups : [])].map((g) => (
      <Wide label={`Days of ${nameIn(p, g)}`}>
        <Numbers
          caption={
            <>
              {g.name === '' ? 'All colonies' : nameIn(p, g)} ({g.curve.colonies}
              {fewWords(g.curve.colonies)})
            </>
          }
          heads={['Day', 'Followed', 'Lost', 'Left', 'Alive', 'Limits, %']}
        >
          {g.curve.steps.map((s) => (
            <tr>
              <th scope="row">{s.day}</th>
              <td>{s.atRisk}</td>
              <td>{s.lost || ''}</td>
              <td>{s.left || ''}</td>
              <td>{percent(s.survival)}</td>
              <td>{s.lower === null || s.upper === null ? '' : shortRange(s.lower, s.upper)}</td>
            </tr>
          ))}
        </Numbers>
      </Wide>
    ))}
  </details>
)
