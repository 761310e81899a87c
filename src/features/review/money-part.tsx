/** What a colony kept has cost. Shown only to those who may see costs. */

import { Part, Reading, Wide } from '../../parts/index.ts'
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
          <table class="numbers money">
            <caption>
              {money.ended} stays that are over, {money.kept} of them moved out
            </caption>
            <thead>
              <tr>
                <td />
                <th scope="col">In all</th>
                <th scope="col">For each kept</th>
              </tr>
            </thead>
            <tbody>
              {MONEY_ROWS.map(([what, words]) => (
                <tr>
                  <th scope="row">{words}</th>
                  <td>{amount(what, money.total[what], p.currency)}</td>
                  <td>{money.perKept === null ? '' : amount(what, money.perKept[what], p.currency)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Wide>
      )}
      <p class="small soft">Only what was written down is added up.</p>
      <CsvLinks of={p} files={{ money: 'These numbers as CSV' }} />
    </Part>
  )
}
