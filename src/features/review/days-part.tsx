/** Survival on day 30 and 60, group beside group: the chart is the table. */

import { Counted, NotYet, Part, Range, RangeHead, Reading, SHARES, Share } from '../../parts/index.ts'
import { FEW, FEW_MEANS, percent, shortRange } from '../../words/index.ts'
import type { TypeOnDay } from './comparison.ts'
import { CsvLinks } from './csv-links.tsx'
import type { ReviewProps } from './part-props.ts'
import { pooledReading } from './readings.ts'
import { type LookDay, VIEW_DAYS } from './view.ts'
import { groupName } from './words.ts'

export const Days = (p: ReviewProps) => (
  <Part id="days" title="Alive at day 30 and at day 60">
    <Reading>{leaning(p)}</Reading>
    <p class="small soft">
      <Key shape="dot" /> what a group shows by itself, <Key shape="ring" /> what to expect of its next
      colony, leaning on all groups; the lines are 95 % limits.{' '}
      {p.look.groups.some((g) => g.curve.colonies < FEW) ? FEW_MEANS : ''}
    </p>
    <div class="two-days">
      {VIEW_DAYS.map((day) => (
        <OnDay of={p} day={day} />
      ))}
    </div>
    <CsvLinks of={p} files={{ days: 'These numbers as CSV' }} />
  </Part>
)

const Key = ({ shape }: { shape: 'dot' | 'ring' }) => (
  <svg class={`key mark-${shape}`} viewBox="-8 -8 16 16" aria-hidden="true" focusable="false">
    <path
      class="value"
      d={shape === 'dot' ? 'M-5 0a5 5 0 1 0 10 0a5 5 0 1 0 -10 0Z' : 'M-6 0L0 -6L6 0L0 6Z'}
    />
  </svg>
)

/** Why the two marks differ, on the group that pooling moves most. */
function leaning({ look, naming }: ReviewProps): string {
  const moved = look.onDay[30]
    .filter((t) => t.survival !== null && t.pooled !== null)
    .sort((a, b) => move(b) - move(a))[0]
  if (moved === undefined) return 'There are not two groups to lean on each other yet.'
  const name = groupName(look.choice.by, moved.name, naming)
  const said = pooledReading(30, { ...moved, name })
  return look.choice.by === 'removalType'
    ? said
    : said
        .replace(/^Leaning on all types/, 'Leaning on all groups')
        .replace('; by itself the type ', '; by itself the group ')
}

const move = (t: TypeOnDay): number => Math.abs((t.survival ?? 0) - (t.pooled?.share ?? 0))

/** One day's table; `most`: only so many groups, the largest. */
export const OnDay = ({ of: p, day, most }: { of: ReviewProps; day: LookDay; most?: number }) => {
  const all = p.look.alive[day]
  const groups = p.look.groups.length < 2 ? [] : p.look.onDay[day].slice(0, most)
  const known = groups.filter((t) => t.survival !== null || t.pooled !== null)
  const unknown = groups.filter((t) => !known.includes(t))
  return (
    <div>
      <table class="ranges">
        <caption>Alive at day {day} of those that stay, per cent</caption>
        <thead>
          <tr>
            <td />
            <RangeHead scale={SHARES}>Alive, from 0 to 100 %</RangeHead>
            <th scope="col">by itself, and leaning on all</th>
          </tr>
        </thead>
        <tbody>
          <tr class="range-all">
            <th scope="row">
              all <Counted n={all.colonies} />
            </th>
            <td class="range-col">
              <Range
                scale={SHARES}
                marks={all.survival === null ? [] : [{ ...all, value: all.survival, shape: 'dot' }]}
              />
            </td>
            <td>
              <Share of={all} />
            </td>
          </tr>
          {known.map((t) => (
            <OneGroup of={p} t={t} />
          ))}
        </tbody>
      </table>
      <NotYet day={day} names={unknown.map((t) => groupName(p.look.choice.by, t.name, p.naming))} />
    </div>
  )
}

const OneGroup = ({ of: p, t }: { of: ReviewProps; t: TypeOnDay }) => (
  <tr class={t.colonies < FEW ? 'range-few' : undefined}>
    <th scope="row">
      {groupName(p.look.choice.by, t.name, p.naming)} <Counted n={t.colonies} />
    </th>
    <td class="range-col">
      <Range
        scale={SHARES}
        marks={[
          ...(t.survival === null
            ? []
            : [{ value: t.survival, lower: t.lower, upper: t.upper, shape: 'dot' as const }]),
          ...(t.pooled === null
            ? []
            : [
                {
                  value: t.pooled.share,
                  lower: t.pooled.lower,
                  upper: t.pooled.upper,
                  shape: 'ring' as const,
                },
              ]),
        ]}
      />
    </td>
    <td>
      <Share of={t} />
      {t.pooled === null ? null : (
        <span class="leaning">
          {percent(t.pooled.share)}{' '}
          <span class="limits-words">{shortRange(t.pooled.lower, t.pooled.upper)}</span>
        </span>
      )}
    </td>
  </tr>
)
