/**
 * A chart over days with dates under it, drawn as SVG on the server: on the screen, without scripts and on paper alike.
 * The plot is stretched to the width there is; texts stand at percentages of it, so that they keep their size.
 */

import type { Child } from 'hono/jsx'
import type { Day } from '../days.ts'
import { useWords } from '../forms/index.ts'
import { BOX } from './chart-paths.ts'
import { along, below, type Stretch } from './forecast-chart.ts'
import { PlotArea, shareLabel, ValueAxis } from './plot-area.tsx'

export interface ValueScale {
  top: number
  steps: number[]
  label: (value: number) => string
}

/** Shares of all, in per cent. */
export const ALL_SHARES: ValueScale = {
  top: 1,
  steps: [0, 0.25, 0.5, 0.75, 1],
  label: shareLabel,
}

interface DaysPlotProps {
  stretch: Stretch
  scale: ValueScale
  /** What the chart says, for who cannot see it. */
  text: string
  /** Drawn where it lies within the stretch. */
  today: Day | null
  /** Shapes, in the box. */
  children?: Child
  /** Words on the plot, at percentages. */
  words?: Child
  low?: boolean
}

export const DaysPlot = (p: DaysPlotProps) => {
  const { dates, likely } = useWords()
  const { stretch: s, scale } = p
  const now = p.today === null || p.today < s.from || p.today > s.to ? null : along(s, p.today)
  return (
    <div class={p.low === true ? 'chart chart-unnamed chart-low' : 'chart chart-unnamed'}>
      <div class="plot" role="img" aria-label={p.text}>
        <ValueAxis steps={scale.steps} at={(v) => `${below(v, scale.top)}%`} label={scale.label} />
        <div class="plot-box">
          <PlotArea grid={scale.steps.map((v) => `M0 ${below(v, scale.top) * 10}H${BOX}`).join('')}>
            {p.children}
            {now === null ? null : <path class="now" d={`M${now * 10} 0V${BOX}`} />}
          </PlotArea>
          <svg class="plot-words" aria-hidden="true" focusable="false">
            {p.words}
            {now === null ? null : (
              <text class="now-word" x={`${now}%`} y="-0.35em" text-anchor={anchor(now)}>
                {likely.today}
              </text>
            )}
          </svg>
        </div>
        <svg class="plot-days" aria-hidden="true" focusable="false">
          {s.ticks.map((d) => (
            <text x={`${along(s, d)}%`} y="1.1em" text-anchor={anchor(along(s, d))}>
              {dates.axis(d)}
            </text>
          ))}
        </svg>
      </div>
    </div>
  )
}

/** Words near an edge stay inside. */
export const anchor = (at: number): 'start' | 'middle' | 'end' =>
  at < 12 ? 'start' : at > 88 ? 'end' : 'middle'
