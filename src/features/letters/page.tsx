/** Letters to customers: made from a colony's journal, looked at, given an address, taken back. */

import { raw } from 'hono/html'
import type { Day } from '../../days.ts'
import { type FormState, NoteField, TextField } from '../../forms/index.ts'
import { Crumb, type Frame, HandOut, Layout, On, Refusal } from '../../parts/index.ts'
import { mailHref } from '../../words/index.ts'
import type { Letter } from './letter.ts'
import { LetterSheet } from './letter-page.tsx'

/** A letter that has, or had, an address. */
export interface LetterLine {
  id: string
  /** Of the colony; null when its journal is gone. */
  tag: string | null
  path: string | null
  asOf: Day
  /** 'keeper': the sheet for the new keeper. */
  what: 'letter' | 'keeper'
  /** When and by whom it was made, in words. */
  made: string
  by: string
  /** Until when it can be opened, in words; null when it no longer can. */
  until: string | null
}

export const WORDS_LIMIT = 1500

interface PreviewProps {
  frame: Frame
  form: FormState
  tag: string
  path: string
  letter: Letter | null
  words: string | null
  sent: LetterLine[]
  earliest: Day
}

const LABELS: Record<string, string> = { asOf: 'Until which day', words: 'Your own words' }

/** What the customer would read, and the way to give it an address. */
export const LetterPreviewPage = (p: PreviewProps) => (
  <Layout frame={p.frame} title={`Letter, ${p.tag}`}>
    <Crumb to={p.path}>{p.tag}</Crumb>
    <h1>A letter to the customer</h1>
    <p>
      Made from the journal of {p.tag}. It names no person, place, price or other colony; notes and photos
      stay here. Read it before you hand it out.
    </p>
    <Refusal form={p.form} labels={LABELS} heading="Not made yet" />
    <form method="post" action={`${p.path}/letter`} novalidate class="form-alone">
      <TextField
        form={p.form}
        name="asOf"
        label="Until which day"
        hint="It tells the journal up to that day, and nothing later."
        type="date"
        max={p.frame.today}
      />
      <NoteField
        form={p.form}
        name="words"
        label="Your own words"
        hint="Above the rest, for instance who you are. They go out as they are: no names of others, no addresses."
        maxlength={WORDS_LIMIT}
        rows={4}
      />
      <div class="save">
        <button class="button" type="submit" name="do" value="look">
          Show it
        </button>
        <button class="button button-do" type="submit" name="do" value="make">
          Make an address for it
        </button>
      </div>
    </form>
    {p.letter === null ? null : (
      <div class="letter-preview">
        <LetterSheet letter={p.letter} words={p.words} level={2} />
      </div>
    )}
    {p.sent.length === 0 ? null : (
      <section class="section">
        <h2>Addresses of this colony’s letters</h2>
        <Sent lines={p.sent} frame={p.frame} back={`${p.path}/letter`} />
      </section>
    )}
  </Layout>
)

export interface AddressMadeProps {
  frame: Frame
  title: string
  headline: string
  /** Who can read it, and until when. */
  says: string
  link: string
  /** What a message with it says above the address. */
  subject: string
  /** Mail address of whom it is for, where it is known. */
  to?: string | undefined
  /** The same as a QR code, SVG from our own server code. */
  qr: string
  /** What the button that opens it says. */
  open: string
  back: { href: string; words: string }
}

/** Shown once: the server keeps only the address's digest. */
export const AddressMade = (p: AddressMadeProps) => (
  <Layout frame={p.frame} title={p.title} scripts={['islands/share.ts']}>
    <h1>{p.headline}</h1>
    <p>{p.says} It is shown only now: if it gets lost, make another.</p>
    <div class="qr">{raw(p.qr)}</div>
    <p class="copyable">{p.link}</p>
    <div class="buttons">
      <HandOut title={p.subject} text={p.link} main />
      <a class="button" href={mailHref(p.to ?? '', p.subject, p.link)}>
        Mail it
      </a>
      <a class="button" href={p.link}>
        {p.open}
      </a>
      <a class="button" href={p.back.href}>
        {p.back.words}
      </a>
    </div>
  </Layout>
)

/** Every letter there is. */
interface LettersProps {
  frame: Frame
  lines: LetterLine[]
  /** Colonies whose day for it has come. */
  due: { tag: string; path: string }[]
}

export const LettersPage = ({ frame, lines, due }: LettersProps) => (
  <Layout frame={frame} title="Letters">
    <h1>Letters to customers</h1>
    {due.length === 0 ? null : (
      <div class="notice">
        <p>Day 30 has come, and nobody has told the customer how they are. Write the letter about</p>
        <p class="tags">
          {due.map((d) => (
            <a class="tag tall" href={d.path}>
              {d.tag}
            </a>
          ))}
        </p>
      </div>
    )}
    {lines.length === 0 ? (
      <p>None yet. A colony’s page leads to its letter: “Your bees, day 30”, made from its journal.</p>
    ) : (
      <>
        <p>An address that was taken back cannot be opened by anybody, whoever kept it.</p>
        <Sent lines={lines} frame={frame} back="/letters" />
      </>
    )}
  </Layout>
)

const Sent = ({ lines, frame, back }: { lines: LetterLine[]; frame: Frame; back: string }) => (
  <ul class="people">
    {lines.map((l) => (
      <li class={l.until === null ? 'sheet person person-closed' : 'sheet person'}>
        <p>
          {l.path === null ? (
            <b>a colony that is gone</b>
          ) : (
            <a class="tall" href={l.path}>
              <b>{l.tag}</b>
            </a>
          )}
          {l.what === 'keeper' ? ', sheet for the new keeper' : ''}, as of{' '}
          <On day={l.asOf} today={frame.today} />
        </p>
        <p class="small">
          Made {l.made} by {l.by}.{' '}
          {l.until === null ? 'Can no longer be opened.' : `Can be opened until ${l.until}.`}
        </p>
        {l.until === null ? null : (
          <form method="post" action={`/letters/${l.id}/revoke`}>
            <input type="hidden" name="back" value={back} />
            <button class="button button-late" type="submit">
              Take the address back
            </button>
          </form>
        )}
      </li>
    ))}
  </ul>
)
