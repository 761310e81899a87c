/** Today: what to do now, by yard, in the order one walks; then what can wait, and until when. */

import type { Day } from '../../days.ts'
import { type Frame, InspectorLine, Layout, Mark, WindowOf } from '../../parts/index.ts'
import type { Action, Check } from '../../recovery/index.ts'
import { dayAndDistance, RULE_WORDS, type ToDo } from '../../words/index.ts'

import {
  type DoubtLine,
  Doubts,
  type LookLine,
  LostBoxes,
  type LostLine,
  NotInBook,
  PleaseLook,
} from './hand-over.tsx'

export interface TodayLine {
  tag: string
  path: string
  stand: string | null
  toDo: ToDo
  /** That nobody got to it on an earlier round, or today; null when somebody was there since. */
  missed: string | null
  /** 'A look on Tue 12 May tells twice what today does.' Null where today is as good. */
  betterDay: string | null
  /** What the last look left out though it decides; null where the reason says it, or nothing is missing. */
  leftOut: string | null
  /** Bound to a suspected colony, in words; null where it is not, or the reason says it. */
  bound: string | null
  /** Whom to call, where that is what is to be done. */
  inspector: string | null
  /** Id for the one-tap outside look; '' where there is none. */
  entryId: string
}

export interface TodayProps {
  frame: Frame
  yards: { yard: string; lines: TodayLine[] }[]
  /** Colonies that can wait, by the day until which. */
  waiting: { until: Day | null; colonies: { tag: string; path: string; late: boolean }[] }[]
  /** Entries that phones could not hand in. */
  notInBook: number
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
  const lines = p.yards.flatMap((y) => y.lines)
  const late = lines.filter((l) => l.toDo.late).length
  return (
    <Layout frame={p.frame} title="Today">
      <h1>Today</h1>
      <p id="phone-ready" class="fine phone-ready" />
      {p.empty ? (
        <FirstRun frame={p.frame} />
      ) : (
        <p class="today-sum">
          {lines.length === 0 ? 'Nothing to do today.' : count(lines.length, 'colony', 'colonies')}
          {lines.length === 0 ? '' : ' to see to'}
          {late === 0 ? (lines.length === 0 ? '' : ', none late.') : `, ${late} late.`}
        </p>
      )}
      {lines.length === 0 ? null : (
        <p>
          <a class="button button-do" href="/round">
            Walk the round
          </a>
        </p>
      )}
      <NotInBook count={p.notInBook} />
      <PleaseLook looks={p.looks} />
      {p.yards.map((y) => (
        <section class="round">
          <h2>
            {y.yard} <small class="soft">{count(y.lines.length, 'box', 'boxes')}</small>
          </h2>
          <ol class="lines">
            {y.lines.map((line) => (
              <Line line={line} frame={p.frame} />
            ))}
          </ol>
        </section>
      ))}
      <LostBoxes lost={p.lost} frame={p.frame} />
      <Doubts doubts={p.doubts} />
      <CanWait {...p} />
    </Layout>
  )
}

const count = (n: number, one: string, more: string): string => `${n} ${n === 1 ? one : more}`

const Line = ({ line, frame }: { line: TodayLine; frame: Frame }) => {
  const { toDo } = line
  return (
    <li class={toDo.late ? 'line line-late' : 'line'}>
      <div class="line-margin">
        <a class="tag" href={line.path}>
          {line.tag}
        </a>
        {line.stand === null ? null : <span class="stand">stand {line.stand}</span>}
      </div>
      <div class="line-body">
        <p class="line-what">
          <strong>{toDo.title}</strong> {toDo.question}
        </p>
        <p class="line-marks">
          {toDo.check === null ? <Mark shape="due">today</Mark> : <Mark shape={toDo.check.status} />}
          {toDo.lidOn ? <Mark shape="lid" /> : null}
          {toDo.check === null ? null : (
            <span class="small">
              <WindowOf check={toDo.check} today={frame.today} />
            </span>
          )}
        </p>
        {line.missed === null ? null : <p class="line-missed">{line.missed}</p>}
        <p class="line-why">{toDo.why}</p>
        {line.leftOut === null ? null : <p class="line-why left-out">{line.leftOut}</p>}
        {line.bound === null ? null : <p class="line-why">{line.bound}</p>}
        {line.inspector === null ? null : <InspectorLine inspector={line.inspector} frame={frame} />}
        {line.betterDay === null ? null : <p class="line-why">{line.betterDay}</p>}
        <Also also={toDo.also} />
        <div class="buttons">
          <Record line={line} frame={frame} />
        </div>
      </div>
    </li>
  )
}

/** What a colony is expected to leave by, where that is what is to be done. */
const LEAVING: Partial<Record<Action, { what: string; label: string }>> = {
  'move-out': { what: 'moved-out', label: 'It moved out' },
  unite: { what: 'united', label: 'It was united' },
}

/** Buttons to write it down right here. What is merely possible today is not shouted. */
const Record = ({ line, frame }: { line: TodayLine; frame: Frame }) => {
  const { toDo, path, tag, entryId } = line
  const leaving = frame.may('record-outcome') ? LEAVING[toDo.action] : undefined
  const main = toDo.check?.status === 'open' ? 'button' : 'button button-do'
  return (
    <>
      {toDo.lidOn ? (
        <form method="post" action={`${path}/outside-look`}>
          <input type="hidden" name="id" value={entryId} />
          <button class={main} type="submit">
            Looked, all well<span class="unseen"> at {tag}</span>
          </button>
        </form>
      ) : null}
      {leaving === undefined ? null : (
        <a class={main} href={`${path}/outcome?what=${leaving.what}`}>
          {leaving.label}
          <span class="unseen">: {tag}</span>
        </a>
      )}
      <a
        class={toDo.lidOn || leaving !== undefined ? 'button' : main}
        href={`${path}/visit${toDo.lidOn ? '?lid=on' : ''}`}
      >
        {toDo.lidOn ? 'Write down more' : 'Record the visit'}
        <span class="unseen"> to {tag}</span>
      </a>
    </>
  )
}

const Also = ({ also }: { also: Check[] }) =>
  also.length === 0 ? null : (
    <p class="line-also">
      On the same visit:{' '}
      {also
        .map((c) => `${lowerFirst(RULE_WORDS[c.rule].name)}${c.status === 'overdue' ? ' (late)' : ''}`)
        .join('; ')}
      .
    </p>
  )

const lowerFirst = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)

const CanWait = ({ waiting, frame }: TodayProps) =>
  waiting.length === 0 ? null : (
    <section class="section">
      <h2>Can wait</h2>
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
                <a class="wait" href={c.path}>
                  <span class="tag">{c.tag}</span>
                  {c.late ? <small> lid on, though a check is late</small> : null}
                </a>
              ))}
            </dd>
          </>
        ))}
      </dl>
    </section>
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
