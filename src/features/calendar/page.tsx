/** Checks and windows in one's own calendar: addresses to subscribe to, made and taken back here. */

import { Choices, type FormState, Save } from '../../forms/index.ts'
import { ACCOUNT_TABS, Copy, type Frame, Layout, Tabs } from '../../parts/index.ts'
import { SHOWS } from '../../people/node.ts'
import type { Choice, Words } from '../../words/index.ts'
import type { Feed } from './feeds.ts'

/** What a calendar can show, in words. */
const showsIn = ({ calendar }: Words): Choice[] =>
  SHOWS.map((value) => ({ value, label: calendar.shows[value][0], hint: calendar.shows[value][1] }))

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

export const CalendarPage = (p: CalendarProps) => {
  const { calendar, round } = p.frame.words
  return (
    <Layout frame={p.frame} title={calendar.title} scripts={['islands/share.ts']}>
      <Tabs of={ACCOUNT_TABS} frame={p.frame} />
      <h1>{calendar.heading}</h1>
      <p>{calendar.about}</p>
      {p.made === null ? null : <Made address={p.made} words={calendar.made} />}
      {p.revoked ? (
        <div class="notice notice-do" role="status">
          <p>{calendar.takenBack}</p>
        </div>
      ) : null}
      <Addresses {...p} />
      <section class="section">
        <h2>{calendar.make}</h2>
        {p.form.problems.map((x) => (
          <p class="problem" role="alert">
            {x.message}
          </p>
        ))}
        <form method="post" action="/account/calendar" novalidate>
          <Choices
            form={p.form}
            name="yard"
            label={calendar.whichYard}
            choices={[
              { value: EVERY_YARD, label: round.allYards },
              ...p.yards.map((y) => ({ value: y, label: y })),
            ]}
            across={2}
            standing={EVERY_YARD}
          />
          <Choices
            form={p.form}
            name="shows"
            label={calendar.whatStands}
            choices={showsIn(p.frame.words)}
            across={2}
            standing="yard-day"
          />
          <Save>{calendar.make}</Save>
        </form>
      </section>
    </Layout>
  )
}

const Made = ({ address, words }: { address: string; words: Words['calendar']['made'] }) => (
  <div class="notice notice-do" role="status">
    <h2>{words.title}</h2>
    <p>
      <input class="wide feed-address" type="text" readonly value={address} aria-label={words.label} />
    </p>
    <p>
      <a class="button button-do" href={address.replace(/^https?:/, 'webcal:')}>
        {words.open}
      </a>{' '}
      <Copy text={address} label={words.copy} />
    </p>
    <p>{words.how}</p>
    {address.startsWith('https:') ? null : <p>{words.notHttps}</p>}
  </div>
)

const Addresses = ({ feeds, frame: { today, words, zone } }: CalendarProps) => {
  const { calendar, dates, round } = words
  const at = (iso: string): string => dates.instant(iso, zone, today)
  return feeds.length === 0 ? null : (
    <section class="section">
      <h2>{calendar.yours}</h2>
      <ul class="plain">
        {feeds.map((f) => (
          <li class="feed">
            <p>
              <b>{f.yard ?? round.allYards}</b>, {calendar.shows[f.shows][0].toLowerCase()}
              <br />
              <span class="soft">
                {calendar.line(at(f.createdAt), f.fetchedAt === null ? null : at(f.fetchedAt))}
              </span>
            </p>
            <form method="post" action="/account/calendar/take-back">
              <input type="hidden" name="key" value={f.key} />
              <button class="button" type="submit">
                {calendar.takeBack}
                <span class="unseen">{calendar.takeBackOf(f.yard ?? round.allYards.toLowerCase())}</span>
              </button>
            </form>
          </li>
        ))}
      </ul>
    </section>
  )
}
