/** What every chart stands on: the box its shapes are stretched to, and the scale beside it. */
import type { Child } from 'hono/jsx'
import { BOX } from './chart-paths.ts'

/** Lines of the grid, and what is drawn on them. */
export const PlotArea = ({ grid, children }: { grid: string; children?: Child }) => (
  <svg
    class="plot-area"
    viewBox={`0 0 ${BOX} ${BOX}`}
    preserveAspectRatio="none"
    aria-hidden="true"
    focusable="false"
  >
    <path class="grid" d={grid} />
    {children}
  </svg>
)

/** The scale beside the plot; `at`: where a value stands, '25%' from above. */
export const ValueAxis = (p: {
  steps: readonly number[]
  at: (value: number) => string
  label: (value: number) => string
}) => (
  <svg class="plot-scale" aria-hidden="true" focusable="false">
    {p.steps.map((v) => (
      <text x="100%" dx="-0.5em" y={p.at(v)} dy="0.32em" text-anchor="end">
        {p.label(v)}
      </text>
    ))}
  </svg>
)

/** '25', and '100 %' on top. */
export const shareLabel = (share: number): string => `${share * 100}${share === 1 ? ' %' : ''}`
