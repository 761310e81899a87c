/** A calibration plot, drawn on the server, and its table. */
import type { CalibrationBin } from '../../../src/forecast/calibration-data.ts'
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

interface PlotProps {
  bins: readonly CalibrationBin[]
  /** What it shows, for those who do not see it. */
  says: string
  /** What was so: 'was so', 'found eggs'. */
  so: string
  note: string
}

export const CalibrationPlot = ({ bins, says, so, note }: PlotProps) => (
  <figure class="cal-plot">
    <div class="chart chart-unnamed">
      <div class="plot" role="img" aria-label={`Calibration: share that ${so}, by odds given. ${says}`}>
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
            <path class="grid" d={STEPS.map((v) => `M0 ${v * BOX}H${BOX}M${v * BOX} 0V${BOX}`).join('')} />
            <path class="cal-even" d={`M0 ${BOX}L${BOX} 0`} />
          </svg>
          <svg class="plot-words" aria-hidden="true" focusable="false">
            {bins.map((b) => {
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
        <p class="plot-axis">odds given; upwards: the share that {so}</p>
      </div>
    </div>
    <figcaption class="fine">On the dashed line odds mean what they say. {note}</figcaption>
  </figure>
)

export const CalibrationTable = ({
  bins,
  label,
  so,
  counted,
}: {
  bins: readonly CalibrationBin[]
  label: string
  so: string
  counted: string
}) => (
  <Wide label={label}>
    <table class="numbers">
      <thead>
        <tr>
          <th scope="col">Odds given, mean</th>
          <th scope="col">{so}</th>
          <th scope="col">95 % limits</th>
          <th scope="col">{counted}</th>
        </tr>
      </thead>
      <tbody>
        {bins.map((b) => {
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
)

const tenth = (share: number): string => `${(share * 100).toFixed(1)} %`
export const count = (n: number): string => n.toLocaleString('en')
