/** Opened from an invitation: choose a passphrase, and be signed in. */

import type { FormState } from '../../forms/index.ts'
import type { Language } from '../../languages.ts'
import { type Frame, KeysTick, Layout, Refusal } from '../../parts/index.ts'
import type { Role } from '../../people/index.ts'
import { LanguageLinks } from './language-links.tsx'
import { PassphraseField } from './passphrase.tsx'

interface InviteProps {
  frame: Frame
  form: FormState
  name: string
  role: Role
  /** Tokens and calendar addresses that work, of somebody who forgot the passphrase. */
  keys: number
  /** What was chosen here, and is kept for whoever comes in; null: nothing. */
  chosen: Language | null
}

export const InvitePage = ({ frame, form, name, role, keys, chosen }: InviteProps) => {
  const { account, invite, signIn } = frame.words
  return (
    <Layout frame={frame} title={invite.choose} ways={false}>
      <h1>{invite.hello(name)}</h1>
      <LanguageLinks frame={frame} hrefIn={(lang) => `${frame.path}?lang=${lang}`} />
      <p>{invite.can[role]}</p>
      <Refusal
        form={form}
        labels={{ passphrase: signIn.passphrase, again: invite.again }}
        heading={invite.notChosen}
      />
      <form
        method="post"
        action={chosen === null ? frame.path : `${frame.path}?lang=${chosen}`}
        novalidate
        class="form-alone"
      >
        {/* So that a password keeper knows whose passphrase it keeps. */}
        <input type="text" name="username" value={name} autocomplete="username" readonly hidden />
        <PassphraseField
          form={form}
          name="passphrase"
          label={invite.choose}
          hint={account.nextHint}
          use="new-password"
        />
        <PassphraseField form={form} name="again" label={invite.again} use="new-password" />
        <KeysTick count={keys} form={form} />
        <div class="save">
          <button class="button button-do" type="submit">
            {invite.comeIn}
          </button>
        </div>
      </form>
      <p class="fine">{invite.after(name)}</p>
    </Layout>
  )
}
