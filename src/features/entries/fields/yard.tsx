/** The yard, wherever one is typed; and, where nobody has used it before, the box that says that a new one is meant. */

import { type DrawnIn, FIELDS, Fields, NEW_YARD, one, useWords } from '../../../forms/index.ts'

export const YardField = ({ yards, ...p }: DrawnIn & { yards: string[] }) => {
  const { typed, problems } = p.form
  const asked = problems.some((x) => x.field === 'yard' && one(typed, 'yard') !== '')
  const ticked = one(typed, NEW_YARD) === 'yes'
  return (
    <div class={asked || ticked ? 'yard-asked' : undefined}>
      <Fields {...p} of={FIELDS.move} show={['yard']} with={{ yard: { list: yards } }} />
      {asked || ticked ? (
        <label class="new-yard">
          <input type="checkbox" name={NEW_YARD} value="yes" checked={ticked} />{' '}
          {useWords().corrections.move.newYard}
        </label>
      ) : null}
    </div>
  )
}
