/** Accounts and roles, for operators. */

import { raw } from 'hono/html'
import { Choices, type FormState, Save, TextField } from '../../forms/index.ts'
import { type Frame, HandOut, KeysTick, Layout, Refusal } from '../../parts/index.ts'
import { type Person, ROLES } from '../../people/index.ts'
import { keysWords, ROLE_CHOICES, ROLE_WORDS, STATE_WORDS, signedInWords } from '../../words/index.ts'

export interface PersonLine extends Person {
  /** When the link that is still good runs out, in words. */
  linkUntil: string | null
  browsers: number
  /** Tokens and calendar addresses that work. */
  keys: number
}

interface PeopleProps {
  frame: Frame
  form: FormState
  people: PersonLine[]
  /** What was just done, as a sentence. */
  done: string | null
}

const LABELS: Record<string, string> = { name: 'Name', role: 'Role', person: 'This account' }

export const PeoplePage = ({ frame, form, people, done }: PeopleProps) => (
  <Layout frame={frame} title="People">
    <h1>People</h1>
    {done === null ? null : (
      <div class="notice notice-do" role="status">
        <p>{done}</p>
      </div>
    )}
    <Refusal form={form} labels={LABELS} heading="Nothing was changed" />
    <ul class="people">
      {people.map((p) => (
        <Line person={p} self={p.name === frame.viewer?.name} />
      ))}
    </ul>
    <section class="section">
      <h2>Invite somebody</h2>
      <form method="post" action="/people" novalidate class="form-alone">
        <TextField
          form={form}
          name="name"
          label="Name"
          hint="Signs what they write down. It cannot be changed later, or given to somebody else."
          maxlength={60}
          required
          wide
        />
        <Choices form={form} name="role" label="Role" choices={ROLE_CHOICES} across={2} standing="helper" />
        <Save>Make the invitation</Save>
      </form>
    </section>
  </Layout>
)

const Line = ({ person: p, self }: { person: PersonLine; self: boolean }) => (
  <li class={p.state === 'closed' ? 'sheet person person-closed' : 'sheet person'}>
    <h2>
      {p.name} <small class="soft">{ROLE_WORDS[p.role]}</small>
    </h2>
    <p class="small">
      {STATE_WORDS[p.state]}
      {p.state === 'active' ? `; ${signedInWords(p.browsers)}` : ''}
      {p.linkUntil === null ? '' : `; a link is out, good until ${p.linkUntil}`}
      {self ? '; this is you' : ''}
    </p>
    {p.state === 'closed' ? (
      <Act id={p.id} what="reopen" label="Reopen the account" />
    ) : (
      <details>
        <summary>Change</summary>
        <div class="buttons">
          <Act
            id={p.id}
            what="link"
            label={p.state === 'invited' ? 'Make a new invitation' : 'Make a link to choose a new passphrase'}
          />
          {ROLES.filter((r) => r !== p.role).map((r) => (
            <Act
              id={p.id}
              what="role"
              label={`Make ${p.name} ${r === 'operator' ? 'an' : 'a'} ${r}`}
              role={r}
            />
          ))}
          {p.browsers + p.keys === 0 ? null : (
            <Act id={p.id} what="sign-out" label="Sign out everywhere" keys={p.keys} />
          )}
          <Act id={p.id} what="close" label="Close the account" late />
        </div>
        {p.keys === 0 ? null : (
          <p class="fine">
            {keysWords(p.keys)} of {p.name}: signing out and a new passphrase leave{' '}
            {p.keys === 1 ? 'it' : 'them'} working unless you say otherwise; closing the account ends{' '}
            {p.keys === 1 ? 'it' : 'them'} for good.
          </p>
        )}
      </details>
    )}
  </li>
)

interface ActProps {
  id: string
  what: string
  label: string
  role?: string
  late?: boolean
  keys?: number
}

const Act = (p: ActProps) => (
  <form method="post" action={`/people/${p.id}/${p.what}`}>
    <KeysTick count={p.keys ?? 0} form={{ typed: {}, problems: [] }} />
    <button class={p.late ? 'button button-late' : 'button'} type="submit" name="role" value={p.role ?? ''}>
      {p.label}
    </button>
  </form>
)

interface LinkProps {
  frame: Frame
  name: string
  link: string
  /** The same as a QR code, SVG from our own server code. */
  qr: string
  until: string
}

/** Shown once: the server keeps only the link's digest. */
export const LinkPage = ({ frame, name, link, qr, until }: LinkProps) => (
  <Layout frame={frame} title={`Link for ${name}`} scripts={['islands/share.ts']}>
    <h1>A link for {name}</h1>
    <p>
      Have {name} open it on their own phone and choose a passphrase. It works once, until {until}. It is
      shown only now: if it gets lost, make another.
    </p>
    <div class="qr">{raw(qr)}</div>
    <p class="copyable">{link}</p>
    <p class="fine">
      Whoever opens it first has the account: hand it over yourself, or send it only to {name}.
    </p>
    <div class="buttons">
      <HandOut title={`Link for ${name}`} text={link} main />
      <a class="button" href="/people">
        Back to people
      </a>
    </div>
  </Layout>
)
