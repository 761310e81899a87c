/** Today: how many boxes, which presses and where to begin; a line a box, danger first; then what can wait, and until when. */

import type { Day } from '../../days.ts'
import { BESIDE, type Frame, Layout, ListAndBox } from '../../parts/index.ts'
import { dayAndDistance } from '../../words/index.ts'

import {
  type DoubtLine,
  Doubts,
  type LookLine,
  LostBoxes,
  type LostLine,
  NotInBook,
  PleaseLook,
} from './hand-over.tsx'
import { Line, type TodayLine } from './line.tsx'

export interface TodayProps {
  frame: Frame
  /** What cannot wait until tomorrow, of all yards. */
  urgent: TodayLine[]
  /** The other boxes to see to. */
  yards: { yard: string; lines: TodayLine[] }[]
  /** Colonies that can wait, by the day until which. */
  waiting: { until: Day | null; colonies: { tag: string; path: string; late: boolean }[] }[]
  /** Entries that phones could not hand in. */
  notInBook: number
  /** Customers whom it is time to tell, where the viewer may write to them. */
  letters: number
  /** Boxes that somebody asked to be looked at, for those who look after them. */
  looks: LookLine[]
  /** Boxes that somebody found lost. */
  lost: LostLine[]
  /** What contradicts itself, for those who may correct it. */
  doubts: DoubtLine[]
  /** No colony was ever logged. */
  empty: boolean
}

export const TodayPage = (p: TodayProps) => (
  <Layout frame={p.frame} title="Today" scripts={[BESIDE]}>
    {p.empty ? (
      <>
        <h1>Today</h1>
        <p id="phone-ready" class="fine phone-ready" />
        <FirstRun frame={p.frame} />
      </>
    ) : (
      <ListAndBox>
        <Head {...p} />
        <Lists {...p} />
      </ListAndBox>
    )}
  </Layout>
)

/** The way to the first box; how many there are, and how many of them late. */
const Head = ({ urgent, yards }: TodayProps) => {
  const lines = [...urgent, ...yards.flatMap((y) => y.lines)]
  const late = lines.filter((l) => l.toDo.late).length
  return (
    <>
      <div class="today-top">
        <h1>Today</h1>
        {lines.length === 0 ? null : (
          <a class="button button-do" href="/round">
            Walk the round
          </a>
        )}
      </div>
      <p class="today-sum">
        {lines.length === 0
          ? 'Nothing to do today.'
          : `${count(lines.length, 'colony', 'colonies')} to see to${late === 0 ? ', none late.' : `, ${late} late.`}`}
      </p>
      <p id="phone-ready" class="fine phone-ready" />
    </>
  )
}

/** Danger, what others hand over, the round by yard, and what can wait. */
const Lists = (p: TodayProps) => (
  <>
    {p.urgent.length === 0 ? null : (
      <section class="round round-first">
        <h2>First, before the round</h2>
        <ol class="todos">
          {p.urgent.map((line) => (
            <Line line={line} frame={p.frame} named={new Set(p.urgent.map((l) => l.yard)).size > 1} />
          ))}
        </ol>
      </section>
    )}
    <NotInBook count={p.notInBook} />
    {p.letters === 0 ? null : (
      <p class="letters-due">
        <a class="tall" href="/letters">
          {count(p.letters, 'letter', 'letters')} about day 30
        </a>
      </p>
    )}
    <PleaseLook looks={p.looks} />
    {p.yards.map((y) => (
      <section class="round">
        <h2>
          {y.yard} <small class="soft">{count(y.lines.length, 'box', 'boxes')}</small>
        </h2>
        <ol class="todos">
          {y.lines.map((line) => (
            <Line line={line} frame={p.frame} />
          ))}
        </ol>
      </section>
    ))}
    <LostBoxes lost={p.lost} frame={p.frame} />
    {p.letters === 0 ? null : (
      <a class="tall" href="/letters">
        {count(p.letters, 'letter', 'letters')} about day 30
      </a>
    )}
    <Doubts doubts={p.doubts} />
    <CanWait {...p} />
  </>
)

const count = (n: number, one: string, more: string): string => `${n} ${n === 1 ? one : more}`

const CanWait = ({ waiting, frame }: TodayProps) =>
  waiting.length === 0 ? null : (
    <details class="caution can-wait">
      <summary>
        <h2>Can wait</h2>
        <small class="soft">
          {count(
            waiting.reduce((n, w) => n + w.colonies.length, 0),
            'box',
            'boxes',
          )}
        </small>
      </summary>
      <dl class="waits">
        {waiting.map((w) => (
          <>
            <dt>
              {w.until === null ? (
                'nothing planned'
              ) : (
                <>
                  until <time datetime={w.until}>{dayAndDistance(w.until, frame.today)}</time>
                </>
              )}
            </dt>
            <dd>
              {w.colonies.map((c) => (
                <a class="wait" href={c.path} data-box={c.path}>
                  <span class="tag">{c.tag}</span>
                  {c.late ? <small> lid on, though a check is late</small> : null}
                </a>
              ))}
            </dd>
          </>
        ))}
      </dl>
    </details>
  )

const FirstRun = ({ frame }: { frame: Frame }) => (
  <div class="sheet first-run">
    <h2>Log the first intake</h2>
    <p>
      Write down the box on the truck: where the bees came from, whether the queen is caged, loose or unseen,
      and what brood came along. It takes a minute.
    </p>
    <p>
      From those dates this book works out when to look, what to look for, and when to leave the lid on, until
      the colony has a laying queen or is lost. Every morning this page says which boxes to open, and why.
    </p>
    {frame.may('log-intake') ? (
      <a class="button button-do" href="/intake">
        Log an intake
      </a>
    ) : null}
  </div>
)
