/** Signing in: all that a stranger sees. */

import { type FormState, one, TextField } from '../../forms/index.ts'
import { type Frame, Layout, Refusal } from '../../parts/index.ts'
import { PassphraseField } from './passphrase.tsx'

interface SignInProps {
  frame: Frame
  form: FormState
  /** In the invented yard: whom a visitor may be. */
  demo: { name: string; words: string }[]
}

const LABELS: Record<string, string> = { name: 'Name', passphrase: 'Passphrase' }

export const SignInPage = ({ frame, form, demo }: SignInProps) => (
  <Layout frame={frame} title="Sign in" ways={false}>
    <h1>Sign in</h1>
    {demo.length === 0 ? null : <DemoSignIn people={demo} to={one(form.typed, 'to')} />}
    <Refusal form={form} labels={LABELS} heading="You are not signed in" />
    <form method="post" action="/sign-in" novalidate class="form-alone">
      <input type="hidden" name="to" value={one(form.typed, 'to')} />
      <TextField form={form} name="name" label="Name" maxlength={60} autocomplete="username" required wide />
      <PassphraseField form={form} name="passphrase" label="Passphrase" use="current-password" />
      <div class="save">
        <button class="button button-do" type="submit">
          Sign in
        </button>
      </div>
    </form>
    <p class="fine">
      No account, or the passphrase forgotten? An operator of this yard can give you a link to choose one.
      Such a link works once, within a week; after that, ask for another.
    </p>
  </Layout>
)

const DemoSignIn = ({ people, to }: { people: SignInProps['demo']; to: string }) => (
  <section class="notice">
    <h2>This yard is invented</h2>
    <p>Nothing in it is real, and it is gone when the demo stops. Look around as one of its people:</p>
    <div class="demo-door">
      {people.map((p) => (
        <form method="post" action="/sign-in/as">
          <input type="hidden" name="to" value={to} />
          <button class="button button-do" type="submit" name="name" value={p.name}>
            {p.name}
          </button>
          <span class="small">{p.words}</span>
        </form>
      ))}
    </div>
  </section>
)

/** Something was sent by a browser that is signed out by now. Says the same whatever was sent. */
export const SignInAgainPage = ({ frame }: { frame: Frame }) => (
  <Layout frame={frame} title="Sign in first" ways={false}>
    <h1>Sign in first</h1>
    <p>You are not signed in, or not any more. Nothing was saved.</p>
    <p>
      What you typed is not lost: sign in from this link, which opens beside this page. Then come back here,
      go one page back, and save again.
    </p>
    <p class="buttons">
      <a class="button button-do" href="/sign-in" target="_blank" rel="noopener">
        Sign in
      </a>
    </p>
  </Layout>
)
