/** One's own tokens for the HTTP API. */

import { Choices, type FormState, TextField, Ticks } from '../../forms/index.ts'
import { ACCOUNT_TABS, Copy, type Frame, Layout, Refusal, Tabs } from '../../parts/index.ts'
import type { ApiToken, Scope } from '../../people/index.ts'
import { TOKEN_DAYS, TOKEN_NAME_LIMIT } from '../../people/node.ts'

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

const LABELS: Record<string, string> = { name: 'What it is for', scopes: 'Scopes', days: 'Good for' }

const SCOPE_WORDS: Record<Scope, string> = {
  read: 'read: colonies, plans, journals',
  write: 'write: send entries',
  review: 'review: survival',
}

export const TokensPage = (p: TokensProps) => (
  <Layout frame={p.frame} title="Tokens for programs">
    <Tabs of={ACCOUNT_TABS} frame={p.frame} />
    <h1>Tokens for programs</h1>
    <p>
      With a token a program of yours asks this yard over HTTP, as you and with no more than you may do. What
      can be asked is <a href="/account/tokens/openapi.json">described here</a>, and to programs with a token
      at /api/v1/openapi.json. A token works on when you sign out or change your passphrase, until it runs out
      or is taken back.
    </p>
    {p.revoked ? (
      <div class="notice notice-do" role="status">
        <p>The token is taken back. It works no more.</p>
      </div>
    ) : null}
    <ul class="people">
      {p.tokens.map((t) => (
        <Line token={t} />
      ))}
    </ul>
    <section class="section">
      <h2>Make a token</h2>
      <Refusal form={p.form} labels={LABELS} heading="Not made yet" />
      <form method="post" action="/account/tokens" novalidate class="form-alone">
        <TextField
          form={p.form}
          name="name"
          label="What it is for"
          hint="So that you know later which one to take back."
          maxlength={TOKEN_NAME_LIMIT}
          required
          wide
        />
        <Ticks
          form={p.form}
          name="scopes"
          label="Scopes"
          hint="Tick only what the program needs."
          choices={p.scopes.map((s) => ({ value: s, label: SCOPE_WORDS[s] }))}
        />
        <Choices
          form={p.form}
          name="days"
          label="Good for"
          choices={TOKEN_DAYS.map((n) => ({ value: String(n), label: `${n} days` }))}
          across={3}
          standing="90"
        />
        <div class="save">
          <button class="button button-do" type="submit">
            Make the token
          </button>
        </div>
      </form>
    </section>
  </Layout>
)

const Line = ({ token: t }: { token: TokenLine }) => (
  <li class={t.until === null ? 'sheet person person-closed' : 'sheet person'}>
    <h2>{t.name}</h2>
    <p class="small">
      {t.scopes.join(', ')}. Made {t.made}. {t.used === null ? 'Never used.' : `Last used about ${t.used}.`}{' '}
      {t.until === null ? 'Works no more.' : `Works until ${t.until}.`}
    </p>
    {t.until === null ? null : (
      <form method="post" action={`/account/tokens/${t.id}/revoke`}>
        <button class="button button-late" type="submit">
          Take it back
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
export const TokenMadePage = ({ frame, name, token, until }: MadeProps) => (
  <Layout frame={frame} title="The token" scripts={['islands/share.ts']}>
    <h1>The token for {name}</h1>
    <p>
      Copy it now: it is not shown again. It works until {until}, or until you take it back, and does what you
      may do, within its scopes. Keep it as you keep a passphrase.
    </p>
    <p class="copyable">{token}</p>
    <div class="buttons">
      <Copy text={token} />
      <a class="button button-do" href="/account/tokens">
        Back to tokens
      </a>
    </div>
  </Layout>
)
