/** Today: how many boxes, which presses and where to begin; a line a box, danger first; then what can wait, and until when. */

import type { Day } from '../../days.ts'
import { BESIDE, type Frame, Layout, ListAndBox, YardFold } from '../../parts/index.ts'
import type { Words } from '../../words/index.ts'

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
  /** Removals of late that were begun without a “go”, where the viewer may see them. */
  withoutGo: string[]
  /** When the book went back to a backup, lately: day and time in words. */
  setBack: { day: string; at: string } | null
  /** Boxes that somebody asked to be looked at, for those who look after them. */
  looks: LookLine[]
  /** Boxes that somebody found lost. */
  lost: LostLine[]
  /** What contradicts itself, for those who may correct it. */
  doubts: DoubtLine[]
  /** No colony was ever logged. */
  empty: boolean
}

export const TodayPage = (p: TodayProps) => {
  const { title } = p.frame.words.today
  return (
    <Layout frame={p.frame} title={title} scripts={[BESIDE]}>
      {p.empty ? (
        <>
          <h1>{title}</h1>
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
}

/** The way to the first box; how many there are, and how many of them late. */
const Head = ({ urgent, yards, frame }: TodayProps) => {
  const { today } = frame.words
  const lines = [...urgent, ...yards.flatMap((y) => y.lines)]
  return (
    <>
      <div class="today-top">
        <h1>{today.title}</h1>
        {lines.length === 0 ? null : (
          /* What comes before the round is not outshone by it. */
          <a class={urgent.length > 0 ? 'button' : 'button button-do'} href="/round">
            {today.walk}
          </a>
        )}
      </div>
      <p class="today-sum">
        {lines.length === 0 ? today.nothing : today.toSeeTo(lines.length, lateOf(lines))}
      </p>
      <p id="phone-ready" class="fine phone-ready" />
    </>
  )
}

const lateOf = (lines: readonly TodayLine[]): number => lines.filter((l) => l.toDo.late).length

/** Danger, what others hand over, the round by yard, and what can wait. */
const Lists = (p: TodayProps) => (
  <>
    {p.urgent.length === 0 ? null : (
      <section class="round round-first">
        <h2>{p.frame.words.today.first}</h2>
        <ol class="todos">
          {p.urgent.map((line) => (
            <Line line={line} frame={p.frame} named={new Set(p.urgent.map((l) => l.yard)).size > 1} />
          ))}
        </ol>
      </section>
    )}
    {p.setBack === null ? null : (
      <p class="notice notice-late">{p.frame.words.today.setBack(p.setBack.day, p.setBack.at)}</p>
    )}
    <NotInBook count={p.notInBook} />
    {p.withoutGo.length === 0 ? null : (
      <p class="letters-due">
        <a class="tall" href={`/removals${p.withoutGo.length === 1 ? `/${p.withoutGo[0]}` : ''}`}>
          {p.frame.words.today.withoutGo(p.withoutGo.length)}
        </a>
      </p>
    )}
    <PleaseLook looks={p.looks} />
    {p.yards.map((y) => (
      <YardFold yard={y.yard} says={yardWords(y.lines, p.frame.words)} of={sizeOf(p)}>
        <ol class="todos">
          {y.lines.map((line) => (
            <Line line={line} frame={p.frame} />
          ))}
        </ol>
      </YardFold>
    ))}
    <LostBoxes lost={p.lost} frame={p.frame} />
    {p.letters === 0 ? null : (
      <p class="letters-due">
        <a class="tall" href="/letters">
          {p.frame.words.today.letters(p.letters)}
        </a>
      </p>
    )}
    <Doubts doubts={p.doubts} />
    <CanWait {...p} />
  </>
)

const sizeOf = ({ yards }: TodayProps) => ({
  lines: yards.reduce((n, y) => n + y.lines.length, 0),
  yards: yards.length,
})

function yardWords(lines: readonly TodayLine[], { parts, today }: Words): string {
  const late = lateOf(lines)
  return late === 0 ? parts.box(lines.length) : `${parts.box(lines.length)}, ${today.lateOnes(late)}`
}

const CanWait = ({ waiting, frame }: TodayProps) => {
  const { dates, parts, today } = frame.words
  return waiting.length === 0 ? null : (
    <details class="caution can-wait">
      <summary>
        <h2>{today.canWait}</h2>
        <small class="soft">{parts.box(waiting.reduce((n, w) => n + w.colonies.length, 0))}</small>
      </summary>
      <dl class="waits">
        {waiting.map((w) => (
          <>
            <dt>
              {w.until === null ? (
                today.nothingPlanned
              ) : (
                <>
                  {today.until} <time datetime={w.until}>{dates.dayAndDistance(w.until, frame.today)}</time>
                </>
              )}
            </dt>
            <dd>
              {w.colonies.map((c) => (
                <a class="wait" href={c.path} data-box={c.path}>
                  <span class="tag">{c.tag}</span>
                  {c.late ? <small> {today.lidOnThoughLate}</small> : null}
                </a>
              ))}
            </dd>
          </>
        ))}
      </dl>
    </details>
  )
}

const FirstRun = ({ frame }: { frame: Frame }) => {
  const { firstRun } = frame.words.today
  return (
    <div class="sheet first-run">
      <h2>{firstRun.title}</h2>
      <p>{firstRun.what}</p>
      <p>{firstRun.why}</p>
      {frame.may('log-intake') ? (
        <a class="button button-do" href="/intake">
          {firstRun.log}
        </a>
      ) : null}
    </div>
  )
}
