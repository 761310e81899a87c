/** One's own morning digest: how, when, and what was sent. */

import { Choices, type FormState, Save, TextField } from '../../forms/index.ts'
import { ACCOUNT_TABS, type Frame, Layout, Refusal, Tabs } from '../../parts/index.ts'
import type { Choice, Words } from '../../words/index.ts'
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

const HOURS: Choice[] = [4, 5, 6, 7, 8, 9].map((h) => ({ value: String(h), label: `${h}:00` }))

export const MessagesPage = (p: MessagesProps) => {
  const { messages: words } = p.frame.words
  return (
    <Layout frame={p.frame} title={words.title}>
      <Tabs of={ACCOUNT_TABS} frame={p.frame} />
      <h1>{words.title}</h1>
      <p>{words.about}</p>
      {p.done === null ? null : (
        <div class={p.done.well ? 'notice notice-do' : 'notice notice-late'} role="status">
          <p>{p.done.words}</p>
        </div>
      )}
      <Refusal form={p.form} labels={words.labels} heading={words.notSaved} />
      <form method="post" action="/account/messages" novalidate class="form-alone">
        {p.mails ? (
          <TextField
            form={p.form}
            name="mail"
            label={words.labels.mail}
            hint={words.mailHint}
            maxlength={200}
            type="email"
            autocomplete="email"
            wide
          />
        ) : (
          <p class="notice">{words.noMail}</p>
        )}
        <TextField
          form={p.form}
          name="hook"
          label={words.labels.hook}
          hint={words.hookHint}
          type="url"
          maxlength={HOOK_URL_LIMIT}
          wide
        />
        <Choices
          form={p.form}
          name="hour"
          label={words.fromHour}
          hint={words.hourHint(p.frame.zone)}
          choices={HOURS}
          across={3}
          standing="6"
        />
        <Save>{words.save}</Save>
      </form>
      {p.has.mail || p.has.hook ? <Try {...p} /> : null}
      {p.secret === null ? null : <Secret secret={p.secret} words={words.secret} />}
      {p.sent.length === 0 ? null : (
        <section class="section">
          <h2>{words.lately}</h2>
          <ul class="plain">
            {p.sent.map((s) => (
              <li>
                {s.day}, {words.ways[s.way]}: {s.late ? <b>{s.words}</b> : s.words}
              </li>
            ))}
          </ul>
        </section>
      )}
    </Layout>
  )
}

const Try = ({ has, mails, frame }: MessagesProps) => {
  const { tryHook, tryMail } = frame.words.messages
  return (
    <form method="post" action="/account/messages/try" class="buttons">
      {has.mail && mails ? (
        <button class="button" type="submit" name="way" value="mail">
          {tryMail}
        </button>
      ) : null}
      {has.hook ? (
        <button class="button" type="submit" name="way" value="hook">
          {tryHook}
        </button>
      ) : null}
    </form>
  )
}

const Secret = ({ secret, words }: { secret: string; words: Words['messages']['secret'] }) => (
  <section class="section">
    <h2>{words.title}</h2>
    <details class="caution">
      <summary>{words.show}</summary>
      <p class="copyable">{secret}</p>
      <p class="small">{words.about}</p>
      <form method="post" action="/account/messages/secret">
        <button class="button button-late" type="submit">
          {words.renew}
        </button>
      </form>
    </details>
  </section>
)
