/** One's own morning digest: how, when, and what was sent. */

import { Choices, type FormState, TextField } from '../../forms/index.ts'
import { ACCOUNT_TABS, type Frame, Layout, Refusal, Tabs } from '../../parts/index.ts'
import type { Choice } from '../../words/index.ts'
import { HOOK_URL_LIMIT } from './hook-rules.ts'

export interface SentWords {
  day: string
  way: 'mail' | 'hook'
  /** 'sent 06:00', 'tried again at 06:25: …' */
  words: string
  /** It did not go out. */
  late: boolean
}

interface MessagesProps {
  frame: Frame
  form: FormState
  /** This server can send e-mail. */
  mails: boolean
  has: { mail: boolean; hook: boolean }
  /** Signs the webhook; null without one. */
  secret: string | null
  sent: SentWords[]
  /** What was just done, as a sentence, and whether it went well. */
  done: { words: string; well: boolean } | null
}

const LABELS: Record<string, string> = { mail: 'E-mail', hook: 'Webhook', hour: 'Hour' }

const HOURS: Choice[] = [4, 5, 6, 7, 8, 9].map((h) => ({ value: String(h), label: `${h}:00` }))

export const MessagesPage = (p: MessagesProps) => (
  <Layout frame={p.frame} title="Morning messages">
    <Tabs of={ACCOUNT_TABS} frame={p.frame} />
    <h1>Morning messages</h1>
    <p>
      Once a day: which boxes ask for something, what, and until when. Tags, actions and dates only; no yard,
      no person, no customer.
    </p>
    {p.done === null ? null : (
      <div class={p.done.well ? 'notice notice-do' : 'notice notice-late'} role="status">
        <p>{p.done.words}</p>
      </div>
    )}
    <Refusal form={p.form} labels={LABELS} heading="Not saved yet" />
    <form method="post" action="/account/messages" novalidate class="form-alone">
      {p.mails ? (
        <TextField
          form={p.form}
          name="mail"
          label="E-mail"
          hint="Leave it empty for no e-mail."
          maxlength={200}
          type="email"
          autocomplete="email"
          wide
        />
      ) : (
        <p class="notice">
          This server sends no e-mail. Whoever runs it can name a mail server: RESETTLE_SMTP_URL.
        </p>
      )}
      <TextField
        form={p.form}
        name="hook"
        label="Webhook"
        hint="For a program of yours: an https address that is told the same as JSON, signed. Leave it empty for none."
        type="url"
        maxlength={HOOK_URL_LIMIT}
        wide
      />
      <Choices
        form={p.form}
        name="hour"
        label="From what hour"
        hint={`Of the yard’s day (${p.frame.zone}).`}
        choices={HOURS}
        across={3}
        standing="6"
      />
      <div class="save">
        <button class="button button-do" type="submit">
          Save
        </button>
      </div>
    </form>
    {p.has.mail || p.has.hook ? <Try {...p} /> : null}
    {p.secret === null ? null : <Secret secret={p.secret} />}
    {p.sent.length === 0 ? null : (
      <section class="section">
        <h2>Lately</h2>
        <ul class="plain">
          {p.sent.map((s) => (
            <li>
              {s.day}, {s.way === 'mail' ? 'e-mail' : 'webhook'}: {s.late ? <b>{s.words}</b> : s.words}
            </li>
          ))}
        </ul>
      </section>
    )}
  </Layout>
)

const Try = ({ has, mails }: MessagesProps) => (
  <form method="post" action="/account/messages/try" class="buttons">
    {has.mail && mails ? (
      <button class="button" type="submit" name="way" value="mail">
        Send one e-mail now
      </button>
    ) : null}
    {has.hook ? (
      <button class="button" type="submit" name="way" value="hook">
        Call the webhook now
      </button>
    ) : null}
  </form>
)

const Secret = ({ secret }: { secret: string }) => (
  <section class="section">
    <h2>The webhook’s secret</h2>
    <details class="caution">
      <summary>Show it</summary>
      <p class="copyable">{secret}</p>
      <p class="small">
        Signs every call as the Standard Webhooks specification describes (webhook-id, webhook-timestamp,
        webhook-signature), so that your program can tell it from anybody else’s. A repeat of a call keeps its
        webhook-id.
      </p>
      <form method="post" action="/account/messages/secret">
        <button class="button button-late" type="submit">
          Make a new secret
        </button>
      </form>
    </details>
  </section>
)
