/** Fields that can wait: folded, and open where something is wrong with one of them. */
import type { Child } from 'hono/jsx'
import { type FormState, many } from '../../forms/index.ts'

interface FoldedProps {
  legend: string
  form: FormState
  fields: readonly string[]
  open?: boolean
  children?: Child
}

export const Folded = ({ legend, form, fields, open = false, children }: FoldedProps) => {
  const filled = fields.filter((f) => many(form.typed, f).some((v) => v !== '')).length
  const wrong = form.problems.some((p) => fields.includes(p.field))
  return (
    <details class="caution folded" open={open || wrong}>
      <summary>
        {legend}
        {filled === 0 ? '' : ` (${filled} filled in)`}
      </summary>
      {children}
    </details>
  )
}
