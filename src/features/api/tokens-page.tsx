/** One's own tokens for the HTTP API. */

import { Choices, type FormState, Save, TextField, Ticks } from '../../forms/index.ts'
import { ACCOUNT_TABS, Copy, type Frame, Layout, Refusal, Tabs } from '../../parts/index.ts'
import type { ApiToken, Scope } from '../../people/index.ts'
import { TOKEN_DAYS, TOKEN_NAME_LIMIT } from '../../people/node.ts'
import type { Words } from '../../words/index.ts'

export interface TokenLine extends Pick<ApiToken, 'id' | 'name' | 'scopes'> {
  /** In words. */
  made: string
  used: string | null
  /** Until when it works, in words; null when it no longer does. */
  until: string | null
}

interface TokensProps {
  frame: Frame
  form: FormState
  /** Scopes this person can give. */
  scopes: Scope[]
  tokens: TokenLine[]
  revoked: boolean
}

export const TokensPage = (p: TokensProps) => {
  const { tokens: words } = p.frame.words
  const [before, link, after] = words.about
  return (
    <Layout frame={p.frame} title={words.title}>
      <Tabs of={ACCOUNT_TABS} frame={p.frame} />
      <h1>{words.title}</h1>
      <p>
        {before}
        <a href="/account/tokens/openapi.json" hreflang="en">
          {link}
        </a>
        {after}
      </p>
      {p.revoked ? (
        <div class="notice notice-do" role="status">
          <p>{words.takenBack}</p>
        </div>
      ) : null}
      <ul class="people">
        {p.tokens.map((t) => (
          <Line token={t} words={words} />
        ))}
      </ul>
      <section class="section">
        <h2>{words.make}</h2>
        <Refusal
          form={p.form}
          labels={{ name: words.whatFor, scopes: words.scopes, days: words.goodFor }}
          heading={words.notMade}
        />
        <form method="post" action="/account/tokens" novalidate class="form-alone">
          <TextField
            form={p.form}
            name="name"
            label={words.whatFor}
            hint={words.whatForHint}
            maxlength={TOKEN_NAME_LIMIT}
            required
            wide
          />
          <Ticks
            form={p.form}
            name="scopes"
            label={words.scopes}
            hint={words.scopesHint}
            choices={p.scopes.map((s) => ({ value: s, label: words.scope[s] }))}
          />
          <Choices
            form={p.form}
            name="days"
            label={words.goodFor}
            choices={TOKEN_DAYS.map((n) => ({ value: String(n), label: words.days(n) }))}
            across={3}
            standing="90"
          />
          <Save>{words.save}</Save>
        </form>
      </section>
    </Layout>
  )
}

const Line = ({ token: t, words }: { token: TokenLine; words: Words['tokens'] }) => (
  <li class={t.until === null ? 'sheet person person-closed' : 'sheet person'}>
    <h2>{t.name}</h2>
    <p class="small">{words.line(t.scopes.map((s) => words.short[s]).join(', '), t.made, t.used, t.until)}</p>
    {t.until === null ? null : (
      <form method="post" action={`/account/tokens/${t.id}/revoke`}>
        <button class="button button-late" type="submit">
          {words.takeBack}
        </button>
      </form>
    )}
  </li>
)

interface MadeProps {
  frame: Frame
  name: string
  token: string
  until: string
}

/** Shown once: the server keeps only the token's digest. */
export const TokenMadePage = ({ frame, name, token, until }: MadeProps) => {
  const { made } = frame.words.tokens
  return (
    <Layout frame={frame} title={made.title} scripts={['islands/share.ts']}>
      <h1>{made.heading(name)}</h1>
      <p>{made.says(until)}</p>
      <p class="copyable">{token}</p>
      <div class="buttons">
        <Copy text={token} />
        <a class="button button-do" href="/account/tokens">
          {made.back}
        </a>
      </div>
    </Layout>
  )
}
