/** Tokens of programs and calendar addresses outlive a session and a passphrase: said where one ends, and offered to end too. */

import { type FormState, many, useWords } from '../forms/index.ts'

/** Name of the box, and what it sends. */
export const KEYS = 'keys'
export const TAKEN_BACK = 'yes'

interface KeysTickProps {
  /** How many there are; without any there is nothing to ask. */
  count: number
  form: FormState
}

export const KeysTick = ({ count, form }: KeysTickProps) => {
  const { account } = useWords()
  return count === 0 ? null : (
    <label class="tick">
      <input
        type="checkbox"
        name={KEYS}
        value={TAKEN_BACK}
        checked={form.problems.length === 0 || many(form.typed, KEYS).includes(TAKEN_BACK)}
      />
      <span>{account.takeBack(count)}</span>
    </label>
  )
}
