/** One box on Today: a line that says where, what and how late; the reason and the buttons open on a tap. */
import { type Frame, howPath, InspectorLine, Mark, PressingMark, WindowOf } from '../../parts/index.ts'
import type { Action, Check } from '../../recovery/index.ts'
import { inUnits, type ToDo } from '../../words/index.ts'
import type { Danger } from './urgent.ts'

export interface TodayLine {
  tag: string
  path: string
  stand: string | null
  yard: string
  toDo: ToDo
  /** What cannot wait until tomorrow; null where it is merely work. */
  danger: Danger | null
  /** A look left out what decides. */
  half: boolean
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

/** `named`: the boxes around it stand in other yards. */
export const Line = ({ line, frame, named = false }: { line: TodayLine; frame: Frame; named?: boolean }) => (
  <li class={line.toDo.late || line.danger !== null ? 'todo todo-late' : 'todo'} data-box={line.path}>
    <details name="box">
      <summary class="todo-line">
        <span class="todo-where">
          <b class="tag">{line.tag}</b>
          {line.stand === null ? null : <small>{frame.words.parts.stand(line.stand)}</small>}
          {named ? <small>{line.yard}</small> : null}
        </span>
        <span class="todo-act">
          <span class="todo-head">
            <span class="todo-title">{line.toDo.title}</span>
            <PressingMark toDo={line.toDo} today={frame.today} half={line.half} />
          </span>
          {line.danger === null ? null : <small class="todo-danger">{line.danger.words}</small>}
        </span>
      </summary>
      <Why line={line} frame={frame} />
    </details>
  </li>
)

const Why = ({ line, frame }: { line: TodayLine; frame: Frame }) => {
  const { toDo } = line
  const { parts, today } = frame.words
  return (
    <div class="todo-why">
      {toDo.question === null ? null : <p class="todo-question">{toDo.question}</p>}
      <div class="buttons">
        <Record line={line} frame={frame} />
        {toDo.act === null ? null : (
          <a class="button button-plain" href={howPath(toDo.act)}>
            {parts.howItIsDone}
          </a>
        )}
        <a class="button button-plain" href={line.path}>
          {today.allAbout(line.tag)}
        </a>
      </div>
      <p class="line-marks">
        {toDo.lidOn ? <Mark shape="lid" /> : null}
        {toDo.check === null ? null : (
          <span class="small">
            {toDo.check.status === 'overdue' ? today.late : ''}
            <WindowOf check={toDo.check} today={frame.today} />
          </span>
        )}
      </p>
      {line.missed === null ? null : <p class="line-missed">{line.missed}</p>}
      <p>{inUnits(toDo.why, frame.units)}</p>
      {line.leftOut === null ? null : <p class="left-out">{line.leftOut}</p>}
      {line.bound === null ? null : <p>{line.bound}</p>}
      {line.inspector === null ? null : <InspectorLine inspector={line.inspector} frame={frame} />}
      {line.betterDay === null ? null : <p>{line.betterDay}</p>}
      <Also also={toDo.also} words={frame.words} />
    </div>
  )
}

/** What a colony is expected to leave by, where that is what is to be done. */
const LEAVING: Partial<Record<Action, { what: string; label: 'movedOut' | 'united' }>> = {
  'move-out': { what: 'moved-out', label: 'movedOut' },
  unite: { what: 'united', label: 'united' },
}

/** Buttons to write it down right here. What is merely possible today is not shouted. */
const Record = ({ line, frame }: { line: TodayLine; frame: Frame }) => {
  const { parts, today } = frame.words
  const { toDo, path, tag, entryId } = line
  const leaving = frame.may('record-outcome') ? LEAVING[toDo.action] : undefined
  const main = toDo.check?.status === 'open' ? 'button' : 'button button-do'
  return (
    <>
      {toDo.lidOn ? (
        <form method="post" action={`${path}/outside-look`}>
          <input type="hidden" name="id" value={entryId} />
          <button class={main} type="submit">
            {parts.lookedAllWell}
            <span class="unseen">{parts.at(tag)}</span>
          </button>
        </form>
      ) : null}
      {leaving === undefined ? null : (
        <a class={main} href={`${path}/outcome?what=${leaving.what}`}>
          {today[leaving.label]}
          <span class="unseen">{parts.of(tag)}</span>
        </a>
      )}
      <a
        class={toDo.lidOn || leaving !== undefined ? 'button' : main}
        href={`${path}/visit${toDo.lidOn ? '?lid=on' : ''}`}
      >
        {toDo.lidOn ? today.writeMore : parts.recordVisit}
        <span class="unseen">{parts.to(tag)}</span>
      </a>
    </>
  )
}

const Also = ({ also, words: { parts, trade } }: { also: Check[]; words: Frame['words'] }) =>
  also.length === 0 ? null : (
    <p class="line-also">
      {parts.onSameVisit}{' '}
      {also
        .map(
          (c) => `${lowerFirst(trade.rules[c.rule].name)}${c.status === 'overdue' ? ` ${parts.late}` : ''}`,
        )
        .join('; ')}
      .
    </p>
  )

const lowerFirst = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)
