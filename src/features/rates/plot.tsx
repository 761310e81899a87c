/** A calibration plot, drawn on the server, and its table. */
import type { CalibrationBin } from '../../forecast/index.ts'
import { BOX, Numbers, PlotArea, shareLabel, ValueAxis, Wide } from '../../parts/index.ts'
import { wilson } from '../../statistics/index.ts'

const STEPS = [0, 0.25, 0.5, 0.75, 1]
const at = (share: number): string => `${Math.round(share * 1000) / 10}%`

/** 95 % limits of the share. */
const limits = ({ so, n }: CalibrationBin) => wilson(Math.round(so * n), n)

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
        <ValueAxis steps={STEPS} at={(v) => at(1 - v)} label={shareLabel} />
        <div class="plot-box">
          <PlotArea grid={STEPS.map((v) => `M0 ${v * BOX}H${BOX}M${v * BOX} 0V${BOX}`).join('')}>
            <path class="cal-even" d={`M0 ${BOX}L${BOX} 0`} />
          </PlotArea>
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
            // The first and the last stand within the picture.
            <text x={at(v)} y="1.1em" text-anchor={v === 0 ? 'start' : v === 1 ? 'end' : 'middle'}>
              {shareLabel(v)}
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
    <Numbers heads={['Odds given, mean', so, '95 % limits', counted]}>
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
    </Numbers>
  </Wide>
)

const tenth = (share: number): string => `${(share * 100).toFixed(1)} %`
export const count = (n: number): string => n.toLocaleString('en')
