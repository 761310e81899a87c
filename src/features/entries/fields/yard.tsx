/** The yard, wherever one is typed; and, where nobody has used it before, the box that says that a new one is meant. */

import { type FormState, NEW_YARD, one, TextField } from '../../../forms/index.ts'

export const YardField = ({ form, yards }: { form: FormState; yards: string[] }) => {
  const asked = form.problems.some((p) => p.field === 'yard' && one(form.typed, 'yard') !== '')
  const ticked = one(form.typed, NEW_YARD) === 'yes'
  return (
    <div class={asked || ticked ? 'yard-asked' : undefined}>
      <TextField form={form} name="yard" label="Yard" maxlength={80} list={yards} required />
      {asked || ticked ? (
        <label class="new-yard">
          <input type="checkbox" name={NEW_YARD} value="yes" checked={ticked} /> A new yard
        </label>
      ) : null}
    </div>
  )
}
