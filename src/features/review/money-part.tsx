/** What a colony kept has cost. Shown only to those who may see costs. */

import { Numbers, Part, Reading, Wide } from '../../parts/index.ts'
import { CsvLinks } from './csv-links.tsx'
import { moneyReading } from './findings-reading.ts'
import { amount, type Spent } from './money.ts'
import type { ReviewProps } from './part-props.ts'

export const MONEY_ROWS: readonly (readonly [keyof Spent, string])[] = [
  ['queens', 'Queens, virgins and cells'],
  ['feed', 'Feed'],
  ['other', 'All else given'],
  ['hours', 'Hours, open to boxed'],
]

export const Money = (p: ReviewProps) => {
  const { money } = p.look
  return (
    <Part id="money" title="Money for each colony kept">
      <Reading>{moneyReading(money, p.currency)}</Reading>
      {money.ended === 0 ? null : (
        <Wide label="Money">
          <Numbers
            class="money"
            caption={
              <>
                {money.ended} stays that are over, {money.kept} of them moved out
              </>
            }
            heads={[null, 'In all', 'For each kept']}
          >
            {MONEY_ROWS.map(([what, words]) => (
              <tr>
                <th scope="row">{words}</th>
                <td>{amount(what, money.total[what], p.currency)}</td>
                <td>{money.perKept === null ? '' : amount(what, money.perKept[what], p.currency)}</td>
              </tr>
            ))}
          </Numbers>
        </Wide>
      )}
      <p class="small soft">Only what was written down is added up.</p>
      <CsvLinks of={p} files={{ money: 'These numbers as CSV' }} />
    </Part>
  )
}
