/**
 * A chart over days, drawn as SVG on the server: without scripts and on paper this is the chart. The browser's canvas
 * (web/islands/review-charts.ts) covers the plot only; axes, names and the numbers at risk stay these.
 *
 * The plot is stretched to the width there is; texts stand at percentages of it, so that they keep their size.
 */

import type { Child } from 'hono/jsx'
import {
  BOX,
  bandPath,
  barPath,
  labelHeights,
  PlotArea,
  shareLabel,
  stepPath,
  TOP,
  tickPath,
  ValueAxis,
} from '../../parts/index.ts'
import type { DayAxis, Line } from './chart-data.ts'
import { VIEW_DAYS } from './view.ts'

const SHARES = [0, 0.25, 0.5, 0.75, 1]

const percent = (n: number): string => `${Math.round(n * 1000) / 1000}%`
const across = (day: number, axis: DayAxis): string => percent((day / axis.end) * 100)
const down = (share: number): string => percent((1 - share / TOP) * 100)

/** Lines of the grid, and what is drawn on them. */
export const Plot = ({ axis, children }: { axis: DayAxis; children?: Child }) => (
  <PlotArea grid={gridPath(axis)}>{children}</PlotArea>
)

const gridPath = (axis: DayAxis): string =>
  [
    ...SHARES.map((s) => `M0 ${BOX * (1 - s / TOP)}H${BOX}`),
    ...axis.days.map((d) => `M${(d / axis.end) * BOX} 0V${BOX}`),
  ].join('')

interface StepLineProps {
  line: Line
  place: number
  axis: DayAxis
  /** How its limits are drawn: as an area, or as bars on the days that are told where several lines are compared. */
  limits?: 'area' | 'bars' | 'none'
}

/** Between the bars of two lines, in thousandths of the plot. */
const BAR_APART = 11

/** One line with its limits and its ticks; `place` chooses colour and dashes (src/parts/charts.css). */
export const StepLine = ({ line, place, axis, limits = 'area' }: StepLineProps) => {
  const band = limits === 'area' ? bandPath(line.points, axis.end) : ''
  const bars = limits === 'bars' ? barPath(line.points, VIEW_DAYS, axis.end, place * BAR_APART) : ''
  const ticks = tickPath(line.left, axis.end)
  return (
    <g class={`series series-${place}`}>
      {band === '' ? null : <path class="band" d={band} />}
      <path class="step" d={stepPath(line.points, axis.end)} />
      {bars === '' ? null : <path class="limit-bar" d={bars} />}
      {ticks === '' ? null : <path class="left-tick" d={ticks} />}
    </g>
  )
}

/** The scale beside the plot, in per cent. */
export const ShareScale = () => <ValueAxis steps={SHARES} at={down} label={shareLabel} />

/** The days under the plot. */
export const DayScale = ({ axis }: { axis: DayAxis }) => (
  <svg class="plot-days" aria-hidden="true" focusable="false">
    {axis.days.map((d) => (
      <text x={across(d, axis)} y="1em" text-anchor="middle">
        {d}
      </text>
    ))}
  </svg>
)

interface Name {
  name: string
  /** The share at which its line ends. */
  share: number
  class: string
}

/** Least distance of names, of the plot's height: a line of text on the lowest chart. */
const NAME_APART = 74

/** Names beside the ends of the lines: no legend to look up. */
export const EndNames = ({ names }: { names: Name[] }) => {
  const heights = labelHeights(
    names.map((n) => n.share),
    NAME_APART,
  )
  return (
    <svg class="plot-names" aria-hidden="true" focusable="false">
      {names.map((n, i) => (
        <text class={n.class} x="0" dx="0.45em" y={percent((heights[i] ?? 0) / 10)} dy="0.32em">
          {n.name}
        </text>
      ))}
    </svg>
  )
}

/** Numbers under the axis, each below its day. */
const RiskRow = ({ line, place, axis }: { line: Line; place: number; axis: DayAxis }) => (
  <div class={`risk-row series-${place}`}>
    <svg class="swatch" viewBox="0 0 30 10" aria-hidden="true" focusable="false">
      <path class="step" d="M0 5H30" />
    </svg>
    <svg class="risk-numbers" aria-hidden="true" focusable="false">
      {axis.days.map((d, i) => (
        <text x={across(d, axis)} y="1em" text-anchor="middle">
          {line.atRisk[i] ?? 0}
        </text>
      ))}
    </svg>
    <span class="risk-word">{line.name}</span>
  </div>
)

interface StepChartProps {
  /** Name of the chart's data in the page, for the browser's canvas. */
  id: string
  axis: DayAxis
  lines: Line[]
  /** What the chart says, for who cannot see it. */
  text: string
  /** What is counted under the axis. */
  counted: string
  /** Under the axis. */
  days?: string
  /** Beside the lines; left out when there is one line. */
  named?: boolean
}

/** How wide the column of names is. */
function roomFor(names: readonly string[]): string {
  const longest = Math.max(0, ...names.map((n) => n.length))
  return longest <= 7 ? 'names-short' : longest <= 11 ? 'names-middling' : 'names-long'
}

/** Step lines with limits, names at their ends and numbers at risk under the axis. */
export const StepChart = (p: StepChartProps) => (
  <div
    class={`chart ${p.named === false ? 'chart-unnamed' : roomFor(p.lines.map((l) => l.name))}`}
    data-chart={p.id}
  >
    <div class="plot" role="img" aria-label={p.text}>
      <ShareScale />
      <div class="plot-box">
        <Plot axis={p.axis}>
          {p.lines
            .map((line, place) => (
              // Where lines are compared, the limits of them all together would only hide the others'.
              <StepLine
                line={line}
                place={place}
                axis={p.axis}
                limits={p.lines.length === 1 ? 'area' : place > 0 ? 'bars' : 'none'}
              />
            ))
            .reverse()}
        </Plot>
      </div>
      {p.named === false ? null : (
        <EndNames
          names={p.lines.map((line, place) => ({
            name: line.name,
            share: line.points.at(-1)?.[1] ?? 1,
            class: `series-${place}`,
          }))}
        />
      )}
      <DayScale axis={p.axis} />
      <p class="plot-axis">{p.days ?? 'days since intake'}</p>
    </div>
    <div class="risk" aria-hidden="true">
      <p class="risk-head">{p.counted}</p>
      {p.lines.map((line, place) => (
        <RiskRow line={line} place={place} axis={p.axis} />
      ))}
    </div>
  </div>
)
