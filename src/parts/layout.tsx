/** The frame of every page. */

import type { Child } from 'hono/jsx'
import type { Day } from '../days.ts'
import { Spoken } from '../forms/index.ts'
import type { Action, Role } from '../people/index.ts'
import type { Units, Words } from '../words/index.ts'
import { BESIDE } from './beside.tsx'
import { PhoneLine } from './phone-line.tsx'
import type { PhoneState } from './phone-state.ts'
import { Ways } from './ways.tsx'

/** What every page knows of the request it answers. */
export interface Frame {
  /** The yard's day; '' only on a page that says something broke before the day was known. */
  today: Day
  /** The yard's time zone (IANA). */
  zone: string
  units: Units
  /** Who is signed in, and signs the entries made here; null before signing in. */
  viewer: { name: string; role: Role } | null
  /** Whether the viewer may. */
  may: (action: Action) => boolean
  /** Whether the viewer may open a page. */
  mayOpen: (path: string) => boolean
  /** What is said on this page, in the language it is in. */
  words: Words
  /** Path of the page, to mark where one is. */
  path: string
  /** On a page that the phone made itself: how it stands with what it keeps. */
  phone?: PhoneState
  /** Address of a built file by its name in the source ('styles/index.css'); null when nothing is built. */
  built: (source: string) => string | null
}

interface LayoutProps {
  frame: Frame
  title: string
  /** Browser code of this page, by source name. */
  scripts?: string[]
  /** false on forms: a phone shows the form alone. */
  ways?: boolean
  /** The page asks again by itself after so many seconds. */
  refreshSeconds?: number
  children?: Child
}

const STYLES = 'styles/index.css'
/** Starts the worker that makes the round work without signal. */
const PHONE = 'islands/phone.ts'

export const Layout = ({
  frame,
  title,
  scripts = [],
  ways = true,
  refreshSeconds,
  children,
}: LayoutProps) => {
  const style = frame.built(STYLES)
  const { words } = frame
  // Said where the page begins: its width is known before the rest has arrived, and nothing moves.
  const beside = scripts.includes(BESIDE) ? ' has-beside' : ''
  return (
    <Spoken.Provider value={words}>
      <html lang={words.language}>
        <head>
          <meta charset="utf-8" />
          <meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover" />
          <title>{title === 'Resettle' ? title : `${title} · Resettle`}</title>
          {refreshSeconds === undefined ? null : (
            <meta http-equiv="refresh" content={String(refreshSeconds)} />
          )}
          <meta name="color-scheme" content="light dark" />
          <meta name="theme-color" content="#fffdf8" media="(prefers-color-scheme: light)" />
          <meta name="theme-color" content="#1e1b16" media="(prefers-color-scheme: dark)" />
          <link rel="icon" href="/icon.svg" type="image/svg+xml" />
          {style === null ? null : <link rel="stylesheet" href={style} />}
          <link rel="manifest" href="/manifest.webmanifest" />
          <link rel="apple-touch-icon" href="/icons/icon-touch-180.png" />
          {[...scripts, PHONE].map((name) => {
            const src = frame.built(name)
            return src === null ? null : <script type="module" src={src} />
          })}
        </head>
        <body
          class={`${ways ? 'has-ways' : 'no-ways'}${beside}`}
          data-signed-in={frame.viewer?.name}
          data-zone={frame.zone}
        >
          <a class="skip" href="#main">
            {words.skip}
          </a>
          <header class="masthead">
            <div class="masthead-in">
              <a class="book" href="/">
                Resettle
              </a>
              {frame.viewer === null ? null : <Ways frame={frame} />}
              {frame.viewer === null ? null : <FindWay frame={frame} />}
              {frame.viewer === null ? null : (
                <a class="masthead-who" href="/account">
                  {frame.viewer.name}
                  <span class="unseen">, {words.yourAccount}</span>
                </a>
              )}
              {frame.today === '' || frame.viewer === null ? null : (
                <time class="masthead-day" datetime={frame.today}>
                  {words.dates.dayWithYear(frame.today)}
                </time>
              )}
            </div>
          </header>
          <PhoneLine frame={frame} />
          <main id="main" tabindex={-1}>
            {children}
          </main>
        </body>
      </html>
    </Spoken.Provider>
  )
}

/** From every page; on a wide screen one types right there. */
const FindWay = ({ frame: { path, words } }: { frame: Frame }) =>
  path === '/find' ? null : (
    <search class="find-way">
      <form method="get" action="/find">
        <input
          type="search"
          name="q"
          aria-label={words.findLabel}
          maxlength={80}
          autocomplete="off"
          placeholder={words.find}
        />
      </form>
      <a href="/find">{words.find}</a>
    </search>
  )
