/** One's own account. */

import type { FormState } from '../../forms/index.ts'
import { ACCOUNT_TABS, type Frame, KeysTick, Layout, Refusal, Tabs } from '../../parts/index.ts'
import { ROLE_WORDS } from '../../words/index.ts'
import { NEW_PASSPHRASE_HINT, PassphraseField } from './passphrase.tsx'

interface AccountProps {
  frame: Frame
  form: FormState
  /** Browsers that are signed in as this person. */
  browsers: number
  /** Tokens and calendar addresses that work. */
  keys: number
  /** What was just done; null: nothing. */
  saved: 'passphrase' | 'passphrase and keys' | null
}

const LABELS: Record<string, string> = {
  old: 'Passphrase now',
  passphrase: 'New passphrase',
  again: 'New passphrase again',
}

const NOTHING_TYPED: FormState = { typed: {}, problems: [] }

export const AccountPage = ({ frame, form, browsers, keys, saved }: AccountProps) => (
  <Layout frame={frame} title="Your account">
    <Tabs of={ACCOUNT_TABS} frame={frame} />
    <h1>{frame.viewer?.name}</h1>
    <p>
      {frame.viewer === null ? '' : ROLE_WORDS[frame.viewer.role]}, signed in{' '}
      {browsers === 1 ? 'in this browser only' : `in ${browsers} browsers`}. A browser that is not used for a
      month is signed out.
    </p>
    {saved === null ? null : (
      <div class="notice notice-do" role="status">
        <p>
          The passphrase is changed. Every other browser was signed out.
          {saved === 'passphrase and keys' ? ' Tokens and calendar addresses are taken back.' : ''}
        </p>
      </div>
    )}
    <div class="buttons">
      <form method="post" action="/sign-out">
        <button class="button" type="submit">
          Sign out
        </button>
      </form>
      <form method="post" action="/account/sign-out-everywhere">
        <KeysTick count={keys} form={NOTHING_TYPED} />
        <button class="button button-late" type="submit">
          Sign out everywhere
        </button>
      </form>
    </div>
    <section class="section">
      <h2>Change the passphrase</h2>
      <Refusal form={form} labels={LABELS} heading="Not changed yet" />
      <form method="post" action="/account/passphrase" novalidate class="form-alone">
        <PassphraseField form={form} name="old" label="Passphrase now" use="current-password" />
        <PassphraseField
          form={form}
          name="passphrase"
          label="New passphrase"
          hint={NEW_PASSPHRASE_HINT}
          use="new-password"
        />
        <PassphraseField form={form} name="again" label="New passphrase again" use="new-password" />
        <KeysTick count={keys} form={form} />
        <div class="save">
          <button class="button button-do" type="submit">
            Change it
          </button>
        </div>
      </form>
    </section>
  </Layout>
)
