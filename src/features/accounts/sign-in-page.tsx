/** Signing in: all that a stranger sees. */

import { type FormState, one, Save, TextField } from '../../forms/index.ts'
import type { Language } from '../../languages.ts'
import { type Frame, Layout, Refusal } from '../../parts/index.ts'
import type { Role } from '../../people/index.ts'
import { LanguageLinks } from './language-links.tsx'
import { PassphraseField } from './passphrase.tsx'

interface SignInProps {
  frame: Frame
  form: FormState
  /** In the invented yard: whom a visitor may be. */
  demo: { name: string; role: Role }[]
  /** What was chosen here, and is kept for whoever signs in; null: nothing. */
  chosen: Language | null
}

export const SignInPage = ({ frame, form, demo, chosen }: SignInProps) => {
  const { signIn } = frame.words
  const to = one(form.typed, 'to')
  const chosenIn = chosen === null ? '' : `?lang=${chosen}`
  return (
    <Layout frame={frame} title={signIn.title} ways={false}>
      <h1>{signIn.title}</h1>
      <LanguageLinks
        frame={frame}
        hrefIn={(lang) => `/sign-in?${new URLSearchParams({ lang, ...(to === '' ? {} : { to }) })}`}
      />
      {demo.length === 0 ? null : (
        <DemoSignIn people={demo} to={to} chosenIn={chosenIn} words={signIn.demo} />
      )}
      <Refusal
        form={form}
        labels={{ name: signIn.name, passphrase: signIn.passphrase }}
        heading={signIn.refused}
      />
      <form method="post" action={`/sign-in${chosenIn}`} novalidate class="form-alone">
        <input type="hidden" name="to" value={to} />
        <TextField
          form={form}
          name="name"
          label={signIn.name}
          maxlength={60}
          autocomplete="username"
          required
          wide
        />
        <PassphraseField form={form} name="passphrase" label={signIn.passphrase} use="current-password" />
        <Save>{signIn.title}</Save>
      </form>
      <p class="fine">{signIn.noAccount}</p>
    </Layout>
  )
}

interface DemoProps {
  people: SignInProps['demo']
  to: string
  chosenIn: string
  words: Frame['words']['signIn']['demo']
}

const DemoSignIn = ({ people, to, chosenIn, words }: DemoProps) => (
  <section class="notice">
    <h2>{words.title}</h2>
    <p>{words.about}</p>
    <div class="demo-door">
      {people.map((p) => (
        <form method="post" action={`/sign-in/as${chosenIn}`}>
          <input type="hidden" name="to" value={to} />
          <button class="button button-do" type="submit" name="name" value={p.name}>
            {p.name}
          </button>
          <span class="small">{words.roles[p.role]}</span>
        </form>
      ))}
    </div>
  </section>
)

/** Something was sent by a browser that is signed out by now. Says the same whatever was sent. */
export const SignInAgainPage = ({ frame }: { frame: Frame }) => {
  const { again, title } = frame.words.signIn
  return (
    <Layout frame={frame} title={again.title} ways={false}>
      <h1>{again.title}</h1>
      <p>{again.nothingSaved}</p>
      <p>{again.notLost}</p>
      <p class="buttons">
        <a class="button button-do" href="/sign-in" target="_blank" rel="noopener">
          {title}
        </a>
      </p>
    </Layout>
  )
}
