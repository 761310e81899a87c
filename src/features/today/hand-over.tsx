/** What Today hands to a beekeeper beside the round: boxes found lost, and looks that contradict each other. */
import { useWords } from '../../forms/index.ts'
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
export const NotInBook = ({ count }: { count: number }) => {
  const { today } = useWords()
  return count === 0 ? null : (
    <p class="notice notice-late">
      <a class="tall" href="/refused">
        {today.notInBook(count)}
      </a>
      {today.whatWasSeen}
    </p>
  )
}

/** Somebody at the box asked for another pair of eyes. */
export const PleaseLook = ({ looks }: { looks: LookLine[] }) => {
  const { parts, today } = useWords()
  return looks.length === 0 ? null : (
    <section class="section">
      <h2>{today.pleaseLook}</h2>
      <ul class="hand-over">
        {looks.map((l) => (
          <li>
            <a class="tag tall" href={l.path}>
              {l.tag}
            </a>{' '}
            “{l.text}” <span class="soft">{l.when}</span>{' '}
            <a class="button" href={`${l.path}/visit`}>
              {parts.recordVisit}
              <span class="unseen">{parts.to(l.tag)}</span>
            </a>
          </li>
        ))}
      </ul>
      <p class="fine">{today.offTheList}</p>
    </section>
  )
}

/** Anybody says that a box is lost; a beekeeper confirms how it left. */
export const LostBoxes = ({ lost, frame }: { lost: LostLine[]; frame: Frame }) => {
  const { parts, today } = frame.words
  return lost.length === 0 ? null : (
    <section class="section">
      <h2>{today.foundLost}</h2>
      <ul class="hand-over">
        {lost.map((l) => (
          <li>
            <a class="tag tall" href={l.path}>
              {l.tag}
            </a>{' '}
            {l.words}.{' '}
            {frame.may('record-outcome') ? (
              <a class="button button-do" href={`${l.path}/outcome`}>
                {today.confirm}
                <span class="unseen">{parts.of(l.tag)}</span>
              </a>
            ) : (
              today.beekeeperConfirms
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}

/** For those who may correct what others entered. */
export const Doubts = ({ doubts }: { doubts: DoubtLine[] }) => {
  const { today } = useWords()
  return doubts.length === 0 ? null : (
    <details class="caution can-wait">
      <summary>
        <h2>{today.doNotFit}</h2>
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
}
