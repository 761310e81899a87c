/** One's own account. */

import { Choices, type FormState, Save } from '../../forms/index.ts'
import { LANGUAGES, type Language } from '../../languages.ts'
import { ACCOUNT_TABS, type Frame, KeysTick, Layout, Refusal, Tabs } from '../../parts/index.ts'
import { type Words, wordsIn } from '../../words/index.ts'
import { NewPassphrase, PassphraseField } from './passphrase.tsx'

interface AccountProps {
  frame: Frame
  form: FormState
  /** Browsers that are signed in as this person. */
  browsers: number
  /** Tokens and calendar addresses that work. */
  keys: number
  /** What they chose to read in; null: as the browser says. */
  language: Language | null
  /** What was just done; null: nothing. */
  saved: Saved | null
}

export type Saved = 'passphrase' | 'passphrase and keys' | 'language'

const NOTHING_TYPED: FormState = { typed: {}, problems: [] }

export const AccountPage = ({ frame, form, browsers, keys, language, saved }: AccountProps) => {
  const { account } = frame.words
  return (
    <Layout frame={frame} title={account.title}>
      <Tabs of={ACCOUNT_TABS} frame={frame} />
      <h1>{frame.viewer?.name}</h1>
      <p>{frame.viewer === null ? '' : account.signedIn(frame.viewer.role, browsers)}</p>
      {saved === null ? null : (
        <div class="notice notice-do" role="status">
          <p>{savedWords(saved, account)}</p>
        </div>
      )}
      <div class="buttons">
        <form method="post" action="/sign-out">
          <button class="button" type="submit">
            {frame.words.signOut}
          </button>
        </form>
        <form method="post" action="/account/sign-out-everywhere">
          <KeysTick count={keys} form={NOTHING_TYPED} />
          <button class="button button-late" type="submit">
            {account.signOutEverywhere}
          </button>
        </form>
      </div>
      <LanguageForm chosen={language} words={account.language} />
      <PassphraseForm form={form} keys={keys} words={account} />
    </Layout>
  )
}

const savedWords = (saved: Saved, { changed, keysBack, language }: Words['account']): string =>
  ({ passphrase: changed, 'passphrase and keys': `${changed} ${keysBack}`, language: language.saved })[saved]

/** Each language is named in itself, for whoever reads no other. */
const LanguageForm = ({
  chosen,
  words,
}: {
  chosen: Language | null
  words: Words['account']['language']
}) => (
  <section class="section">
    <form method="post" action="/account/language" class="form-alone">
      <Choices
        form={NOTHING_TYPED}
        name="language"
        label={words.title}
        hint={words.hint}
        choices={[
          { value: '', label: words.fromBrowser },
          ...LANGUAGES.map((l) => ({ value: l, label: wordsIn(l).ownName, language: l })),
        ]}
        across={3}
        standing={chosen ?? ''}
      />
      <Save quiet>{words.save}</Save>
    </form>
  </section>
)

const PassphraseForm = ({
  form,
  keys,
  words,
}: {
  form: FormState
  keys: number
  words: Words['account']
}) => (
  <section class="section">
    <h2>{words.change}</h2>
    <Refusal
      form={form}
      labels={{ old: words.old, passphrase: words.next, again: words.again }}
      heading={words.notChanged}
    />
    <form method="post" action="/account/passphrase" novalidate class="form-alone">
      <PassphraseField form={form} name="old" label={words.old} use="current-password" />
      <NewPassphrase form={form} label={words.next} again={words.again} />
      <KeysTick count={keys} form={form} />
      <Save>{words.save}</Save>
    </form>
  </section>
)
