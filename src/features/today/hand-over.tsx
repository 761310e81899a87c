/** What Today hands to a beekeeper beside the round: boxes found lost, and looks that contradict each other. */
import type { Frame } from '../../parts/index.ts'

export interface LostLine {
  tag: string
  path: string
  /** 'Found dead on Tue 12 May, signed Juno' */
  words: string
}

export interface DoubtLine {
  tag: string
  path: string
  words: string
  /** What one does about it. */
  ways: string
}

export interface LookLine {
  tag: string
  path: string
  /** 'Tue 12 May, signed Juno' */
  when: string
  text: string
}

/** What phones could not hand in, for whoever can ask about it. */
export const NotInBook = ({ count }: { count: number }) =>
  count === 0 ? null : (
    <p class="notice notice-late">
      <a class="tall" href="/refused">
        {count === 1 ? '1 entry is' : `${count} entries are`} not in the book
      </a>
      : what was seen, and whom to ask.
    </p>
  )

/** Somebody at the box asked for another pair of eyes. */
export const PleaseLook = ({ looks }: { looks: LookLine[] }) =>
  looks.length === 0 ? null : (
    <section class="section">
      <h2>Please look at this</h2>
      <ul class="hand-over">
        {looks.map((l) => (
          <li>
            <a class="tag tall" href={l.path}>
              {l.tag}
            </a>{' '}
            “{l.text}” <span class="soft">{l.when}</span>{' '}
            <a class="button" href={`${l.path}/visit`}>
              Record the visit<span class="unseen"> to {l.tag}</span>
            </a>
          </li>
        ))}
      </ul>
      <p class="fine">
        Off this list once somebody else than who asked has been there, or has answered with a note.
      </p>
    </section>
  )

/** Anybody says that a box is lost; a beekeeper confirms how it left. */
export const LostBoxes = ({ lost, frame }: { lost: LostLine[]; frame: Frame }) =>
  lost.length === 0 ? null : (
    <section class="section">
      <h2>Found lost, to be confirmed</h2>
      <ul class="hand-over">
        {lost.map((l) => (
          <li>
            <a class="tag tall" href={l.path}>
              {l.tag}
            </a>{' '}
            {l.words}.{' '}
            {frame.may('record-outcome') ? (
              <a class="button button-do" href={`${l.path}/outcome`}>
                Confirm how it left<span class="unseen">: {l.tag}</span>
              </a>
            ) : (
              'A beekeeper confirms how it left.'
            )}
          </li>
        ))}
      </ul>
    </section>
  )

/** For those who may correct what others entered. */
export const Doubts = ({ doubts }: { doubts: DoubtLine[] }) =>
  doubts.length === 0 ? null : (
    <details class="caution can-wait">
      <summary>
        <h2>Entries that do not fit</h2>
      </summary>
      <ul class="hand-over">
        {doubts.map((d) => (
          <li>
            <a class="tag tall" href={d.path}>
              {d.tag}
            </a>{' '}
            {d.words} <b>{d.ways}</b>
          </li>
        ))}
      </ul>
    </details>
  )
