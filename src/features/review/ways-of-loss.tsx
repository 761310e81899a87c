/** How colonies were lost: the stacked chart, and each group on day 30 and 60. */

import { Counted, NotYet, Numbers, Part, Reading, Wide } from '../../parts/index.ts'
import { incidenceLimits, stepAt } from '../../statistics/index.ts'
import { percent, shortRange } from '../../words/index.ts'
import { WAYS } from './cohort.ts'
import { CsvLinks } from './csv-links.tsx'
import { nameIn, type ReviewProps } from './part-props.ts'
import { waysReading } from './readings.ts'
import { type Group, type LookDay, VIEW_DAYS } from './view.ts'
import { WaysChart } from './ways-plot.tsx'

export const WaysOfLoss = (p: ReviewProps) => {
  const reading = waysReading('', 60, p.look.all.review)
  return (
    <Part id="ways" title="Ways of loss">
      <Reading>{reading}</Reading>
      <WaysChart
        ways={p.charts.ways}
        axis={p.charts.axis}
        text={`Share of colonies gone by each way, stacked, by days since intake. ${reading}`}
      />
      <p class="readout" data-readout="ways">
        Colonies that moved out count as not lost up to the day they left: the shares say what would be had
        none moved out.
        {p.look.choice.unitedIsLoss ? ' United counts as a loss in all else on this page.' : ''}
      </p>
      {VIEW_DAYS.map((day) => (
        <WaysTable of={p} day={day} />
      ))}
      <CsvLinks of={p} files={{ ways: 'These numbers as CSV' }} />
    </Part>
  )
}

const WaysTable = ({ of: p, day }: { of: ReviewProps; day: LookDay }) => {
  const groups = [p.look.all, ...(p.look.groups.length > 1 ? p.look.groups : [])]
  const known = groups.filter((g) => isFollowed(g, day))
  return (
    <>
      {known.length === 0 ? null : (
        <Wide label={`Ways of loss by day ${day}`}>
          <Numbers caption={<>By day {day}, had none moved out</>} heads={[null, ...WAYS]}>
            {known.map((g) => (
              <tr>
                <th scope="row">
                  {nameIn(p, g)} <Counted n={g.curve.colonies} />
                </th>
                <WayCells group={g} day={day} />
              </tr>
            ))}
          </Numbers>
        </Wide>
      )}
      <NotYet day={day} names={groups.filter((g) => !known.includes(g)).map((g) => nameIn(p, g))} />
    </>
  )
}

/** Somebody was still followed on that day, or all were lost before. */
const isFollowed = ({ ways: { days, free } }: Group, day: LookDay): boolean =>
  (days.at(-1) ?? -1) >= day || free.at(-1) === 0

const WayCells = ({ group, day }: { group: Group; day: LookDay }) => {
  const i = stepAt(group.ways.days, day)
  return (
    <>
      {group.ways.ways.map((w) => {
        const [share, stdErr] = [w.share[i] ?? 0, w.stdErr[i] ?? 0]
        const limits = stdErr === 0 ? null : incidenceLimits(share, stdErr)
        return (
          <td>
            {percent(share)}
            {limits === null ? null : <span class="limits-words"> {shortRange(...limits)}</span>}
          </td>
        )
      })}
    </>
  )
}
