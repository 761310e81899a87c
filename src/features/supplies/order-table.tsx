/** Every order size beside what it risks and costs. */
import type { OrderAdvice } from '../../forecast/index.ts'
import { Numbers, Wide } from '../../parts/index.ts'
import { chance } from '../../words/index.ts'

const MOST_ROWS = 12

export const OrderTable = ({ order, currency }: { order: OrderAdvice; currency: string }) => {
  // The rows around the two answers; the far ends say nothing new.
  const middle = Math.max(order.order, order.cheapest)
  const from = Math.max(0, Math.min(middle + 3, order.rows.length) - MOST_ROWS)
  const rows = order.rows.slice(from, from + MOST_ROWS)
  return (
    <Wide label="Orders and what they risk">
      <Numbers
        caption="Too many and too few: chance of running short, expected numbers and cost"
        heads={['Order', 'Short', 'Missing', 'Left', 'Cost']}
      >
        {rows.map((r) => (
          <tr class={r.order === order.order ? 'row-chosen' : undefined}>
            <th scope="row">
              {r.order}
              {r.order === order.order ? ' advised' : ''}
              {r.order === order.cheapest ? ' cheapest' : ''}
            </th>
            <td>{chance(r.chanceShort)}</td>
            <td>{r.short.toFixed(1)}</td>
            <td>{r.over.toFixed(1)}</td>
            <td>
              {currency}
              {r.cost.toFixed(0)}
            </td>
          </tr>
        ))}
      </Numbers>
    </Wide>
  )
}
