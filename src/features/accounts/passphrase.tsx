/** A passphrase: never shown again once sent, so a refused form asks for it anew. */

import type { Child } from 'hono/jsx'
import { type FormState, idOf, useWords } from '../../forms/index.ts'

interface PassphraseProps {
  form: FormState
  name: string
  label: string
  hint?: Child
  /** What a password manager should take it for. */
  use: 'current-password' | 'new-password'
}

export const PassphraseField = ({ form, name, label, hint, use }: PassphraseProps) => {
  const id = idOf(name)
  const words = useWords()
  const problems = form.problems.filter((p) => p.field === name).map((p) => words.forms.problem(p.message))
  const described = [hint === undefined ? '' : `${id}-hint`, problems.length === 0 ? '' : `${id}-problem`]
  return (
    <div class={problems.length === 0 ? 'field' : 'field has-problem'}>
      <label for={id}>{label}</label>
      {hint === undefined ? null : (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {problems.length === 0 ? null : (
        <p class="problem" id={`${id}-problem`}>
          {problems.join(' ')}
        </p>
      )}
      <span class="control">
        <input
          id={id}
          name={name}
          type="password"
          class="wide"
          autocomplete={use}
          maxlength={200}
          required
          aria-describedby={described.filter(Boolean).join(' ') || undefined}
          aria-invalid={problems.length === 0 ? undefined : 'true'}
        />
      </span>
    </div>
  )
}

/** A new one, typed twice. */
export const NewPassphrase = ({ form, label, again }: { form: FormState; label: string; again: string }) => (
  <>
    <PassphraseField
      form={form}
      name="passphrase"
      label={label}
      hint={useWords().account.nextHint}
      use="new-password"
    />
    <PassphraseField form={form} name="again" label={again} use="new-password" />
  </>
)
