/** Removals: every sheet, those that want something first. */

import { type Frame, Layout } from '../../parts/index.ts'
import { notYet, type Reckoning, stops } from './before-cut.ts'
import type { Stage } from './stage.ts'
import { NEXT_WORDS, plannedWords, reckoningTitle } from './words.ts'

export interface RemovalRow {
  path: string
  name: string
  address: string | null
  plannedOn: string | null
  plannedAt: string | null
  stage: Stage
  /** The stage in words. */
  says: string
  /** Why it was “go”, and is not any more; null where it is, or never was. */
  fell: string | null
  /** Null where it is too early to count, or the job is over. */
  reckoning: Reckoning | null
  /** Who signed as a second person with an account that was new; null for nobody. */
  newSigners: string | null
  /** Why it was begun without a “go”; null where it was not. */
  begun: string | null
  next: { href: string; part: keyof typeof NEXT_WORDS } | null
  colonies: { tag: string; path: string }[]
}

export interface RemovalsProps {
  frame: Frame
  open: RemovalRow[]
  /** Boxed, and something is left to do at the place. */
  toClose: RemovalRow[]
  over: RemovalRow[]
  /** A sheet was just erased: 'clean' where the file was written anew too. */
  erased: string | null
}

/** Jobs that are over are looked up by name: the last few stand there, the others are folded (judgement). */
const LATELY = 8

export const RemovalsPage = ({ frame, open, toClose, over, erased }: RemovalsProps) => (
  <Layout frame={frame} title="Removals">
    <h1>Removals</h1>
    {erased !== null ? (
      <div class="notice notice-do" role="status">
        <p>The sheet is erased, every version of it.</p>
        {erased === 'clean' ? null : (
          <p>
            Overwritten where it stood; but the file could not be written anew, for want of room or because
            somebody was reading. Erasing another sheet tries again.
          </p>
        )}
      </div>
    ) : null}
    <p class="soft">
      One sheet a job, from the phone call to the truck. Only beekeepers and operators see these.
    </p>
    <div class="buttons">
      <a class="button button-do" href="/removals/new">
        Somebody called
      </a>
      {frame.mayOpen('/removals/terms') ? (
        <a class="button" href="/removals/terms">
          Text of the agreement
        </a>
      ) : null}
    </div>
    {frame.phone === undefined ? null : (
      <p class="soft">This phone keeps the jobs of today and tomorrow; the others need signal.</p>
    )}
    {open.length + toClose.length + over.length === 0 ? (
      <div class="sheet first-run">
        <h2>Begin with the phone call</h2>
        <p>
          Write down who called and what they see. The sheet then takes the site, the agreement, what to check
          before the cut and what was found; the intake is filled from it, so nothing is typed twice.
        </p>
      </div>
    ) : null}
    {open.length === 0 ? null : (
      <section class="section">
        <h2>Under way</h2>
        <ul class="jobs">
          {open.map((row) => (
            <Row row={row} frame={frame} />
          ))}
        </ul>
      </section>
    )}
    {toClose.length === 0 ? null : (
      <section class="section">
        <h2>To close up</h2>
        <ul class="jobs">
          {toClose.map((row) => (
            <Row row={row} frame={frame} />
          ))}
        </ul>
      </section>
    )}
    {over.length === 0 ? null : (
      <section class="section">
        <h2>Done</h2>
        <ul class="jobs jobs-over">
          {over.slice(0, LATELY).map((row) => (
            <Row row={row} frame={frame} done />
          ))}
        </ul>
        {over.length <= LATELY ? null : (
          <details class="caution">
            <summary>{over.length - LATELY} before that</summary>
            <ul class="jobs jobs-over">
              {over.slice(LATELY).map((row) => (
                <Row row={row} frame={frame} done />
              ))}
            </ul>
          </details>
        )}
      </section>
    )}
  </Layout>
)

/** What stands against it by name, first what stops it; of what nobody has said yet, how much. */
const Reckoned = ({ reckoning: r, goes }: { reckoning: Reckoning; goes: boolean }) => {
  if (r.unmet.length === 0) return null
  const stopping = r.unmet.filter(stops)
  const unsaid = r.unmet.filter((i) => i.state === 'unsaid').length
  const named = r.unmet.filter((i) => !stops(i) && i.state === 'unmet').map(notYet)
  const more = stopping.length === 0 || unsaid === 0 ? named : [...named, `${unsaid} not filled in yet`]
  return (
    <p class="small">
      <b>{stopping.length === 0 ? reckoningTitle(r, goes) : ['Stop', ...stopping.map(notYet)].join('. ')}.</b>{' '}
      {more.map((m) => `${m}.`).join(' ')}
    </p>
  )
}

/** `done`: nobody goes back any more, whatever was left to close up. */
const Row = ({ row, frame, done = false }: { row: RemovalRow; frame: Frame; done?: boolean }) => (
  <li class="job">
    <div class="job-what">
      <a class="job-name" href={row.path}>
        {row.name}
      </a>
      {row.address === null || row.address === row.name ? null : <p class="soft">{row.address}</p>}
      <p class="job-marks">
        <b>{row.fell ?? (done && row.stage === 'boxed' ? 'Boxed' : row.says)}</b>
        {row.plannedOn === null ? (
          row.next === null ? null : (
            <span class="soft">no day planned</span>
          )
        ) : (
          <time datetime={row.plannedOn}>
            {plannedWords(row.plannedOn, frame.today, done)}
            {row.plannedAt === null ? '' : `, ${row.plannedAt}`}
          </time>
        )}
        {row.colonies.map((c) => (
          <a class="tag tall" href={c.path}>
            {c.tag}
          </a>
        ))}
      </p>
      {row.begun === null ? null : (
        <p class="small">
          <b>Begun without a “go”</b>. {row.begun}
        </p>
      )}
      {row.newSigners === null ? null : (
        <p class="small">Second person with a new account: {row.newSigners}.</p>
      )}
      {row.reckoning === null ? null : (
        <Reckoned reckoning={row.reckoning} goes={row.stage === 'go' && !row.fell} />
      )}
    </div>
    {row.next === null ? null : (
      <a class="button" href={row.next.href}>
        {NEXT_WORDS[row.next.part]}
        <span class="unseen"> for {row.name}</span>
      </a>
    )}
  </li>
)
