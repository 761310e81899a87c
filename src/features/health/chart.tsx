/** Washes over time: a dot for the rate, a bar for its limits, a step line for the threshold. Across in per cent, down in pixels. */

import { addDays, type Day, daysBetween, later } from '../../days.ts'
import { useWords } from '../../forms/index.ts'
import { miteThresholdOn, type Protocol } from '../../recovery/index.ts'
import { plain } from '../../words/index.ts'
import type { Wash } from './mites.ts'
import { rateWords } from './words.ts'

const TOP = 14
const HEIGHT = 150
const LEAST_DAYS = 28

export const WashChart = ({
  washes,
  protocol,
  today,
}: {
  washes: Wash[]
  protocol: Protocol
  today: Day
}) => {
  const words = useWords()
  const { dates } = words
  const said = words.health.mites
  const first = washes[0]
  if (first === undefined) return null
  const from = addDays(first.on, -2)
  const to = later(addDays(today, 2), addDays(from, LEAST_DAYS))
  const days = daysBetween(from, to)
  const steps = thresholdSteps(from, to, protocol)
  const most = Math.max(...washes.map((w) => w.upper), ...steps.map((s) => s.threshold)) * 1.1
  const x = (day: Day): string => `${Number(((daysBetween(from, day) / days) * 100).toFixed(2))}%`
  const y = (rate: number): number => Number((TOP + HEIGHT * (1 - rate / most)).toFixed(1))
  const each = washes.map((w) => `${dates.day(w.on, today)}: ${rateWords(w, words)}`).join('; ')
  return (
    <figure class="wash-chart">
      <svg width="100%" height={TOP + HEIGHT + 24} role="img" aria-label={said.chart(each)}>
        {[0, ...ticksTo(most)].map((n) => (
          <>
            <line class="wc-grid" x1="0" x2="100%" y1={y(n)} y2={y(n)} />
            <text class="wc-small" x="2" y={y(n) - 3}>
              {plain(n)}
            </text>
          </>
        ))}
        {steps.map((s) => (
          <line class="wc-threshold" x1={x(s.from)} x2={x(s.to)} y1={y(s.threshold)} y2={y(s.threshold)} />
        ))}
        <text
          class="wc-small wc-word"
          x="100%"
          dx="-4"
          y={y(steps.at(-1)?.threshold ?? 0) - 5}
          text-anchor="end"
        >
          {said.thresholdWord}
        </text>
        {washes.map((w) => (
          <g class={`wc-wash wc-${w.stands}`}>
            <line x1={x(w.on)} x2={x(w.on)} y1={y(w.upper)} y2={y(w.lower)} />
            <circle cx={x(w.on)} cy={y(w.rate)} r="4.5" />
            <text class="wc-small" x={x(w.on)} dx="8" y={y(w.rate) + 4}>
              {plain(w.rate, 1)}
            </text>
          </g>
        ))}
        {[washes[0], washes.length > 1 ? washes.at(-1) : undefined].map((w) =>
          w === undefined ? null : (
            <text class="wc-small" x={x(w.on)} y={TOP + HEIGHT + 18} text-anchor="middle">
              {dates.axis(w.on)}
            </text>
          ),
        )}
      </svg>
      <figcaption class="fine">{said.caption}</figcaption>
    </figure>
  )
}

/** Round steps up the side. */
function ticksTo(most: number): number[] {
  const step = most > 20 ? 10 : most > 8 ? 4 : most > 4 ? 2 : 1
  return Array.from({ length: Math.floor(most / step) }, (_, i) => (i + 1) * step)
}

/** The threshold month by month, joined where it is the same. */
function thresholdSteps(from: Day, to: Day, protocol: Protocol): { from: Day; to: Day; threshold: number }[] {
  const steps: { from: Day; to: Day; threshold: number }[] = []
  for (let day = from; day <= to; day = addDays(day, 1)) {
    const threshold = miteThresholdOn(protocol, day)
    const last = steps.at(-1)
    if (last !== undefined && last.threshold === threshold) last.to = day
    else steps.push({ from: day, to: day, threshold })
  }
  return steps
}
