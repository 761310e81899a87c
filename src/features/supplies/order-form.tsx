/** What an order is asked to do: everything stands in the address, so it works without scripts and can be kept as a bookmark. */

import { type FormState, idOf, one, TextField } from '../../forms/index.ts'
import { chance } from '../../words/index.ts'
import { CHANCES, ORDER_FIELDS } from './order.ts'

export const OrderForm = ({ form, currency }: { form: FormState; currency: string }) => (
  <form class="order-form" method="get" action="/supplies">
    <div class="field">
      <label for={idOf('chanceShort')}>Chance of running short</label>
      <span class="control">
        <select id={idOf('chanceShort')} name="chanceShort">
          {CHANCES.map((p) => (
            <option value={String(p)} selected={one(form.typed, 'chanceShort') === String(p)}>
              at most {chance(p)}
            </option>
          ))}
        </select>
      </span>
    </div>
    {ORDER_FIELDS.map((f) => (
      <TextField
        form={form}
        name={f.name}
        label={f.name.startsWith('cost') ? `${f.label}, ${currency}` : f.label}
        inputmode={f.whole ? 'numeric' : 'decimal'}
        maxlength={8}
      />
    ))}
    <p class="buttons save-in">
      <button class="button" type="submit">
        Reckon again
      </button>
    </p>
  </form>
)
