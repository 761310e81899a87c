/** How far the odds can be trusted: the calibration plot, drawn on the server. */
import { CALIBRATION, type CalibrationBin } from '../../../src/forecast/calibration-data.ts'
import { percent } from '../../../src/review/readings.ts'
import { BOX } from '../../charts/paths.ts'
import { Wide } from '../review/part.tsx'

const STEPS = [0, 0.25, 0.5, 0.75, 1]
const at = (share: number): string => `${Math.round(share * 1000) / 10}%`
const label = (v: number): string => `${v * 100}${v === 1 ? ' %' : ''}`

/** 95 % limits of a share of n (Wilson 1927). */
function limits({ so, n }: CalibrationBin): [number, number] {
  const z = 1.96
  const middle = (so + (z * z) / (2 * n)) / (1 + (z * z) / n)
  const half = (z / (1 + (z * z) / n)) * Math.sqrt((so * (1 - so)) / n + (z * z) / (4 * n * n))
  return [Math.max(0, middle - half), Math.min(1, middle + half)]
}

export const Trust = () => {
  const { believed: c, elsewhere } = CALIBRATION
  const { atSeventy: s } = c
  const words = `Of ${count(s.n)} odds of about 70 %, ${percent(s.so)} were so.`
  return (
    <section class="section" id="trust">
      <h2>How far they can be trusted</h2>
      <p class="reading">
        <b>{words}</b> Odds were given for {count(c.colonies)} simulated colonies every fourth day, knowing
        only what had been seen by then, and held against what was so.
      </p>
      <figure class="cal-plot">
        <div class="chart chart-unnamed">
          <div class="plot" role="img" aria-label={`Calibration: share that was so, by odds given. ${words}`}>
            <svg class="plot-scale" aria-hidden="true" focusable="false">
              {STEPS.map((v) => (
                <text x="100%" dx="-0.5em" y={at(1 - v)} dy="0.32em" text-anchor="end">
                  {label(v)}
                </text>
              ))}
            </svg>
            <div class="plot-box">
              <svg
                class="plot-area"
                viewBox={`0 0 ${BOX} ${BOX}`}
                preserveAspectRatio="none"
                aria-hidden="true"
                focusable="false"
              >
                <path
                  class="grid"
                  d={STEPS.map((v) => `M0 ${v * BOX}H${BOX}M${v * BOX} 0V${BOX}`).join('')}
                />
                <path class="cal-even" d={`M0 ${BOX}L${BOX} 0`} />
              </svg>
              <svg class="plot-words" aria-hidden="true" focusable="false">
                {c.bins.map((b) => {
                  const [low, high] = limits(b)
                  return (
                    <>
                      <line
                        class="cal-limit"
                        x1={at(b.given)}
                        x2={at(b.given)}
                        y1={at(1 - low)}
                        y2={at(1 - high)}
                      />
                      <circle class="cal-dot" cx={at(b.given)} cy={at(1 - b.so)} r="5" />
                    </>
                  )
                })}
              </svg>
            </div>
            <svg class="plot-days" aria-hidden="true" focusable="false">
              {STEPS.map((v) => (
                <text x={at(v)} y="1.1em" text-anchor="middle">
                  {label(v)}
                </text>
              ))}
            </svg>
            <p class="plot-axis">odds given; upwards: the share that was so</p>
          </div>
        </div>
        <figcaption class="fine">
          On the dashed line odds mean what they say. Upright lines: 95 % limits, as if odds of one colony
          were independent.
        </figcaption>
      </figure>
      <p>
        The likeliest of the seven was so in {percent(c.right)} of {count(c.forecasts)} forecasts. Brier score{' '}
        {c.brier.toFixed(3)}: 0 is perfect, and giving everybody the overall shares would score{' '}
        {c.brierOfBaseRates.toFixed(3)}.
      </p>
      <details class="caution">
        <summary>Calibration in numbers, and where rates are others</summary>
        <Wide label="Calibration">
          <table class="numbers">
            <thead>
              <tr>
                <th scope="col">Odds given, mean</th>
                <th scope="col">Was so</th>
                <th scope="col">95 % limits</th>
                <th scope="col">Odds</th>
              </tr>
            </thead>
            <tbody>
              {c.bins.map((b) => {
                const [low, high] = limits(b)
                return (
                  <tr>
                    <th scope="row">{tenth(b.given)}</th>
                    <td>{tenth(b.so)}</td>
                    <td>
                      {tenth(low)} to {tenth(high)}
                    </td>
                    <td>{count(b.n)}</td>
                  </tr>
                )
              })}
            </tbody>
          </table>
        </Wide>
        <Wide label="Yards with other rates">
          <table class="numbers">
            <caption>Yards whose true rates are others than the odds believe</caption>
            <thead>
              <tr>
                <th scope="col">Where</th>
                <th scope="col">Of those given 70 %</th>
                <th scope="col">Brier score</th>
                <th scope="col">Knowing the true rates</th>
              </tr>
            </thead>
            <tbody>
              {elsewhere.map((e) => (
                <tr>
                  <th scope="row">{e.name}</th>
                  <td>{percent(e.atSeventy.so)}</td>
                  <td>{e.brier.toFixed(3)}</td>
                  <td>{e.brierOfKnowing.toFixed(3)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Wide>
        <p class="fine">
          Made by <code>{CALIBRATION.command}</code>, seed {CALIBRATION.seed}. The simulator plays colonies
          with these rates, written apart from the odds. It shows that the odds are reckoned rightly and how
          wrong rates hurt; it cannot show that the rates are yours. In a real yard nobody knows what was so
          on each day, so its own calibration cannot be drawn; its rates can be learned, below.
        </p>
      </details>
    </section>
  )
}

const tenth = (share: number): string => `${(share * 100).toFixed(1)} %`
const count = (n: number): string => n.toLocaleString('en')
