/** Ways of loss stacked: how many of a hundred have gone each way by each day. */

import { areaPath } from '../../parts/index.ts'
import type { DayAxis, StackedWays } from './chart-data.ts'
import { DayScale, EndNames, Plot, ShareScale } from './plot.tsx'

export const WAY_NAMES = { died: 'died', absconded: 'absconded', united: 'united' } as const

/** From the bottom up, each on top of those before it. */
function layers(ways: StackedWays): { name: keyof typeof WAY_NAMES; lower: number[]; upper: number[] }[] {
  let below = ways.days.map(() => 0)
  return (Object.keys(WAY_NAMES) as (keyof typeof WAY_NAMES)[]).map((name) => {
    const lower = below
    const upper = lower.map((v, i) => v + (ways[name][i] ?? 0))
    below = upper
    return { name, lower, upper }
  })
}

/** The areas alone. */
const WayAreas = ({ ways, axis }: { ways: StackedWays; axis: DayAxis }) => (
  <>
    {layers(ways).map((l) => (
      <path class={`way-area way-${l.name}`} d={areaPath(ways.days, l.lower, l.upper, axis.end)} />
    ))}
  </>
)

export const WaysChart = ({ ways, axis, text }: { ways: StackedWays; axis: DayAxis; text: string }) => {
  const ends = layers(ways).map((l) => ({
    name: l.name,
    low: l.lower.at(-1) ?? 0,
    high: l.upper.at(-1) ?? 0,
  }))
  const gone = ends.at(-1)?.high ?? 0
  return (
    <div class="chart names-middling" data-chart="ways">
      <div class="plot" role="img" aria-label={text}>
        <ShareScale />
        <div class="plot-box">
          <Plot axis={axis}>
            <WayAreas ways={ways} axis={axis} />
          </Plot>
        </div>
        <EndNames
          names={[
            ...ends
              .filter((e) => e.high > e.low)
              .map((e) => ({
                name: WAY_NAMES[e.name],
                share: (e.low + e.high) / 2,
                class: `way-name way-${e.name}`,
              })),
            { name: 'not lost', share: (1 + gone) / 2, class: 'way-name' },
          ]}
        />
        <DayScale axis={axis} />
        <p class="plot-axis">days since intake</p>
      </div>
    </div>
  )
}
