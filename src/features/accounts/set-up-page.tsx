/** The first start: whoever can read the terminal becomes the first operator. */
import { type FormState, TextField } from '../../forms/index.ts'
import { type Frame, Layout, Refusal } from '../../parts/index.ts'
import { NEW_PASSPHRASE_HINT, PassphraseField } from './passphrase.tsx'

const LABELS: Record<string, string> = {
  token: 'Set-up word',
  name: 'Your name',
  passphrase: 'Passphrase',
  again: 'Passphrase again',
}

export const SetUpPage = ({ frame, form }: { frame: Frame; form: FormState }) => (
  <Layout frame={frame} title="Set up" ways={false}>
    <h1>Set up this yard’s book</h1>
    <Refusal form={form} labels={LABELS} heading="Not set up yet" />
    <p>
      Make the first account, an operator’s. Operators invite everybody else, and look after rules and
      backups. This page is gone once the account is made.
    </p>
    <form method="post" action="/set-up" novalidate class="form-alone">
      <TextField
        form={form}
        name="token"
        label="Set-up word"
        hint="Printed in the terminal where the server was started. Filled in already if you came by the link there."
        maxlength={100}
        required
        wide
      />
      <TextField
        form={form}
        name="name"
        label="Your name"
        hint="Signs what you write down, so it stays yours for good."
        maxlength={60}
        autocomplete="username"
        required
        wide
      />
      <PassphraseField
        form={form}
        name="passphrase"
        label="Passphrase"
        hint={NEW_PASSPHRASE_HINT}
        use="new-password"
      />
      <PassphraseField form={form} name="again" label="Passphrase again" use="new-password" />
      <div class="save">
        <button class="button button-do" type="submit">
          Make the account
        </button>
      </div>
    </form>
  </Layout>
)
