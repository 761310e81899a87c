/** Opened from an invitation: choose a passphrase, and be signed in. */

import type { FormState } from '../../forms/index.ts'
import { type Frame, KeysTick, Layout, Refusal } from '../../parts/index.ts'
import type { Role } from '../../people/index.ts'
import { PassphraseField } from './passphrase.tsx'

interface InviteProps {
  frame: Frame
  form: FormState
  name: string
  role: Role
  /** Tokens and calendar addresses that work, of somebody who forgot the passphrase. */
  keys: number
  action: string
}

const LABELS: Record<string, string> = { passphrase: 'Passphrase', again: 'Passphrase again' }

const CAN: Record<Role, string> = {
  helper: 'As a helper you see which boxes to open today and why, and record what you find.',
  beekeeper:
    'As a beekeeper you log intakes, record visits and outcomes, and correct what is wrong in the journal.',
  operator: 'As an operator you can do everything here, including people, rules and backups.',
}

export const InvitePage = ({ frame, form, name, role, keys, action }: InviteProps) => (
  <Layout frame={frame} title="Choose a passphrase" ways={false}>
    <h1>Hello {name}</h1>
    <p>{CAN[role]}</p>
    <Refusal form={form} labels={LABELS} heading="Not chosen yet" />
    <form method="post" action={action} novalidate class="form-alone">
      {/* So that a password keeper knows whose passphrase it keeps. */}
      <input type="text" name="username" value={name} autocomplete="username" readonly hidden />
      <PassphraseField
        form={form}
        name="passphrase"
        label="Choose a passphrase"
        hint={frame.words.account.nextHint}
        use="new-password"
      />
      <PassphraseField form={form} name="again" label="The same again" use="new-password" />
      <KeysTick count={keys} form={form} />
      <div class="save">
        <button class="button button-do" type="submit">
          Choose it and come in
        </button>
      </div>
    </form>
    <p class="fine">
      You sign in with the name {name}. This phone stays signed in for a month after each visit. The link you
      came by works no more once you have chosen.
    </p>
  </Layout>
)
