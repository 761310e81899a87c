/** Opened from an invitation: choose a passphrase, and be signed in. */

import type { FormState } from '../../forms/index.ts'
import { Save } from '../../forms/index.ts'
import type { Language } from '../../languages.ts'
import { type Frame, KeysTick, Layout, Refusal } from '../../parts/index.ts'
import type { Role } from '../../people/index.ts'
import { LanguageLinks } from './language-links.tsx'
import { NewPassphrase } from './passphrase.tsx'

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
  const { invite, signIn } = frame.words
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
        <NewPassphrase form={form} label={invite.choose} again={invite.again} />
        <KeysTick count={keys} form={form} />
        <Save>{invite.comeIn}</Save>
      </form>
      <p class="fine">{invite.after(name)}</p>
    </Layout>
  )
}
