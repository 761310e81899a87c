/** Safekeeping: when the last backup was, and the whole yard out and in. */

import { daysBetween } from '../../days.ts'
import { Save } from '../../forms/index.ts'
import { type Frame, Layout } from '../../parts/index.ts'
import type { BackupState } from '../../store/index.ts'
import { instantWords, sizeWords } from '../../words/index.ts'

export interface DataProps {
  frame: Frame
  now: string
  /** Null: a database in memory. */
  backups: BackupState | null
  done: string | null
  problems: string[]
}

export const DataPage = ({ frame, now, backups, done, problems }: DataProps) => (
  <Layout frame={frame} title="Data and backups">
    <h1>Data and backups</h1>
    {done === null ? null : (
      <div class="notice notice-do" role="status">
        <p>{done}</p>
      </div>
    )}
    {problems.length === 0 ? null : (
      <div class="notice notice-late" role="alert">
        <h2>Nothing was changed</h2>
        <ul class="problem-list">
          {problems.map((p) => (
            <li>{p}</li>
          ))}
        </ul>
      </div>
    )}
    <Backups frame={frame} now={now} state={backups} />
    <section class="section">
      <h2>Colonies as spreadsheets</h2>
      <p>
        An old spreadsheet taken in, whatever its columns are called; all colonies as CSV; imports taken back.
      </p>
      <p class="buttons">
        <a class="button" href="/data/colonies">
          Colonies in and out
        </a>
        <a class="button" href="/data/names">
          Names merged and renamed
        </a>
        <a class="button" href="/data/long-gone">
          Colonies long gone
        </a>
      </p>
    </section>
    <section class="section">
      <h2>The whole yard as one file</h2>
      <p>
        Every entry and every choice, in a documented format that any program can read (JSON Lines). Accounts
        stay here.
      </p>
      <p class="buttons">
        <a class="button" href="/data/export">
          Export without customers, costs and photos
        </a>
        <a class="button" href="/data/export?private=yes">
          Export everything
        </a>
      </p>
      <p class="fine">
        “Everything” holds names and addresses of customers: keep the file as you would keep their letters.
      </p>
    </section>
    <section class="section">
      <h2>Take a file in</h2>
      <p>
        Adds what is not here yet; entries that are here already stay as they are, so the same file may be
        taken in twice. All of it comes in, or nothing.
      </p>
      <form method="post" action="/data/import" enctype="multipart/form-data" class="form-alone">
        <div class="field">
          <label for="f-file">A file made by an export</label>
          <span class="control">
            <input id="f-file" type="file" name="file" accept=".jsonl,application/jsonl" required />
          </span>
        </div>
        <Save quiet>Take it in</Save>
      </form>
    </section>
  </Layout>
)

/** Hours after which a daily backup is missing. */
const LATE_HOURS = 36

const Backups = ({ frame, now, state }: { frame: Frame; now: string; state: BackupState | null }) => {
  const newest = state?.backups[0]
  const hours =
    newest === undefined ? Number.POSITIVE_INFINITY : (Date.parse(now) - Date.parse(newest.at)) / 3_600_000
  return (
    <section class="section">
      <h2>Backups</h2>
      {state?.damage ? (
        <div class="notice notice-late" role="alert">
          <h2>The book is damaged</h2>
          <p>
            {state.damage} No backup is thrown away until this is mended. On the server’s machine,{' '}
            <code>resettle verify</code> says what is wrong and how to go back.
          </p>
        </div>
      ) : null}
      {newest === undefined ? (
        <div class="notice notice-late" role="alert">
          <h2>There is no backup</h2>
          <p>
            If this machine fails now, everything written down is lost. Take one, and keep copies on another
            machine.
          </p>
        </div>
      ) : (
        <p>
          The last backup: <b>{instantWords(newest.at, frame.zone, frame.today)}</b>,{' '}
          {sizeWords(newest.bytes)}, proved whole when it was taken.
        </p>
      )}
      {newest !== undefined && hours > LATE_HOURS ? (
        <div class="notice notice-late" role="alert">
          <h2>The last backup is {Math.floor(hours / 24)} days old</h2>
          <p>There should be one every day.</p>
        </div>
      ) : null}
      {state?.failed ? (
        <div class="notice notice-late" role="alert">
          <h2>The last attempt failed</h2>
          <p>
            {instantWords(state.failed.at, frame.zone, frame.today)}: {state.failed.why}.
          </p>
        </div>
      ) : null}
      <form method="post" action="/data/backup">
        <button class={newest === undefined ? 'button button-do' : 'button'} type="submit">
          Take a backup now
        </button>
      </form>
      <p class="small">
        One is taken every day, and after every update that changes the database. Of the last days 7 are kept,
        of the last weeks 5, of the last months 12.
      </p>
      {state === null || state.backups.length === 0 ? null : (
        <details class="backups-all">
          <summary>
            {state.backups.length === 1 ? 'The one backup there is' : `All ${state.backups.length} backups`}
          </summary>
          <ul class="backups">
            {state.backups.map((b) => (
              <li>
                {instantWords(b.at, frame.zone, frame.today)}{' '}
                <span class="soft">
                  {sizeWords(b.bytes)}, {age(b.at, frame)}
                </span>
              </li>
            ))}
          </ul>
        </details>
      )}
      <p class="fine">
        They lie beside the database, on the same disk. A fire, a thief or a dead disk takes both: copy them
        to another machine. The handbook says how, and how to restore one.
      </p>
    </section>
  )
}

function age(at: string, frame: Frame): string {
  const days = daysBetween(at.slice(0, 10), frame.today)
  return days <= 0 ? 'today' : days === 1 ? '1 day old' : `${days} days old`
}
