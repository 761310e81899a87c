/** Checks and windows in one's own calendar: addresses to subscribe to, made and taken back here. */

import { Choices, type FormState } from '../../forms/index.ts'
import { ACCOUNT_TABS, Copy, type Frame, Layout, Tabs } from '../../parts/index.ts'
import { type Choice, instantWords, labelIn } from '../../words/index.ts'
import type { Feed } from './feeds.ts'

const SHOWS_CHOICES: Choice[] = [
  {
    value: 'yard-day',
    label: 'One entry a yard and day',
    hint: 'the boxes and what they ask for in its text',
  },
  { value: 'best-day', label: 'Each box, from the best day', hint: 'to the last on which it is good' },
  { value: 'window', label: 'Each box, its whole window', hint: 'from its first day to its last' },
]

/** Stands for all yards in the form: no yard has this name. */
export const EVERY_YARD = '*'

export interface CalendarProps {
  frame: Frame
  form: FormState
  feeds: Feed[]
  yards: string[]
  /** The address just made: shown this once, since only its fingerprint is kept. */
  made: string | null
  /** An address was taken back. */
  revoked: boolean
}

export const CalendarPage = (p: CalendarProps) => (
  <Layout frame={p.frame} title="Calendar" scripts={['islands/share.ts']}>
    <Tabs of={ACCOUNT_TABS} frame={p.frame} />
    <h1>In your calendar</h1>
    <p>
      Your phone’s own calendar can show the coming checks, quiet times and windows, and keeps them up to date
      by itself: what is answered disappears, what moves, moves. Give it an address that only you have; it
      works until you take it back, signed in or not.
    </p>
    {p.made === null ? null : <Made address={p.made} />}
    {p.revoked ? (
      <div class="notice notice-do" role="status">
        <p>Taken back: that address opens nothing any more.</p>
      </div>
    ) : null}
    <Addresses {...p} />
    <section class="section">
      <h2>Make an address</h2>
      {p.form.problems.map((x) => (
        <p class="problem" role="alert">
          {x.message}
        </p>
      ))}
      <form method="post" action="/account/calendar" novalidate>
        <Choices
          form={p.form}
          name="yard"
          label="Which yard"
          choices={[
            { value: EVERY_YARD, label: 'All yards' },
            ...p.yards.map((y) => ({ value: y, label: y })),
          ]}
          across={2}
          standing={EVERY_YARD}
        />
        <Choices
          form={p.form}
          name="shows"
          label="What stands in it"
          choices={SHOWS_CHOICES}
          across={2}
          standing="yard-day"
        />
        <div class="save">
          <button class="button button-do" type="submit">
            Make an address
          </button>
        </div>
      </form>
    </section>
  </Layout>
)

const Made = ({ address }: { address: string }) => (
  <div class="notice notice-do" role="status">
    <h2>Your new address</h2>
    <p>
      <input class="wide feed-address" type="text" readonly value={address} aria-label="Calendar address" />
    </p>
    <p>
      <a class="button button-do" href={address.replace(/^https?:/, 'webcal:')}>
        Open in this phone’s calendar
      </a>{' '}
      <Copy text={address} label="Copy the address" />
    </p>
    <p>
      Or copy it into your calendar, where it says to subscribe to a calendar by its address. It is shown this
      once. Whoever has it can read the tags, the yards and what is due, so do not pass it on; take it back
      here if it got into other hands.
    </p>
    {address.startsWith('https:') ? null : (
      <p>
        This address is not https: many calendars refuse it, and others on the same network could read along.
      </p>
    )}
  </div>
)

const Addresses = ({ feeds, frame }: CalendarProps) =>
  feeds.length === 0 ? null : (
    <section class="section">
      <h2>Your addresses</h2>
      <ul class="plain">
        {feeds.map((f) => (
          <li class="feed">
            <p>
              <b>{f.yard ?? 'All yards'}</b>, {labelIn(SHOWS_CHOICES, f.shows).toLowerCase()}
              <br />
              <span class="soft">
                made {instantWords(f.createdAt, frame.zone, frame.today)};{' '}
                {f.fetchedAt === null
                  ? 'no calendar has asked for it yet'
                  : `a calendar last asked ${instantWords(f.fetchedAt, frame.zone, frame.today)}`}
              </span>
            </p>
            <form method="post" action="/account/calendar/take-back">
              <input type="hidden" name="key" value={f.key} />
              <button class="button" type="submit">
                Take back<span class="unseen"> the address of {f.yard ?? 'all yards'}</span>
              </button>
            </form>
          </li>
        ))}
      </ul>
    </section>
  )
