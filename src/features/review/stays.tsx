/** Days in the yard, whatever the way of leaving. */

import { Numbers, Part, Reading, Wide } from '../../parts/index.ts'
import type { QuantileDay } from '../../statistics/index.ts'
import { fewWords } from '../../words/index.ts'
import { CsvLinks } from './csv-links.tsx'
import { stayReading } from './findings-reading.ts'
import { nameIn, type ReviewProps } from './part-props.ts'

export const Stays = (p: ReviewProps) => (
  <Part id="stays" title="Days in the yard">
    <Reading>{stayReading(p.look.all.stay)}</Reading>
    <Wide label="Days in the yard by group">
      <Numbers
        caption="Day by which a quarter, half, three quarters had left"
        heads={['Left so far', 'A quarter', 'Half', 'Three quarters']}
      >
        {[p.look.all, ...(p.look.groups.length > 1 ? p.look.groups : [])].map((g) => (
          <tr>
            <th scope="row">
              {nameIn(p, g)}{' '}
              <span class="soft nowrap">
                {g.stay.left} of {g.stay.colonies}
                {fewWords(g.stay.colonies)}
              </span>
            </th>
            <td>{g.stay.quarter.day ?? 'not yet'}</td>
            <td>{half(g.stay.median)}</td>
            <td>{g.stay.threeQuarters.day ?? 'not yet'}</td>
          </tr>
        ))}
      </Numbers>
    </Wide>
    <CsvLinks of={p} files={{ stays: 'These numbers as CSV' }} />
  </Part>
)

/** '34 (31 to 38)' */
function half({ day, lower, upper }: QuantileDay): string {
  if (day === null) return 'not yet'
  if (lower === null) return String(day)
  return upper === null ? `${day} (${lower} or later)` : `${day} (${lower} to ${upper})`
}
