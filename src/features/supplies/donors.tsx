/** Who can give a frame of eggs or brood, and who cannot, with the reason. */

import type { Day } from '../../days.ts'
import { DEFAULT_DONOR_RULES, type Donor, type NeedByDay } from '../../forecast/index.ts'
import { Numbers, Wide } from '../../parts/index.ts'
import { dayWords, plain, quarters } from '../../words/index.ts'

interface DonorsProps {
  donors: Donor[]
  today: Day
  pathOf: (tag: string) => string
  eggFrames: NeedByDay[]
}

const MOST_ROWS = 20

export const Donors = ({ donors, today, pathOf, eggFrames }: DonorsProps) => {
  const can = donors.filter((d) => d.spare > 0)
  const cannot = donors.filter((d) => d.spare === 0)
  const spare = can.reduce((sum, d) => sum + d.spare, 0)
  const week = eggFrames[Math.min(7, eggFrames.length - 1)]
  const r = DEFAULT_DONOR_RULES
  return (
    <section class="section" id="donors">
      <h2>Donors</h2>
      <p class="reading">
        {can.length === 0
          ? 'No colony can give a frame today.'
          : `${can.length} ${can.length === 1 ? 'colony' : 'colonies'} can spare ${spare} ${spare === 1 ? 'frame' : 'frames'} today.`}
        {week === undefined
          ? ''
          : ` Within a week about ${plain(week.expected, 1)} will be asked for, nine times in ten at most ${week.ninety}.`}
      </p>
      {can.length === 0 ? null : (
        <Wide label="Colonies that can give a frame">
          <Numbers heads={['Colony', 'Frames of bees', 'Can spare', 'Last used']}>
            {can.slice(0, MOST_ROWS).map((d) => (
              <tr>
                <th scope="row">
                  <a class="tag tall" href={pathOf(d.tag)}>
                    {d.tag}
                  </a>
                </th>
                <td>{d.framesOfBees === null ? '' : quarters(d.framesOfBees)}</td>
                <td>{d.spare}</td>
                <td>{d.lastUsed === null ? 'never' : dayWords(d.lastUsed, today)}</td>
              </tr>
            ))}
          </Numbers>
        </Wide>
      )}
      {cannot.length === 0 ? null : (
        <details class="caution">
          <summary>
            {cannot.length} {cannot.length === 1 ? 'colony that cannot' : 'colonies that cannot'}, and why
          </summary>
          <Wide label="Colonies that cannot give">
            <Numbers class="why-not" heads={['Colony', 'Why not', 'Last used']}>
              {cannot.slice(0, 3 * MOST_ROWS).map((d) => (
                <tr class="donor-no">
                  <th scope="row">
                    <a class="tag tall" href={pathOf(d.tag)}>
                      {d.tag}
                    </a>
                  </th>
                  <td>{d.reasons.join('; ')}</td>
                  <td>{d.lastUsed === null ? 'never' : dayWords(d.lastUsed, today)}</td>
                </tr>
              ))}
            </Numbers>
          </Wide>
        </details>
      )}
      <p class="fine">
        A donor has {r.minFramesOfBees + r.framesOfBeesPerFrame} frames of bees or more and keeps{' '}
        {r.minFramesOfBees}, was counted within {r.lookValidDays} days, has a laying queen for certain, and
        rests {r.restDays} days after giving (common practice; the numbers are judgement). Where brood disease
        was suspected and not cleared, or mites are over {r.miteThreshold} in 100, nothing is taken. Look at
        the brood again before you give it.
      </p>
    </section>
  )
}
