/** Who signs an entry: said once, then kept by the browser. */
import { type FormState, TextField } from './field.tsx'
import type { Frame } from './layout.tsx'

/** At the end of every form: who signs, or a field that asks. */
export const SignFields = ({ frame, form }: { frame: Frame; form?: FormState }) =>
  frame.signer === null ? (
    <TextField
      form={form ?? { typed: {}, problems: [] }}
      name="by"
      label="Your name"
      hint="Signs what you write down. Asked once on this phone."
      maxlength={60}
      autocomplete="name"
      required
    />
  ) : null

export const SignedBy = ({ frame }: { frame: Frame }) =>
  frame.signer === null ? null : (
    <p class="signed">
      Signed <b>{frame.signer}</b>.{' '}
      <a class="tall" href="/name">
        Not you?
      </a>
    </p>
  )
