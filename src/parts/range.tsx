/** A value with its limits on a line, in a cell of a table: the chart is the table. Positions are percentages. */
import type { Child } from 'hono/jsx'

export interface Scale {
  /** Where a value stands, 0 to 100; outside for values off the scale. */
  at: (value: number) => number
  /** `minor`: its word is left out on a phone. */
  ticks: { value: number; label: string; minor?: boolean }[]
  /** A line that matters: no difference. */
  line?: number
}

/** Shares from none to all. */
export const SHARES: Scale = {
  at: (share) => share * 100,
  ticks: [0, 0.25, 0.5, 0.75, 1].map((value) => ({
    value,
    label: String(value * 100),
    minor: value % 0.5 !== 0,
  })),
}

const RATIO_TICKS = [-6, -5, -4, -3, -2, -1, 0, 1, 2, 3, 4, 5, 6].map((n) => 2 ** n)
/** As many words as stand beside each other on a laptop. */
const MOST_WORDS = 7

/** Ratios, a doubling the same length everywhere; from the least to the most of the limits, within 1/64 and 64. */
export function ratios(limits: readonly number[]): Scale {
  const inside = limits.filter((v) => v > 0 && Number.isFinite(v))
  const least = Math.min(1 / 2, ...inside)
  const most = Math.max(2, ...inside)
  const low = RATIO_TICKS.findLast((t) => t <= least) ?? 1 / 64
  const high = RATIO_TICKS.find((t) => t >= most) ?? 64
  const [a, b] = [Math.log(low), Math.log(high)]
  const all = RATIO_TICKS.filter((t) => t >= low && t <= high)
  const shown = all.filter((t) => all.length <= MOST_WORDS || Math.abs(Math.log2(t)) % 2 === 0)
  return {
    at: (value) => ((Math.log(value) - a) / (b - a)) * 100,
    ticks: shown.map((value) => ({
      value,
      label: value < 1 ? `1/${Math.round(1 / value)}` : String(value),
      minor: shown.length > 4 && Math.abs(Math.log2(value)) % 4 !== 0,
    })),
    line: 1,
  }
}

const percent = (n: number): string => `${Math.round(n * 100) / 100}%`
const within = (n: number): number => Math.min(100, Math.max(0, n))

interface Mark {
  value: number
  lower: number | null
  upper: number | null
  /** dot: full; ring: empty diamond. */
  shape: 'dot' | 'ring'
  class?: string
}

/** Grid lines of the scale, and its marks, one below the other. */
export const Range = ({ scale, marks }: { scale: Scale; marks: Mark[] }) => (
  <svg class="range" aria-hidden="true" focusable="false">
    {scale.ticks.map((t) => (
      <line
        class={t.value === scale.line ? 'grid grid-one' : 'grid'}
        x1={percent(scale.at(t.value))}
        x2={percent(scale.at(t.value))}
        y1="0"
        y2="100%"
      />
    ))}
    {marks.map((m, i) => (
      <MarkAt mark={m} scale={scale} y={percent((100 * (i + 1)) / (marks.length + 1))} />
    ))}
  </svg>
)

const MarkAt = ({ mark, scale, y }: { mark: Mark; scale: Scale; y: string }) => {
  const [low, high] = [mark.lower, mark.upper]
  const x = scale.at(mark.value)
  return (
    <g class={`mark-${mark.shape}${mark.class === undefined ? '' : ` ${mark.class}`}`}>
      {low === null || high === null ? null : (
        <line
          class="limits"
          x1={percent(within(scale.at(low)))}
          x2={percent(within(scale.at(high)))}
          y1={y}
          y2={y}
        />
      )}
      {low === null || high === null
        ? null
        : [low, high].map((end, i) => <End x={scale.at(end)} y={y} leftwards={i === 0} />)}
      {x < 0 || x > 100 ? null : (
        <svg x={percent(x)} y={y} overflow="visible" aria-hidden="true">
          <path
            class="value"
            d={mark.shape === 'dot' ? 'M-5 0a5 5 0 1 0 10 0a5 5 0 1 0 -10 0Z' : 'M-6 0L0 -6L6 0L0 6Z'}
          />
        </svg>
      )}
    </g>
  )
}

/** A limit: a stop, or an arrow where it lies beyond the scale. */
const End = ({ x, y, leftwards }: { x: number; y: string; leftwards: boolean }) => (
  <svg x={percent(within(x))} y={y} overflow="visible" aria-hidden="true">
    <path
      class="limit-end"
      d={x >= 0 && x <= 100 ? 'M0 -4V4' : leftwards ? 'M6 -4L0 0L6 4' : 'M-6 -4L0 0L-6 4'}
    />
  </svg>
)

/** The first and the last of a scale's words stand within its picture. `at`: per cent of its width. */
const anchorAt = (at: number): 'start' | 'middle' | 'end' => (at < 4 ? 'start' : at > 96 ? 'end' : 'middle')

/** The scale's words, at the head of the column. */
const RangeScale = ({ scale }: { scale: Scale }) => (
  <svg class="range-scale" aria-hidden="true" focusable="false">
    {scale.ticks.map((t) => (
      <text
        class={t.minor ? 'minor' : undefined}
        x={percent(scale.at(t.value))}
        y="0.9em"
        text-anchor={anchorAt(scale.at(t.value))}
      >
        {t.label}
      </text>
    ))}
  </svg>
)

/** A column's head: what it shows, and its scale. */
export const RangeHead = ({ scale, children }: { scale: Scale; children?: Child }) => (
  <th scope="col" class="range-col">
    <span class="unseen">{children}</span>
    <RangeScale scale={scale} />
  </th>
)
