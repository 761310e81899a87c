/** The round: pick a yard, see how far one is, how long it takes and what to load; walk it, or say how much time there is. */

import { boxPath, endPath, roundPath, type Where } from '../../app/index.ts'
import { type Frame, Layout, Mark, PressingMark, VisitCautions, YardFold } from '../../parts/index.ts'
import { type ToDo, toDoOf } from '../../words/index.ts'
import type { Load } from './bring.ts'
import { LoadList } from './load-list.tsx'
import type { Pace } from './pace.ts'
import { RoundProgress } from './progress.tsx'
import type { Round, Stop } from './round.ts'
import { byUrgency, type Choice } from './short-of-time.ts'
import { boxes, costWords, minutesWords, missedWords, paceWords, STATE_WORDS, urgencyWords } from './words.ts'

/** What the pages of one round share. */
export interface RoundView {
  frame: Frame
  round: Round
  where: Where
  /** Yards with colonies in them, and how many of their boxes are on the round today. */
  yards: { yard: string; due: number }[]
  pace: Pace
  /** When time is short: what fits until `where.until`. */
  choice: Choice | null
}

/** Whether boxes of more than one yard are on it, so that a box's yard has to be named. */
export const isAcrossYards = ({ round, where }: Pick<RoundView, 'round' | 'where'>): boolean =>
  where.yard === null && new Set([...round.stops, ...round.putOff].map((s) => s.box.yard)).size > 1

/** The order one walks: as chosen when time is short, else from stand to stand. */
export const walkOf = ({ round, choice }: Pick<RoundView, 'round' | 'choice'>): Stop[] =>
  choice?.open ?? round.stops

export const RoundPage = (p: RoundView & { load: Load[] }) => {
  const { frame, round, where } = p
  const walk = walkOf(p)
  const next = walk.find((s) => s.state === 'to-do')
  const begun = round.progress.seen + round.progress.notReached > 0
  return (
    <Layout frame={frame} title="The round">
      <h1>{where.yard === null ? 'The round' : `The round at ${where.yard}`}</h1>
      <YardPicker {...p} />
      {round.stops.length === 0 ? (
        <p>No box asks for anything here today.</p>
      ) : (
        <>
          <RoundProgress round={round} />
          <div class="buttons">
            {next === undefined ? null : (
              <a class="button button-do button-big" href={boxPath(where, next.box.tag)}>
                {begun ? 'Go on' : 'Start'} with {next.box.tag}
                {next.box.stand === null ? '' : `, stand ${next.box.stand}`}
              </a>
            )}
            {next !== undefined ? null : (
              <a class="button button-do button-big" href={endPath(where)}>
                How the round went
              </a>
            )}
          </div>
          <Loads load={p.load} begun={begun} />
          <Time {...p} />
          {p.choice === null ? <Stops stops={round.stops} {...p} /> : <Chosen {...p} choice={p.choice} />}
          {next === undefined ? null : (
            <a class="button" href={endPath(where)}>
              End of the round
            </a>
          )}
        </>
      )}
      <PutOff {...p} />
      <VisitCautions units={p.frame.units} />
      <p>
        <a
          class="tall"
          href={`/paper${where.yard === null ? '' : `?${new URLSearchParams({ yard: where.yard })}`}`}
        >
          Print this round as a sheet
        </a>
      </p>
    </Layout>
  )
}

const YardPicker = ({ yards, where }: RoundView) =>
  yards.length < 2 ? null : (
    <nav class="picker" aria-label="Which yard">
      {[{ yard: null, due: yards.reduce((n, y) => n + y.due, 0) }, ...yards].map((y) => (
        <a
          class="pick"
          href={roundPath({ yard: y.yard, until: where.until })}
          aria-current={y.yard === where.yard ? 'true' : undefined}
        >
          <b>{y.yard ?? 'All yards'}</b> <span>{boxes(y.due)}</span>
        </a>
      ))}
    </nav>
  )

const Loads = ({ load, begun }: { load: Load[]; begun: boolean }) =>
  load.length === 0 ? null : (
    <details class="caution" open={!begun}>
      <summary>Bring</summary>
      <LoadList load={load} />
    </details>
  )

const OFFERED = [20, 40, 60, 90]

const Time = (p: RoundView) => {
  const { round, where, pace } = p
  const across = isAcrossYards(p)
  return (
    <details class="caution" open={where.until !== null}>
      <summary>
        {round.minutesLeft === 0
          ? 'Short of time?'
          : `Short of time? It takes ${minutesWords(round.minutesLeft)}`}
      </summary>
      {round.minutesLeft === 0 ? null : (
        <p>
          Walking included{across ? '; the way between yards is not' : ''}.{' '}
          <span class="fine">{paceWords(pace)}</span>
        </p>
      )}
      <form class="short-time" method="get" action="/round">
        {across ? <WhichYard {...p} /> : <input type="hidden" name="yard" value={where.yard ?? ''} />}
        <fieldset>
          <legend>I have only</legend>
          {OFFERED.map((n) => (
            <button class="button" type="submit" name="minutes" value={String(n)}>
              {n} min
            </button>
          ))}
        </fieldset>
      </form>
      {where.until === null ? null : (
        <p>
          <a class="tall" href={roundPath({ ...where, until: null })}>
            Back to the whole round, from stand to stand
          </a>
        </p>
      )}
    </details>
  )
}

/** Short of time one stays in one yard, the one that presses most, unless all of them are chosen. */
const WhichYard = ({ round, yards, choice }: RoundView) => {
  const first = choice === null ? byUrgency(round.stops.filter((s) => s.state === 'to-do'))[0]?.box.yard : ''
  return (
    <label class="short-yard">
      Where
      <select name="yard">
        {yards
          .filter((y) => y.due > 0)
          .map((y) => (
            <option value={y.yard} selected={y.yard === first}>
              {y.yard}
            </option>
          ))}
        <option value="" selected={first === ''}>
          all yards, the way between them not counted
        </option>
      </select>
    </label>
  )
}

const Chosen = (p: RoundView & { choice: Choice }) => {
  const { choice, frame } = p
  const across = isAcrossYards(p)
  /** Where ranks stand before the boxes, their stands do not. */
  const placeOf = ({ box }: Stop, ranked: boolean): string => {
    const place = [across ? box.yard : '', ranked && box.stand !== null ? `stand ${box.stand}` : '']
    const words = place.filter(Boolean).join(', ')
    return words === '' ? '' : `${words.charAt(0).toUpperCase()}${words.slice(1)}. `
  }
  return (
    <>
      <section class="section">
        <h2>
          {choice.minutes === 0
            ? `It is past ${p.where.until}: the time is up`
            : choice.open.length === 0
              ? `Nothing fits into ${choice.minutes} minutes`
              : `In ${choice.minutes} minutes, until ${p.where.until}, in this order`}
        </h2>
        {choice.open.length === 0 ? null : (
          <p class="soft">
            The bees’ own closing windows come first, then what is to be done, then what is late, due, and may
            be done; among equals, the box where a look tells most.{' '}
            {choice.open.length === 1 ? 'This box takes' : `These ${boxes(choice.open.length)} take`}{' '}
            {minutesWords(choice.used)}
            {isAcrossYards(p) ? ', without the way between the yards' : ''}.
          </p>
        )}
        <ol class="stops stops-ranked">
          {choice.open.map((s) => (
            <StopLine
              stop={s}
              view={p}
              note={`${placeOf(s, true)}${urgencyWords(s.urgency, frame.today)}.`}
            />
          ))}
        </ol>
      </section>
      {choice.left.length === 0 ? null : (
        <section class="section">
          <h2>Left out, and what that costs</h2>
          <ol class="stops">
            {choice.left.map((s) => (
              <StopLine stop={s} view={p} note={`${placeOf(s, false)}${costWords(s, frame.today)}`} />
            ))}
          </ol>
        </section>
      )}
    </>
  )
}

const Stops = (p: RoundView & { stops: Stop[] }) => {
  const yards = [...new Set(p.stops.map((s) => s.box.yard))]
  return (
    <>
      {yards.map((yard) => (
        <YardFold
          yard={yards.length === 1 ? 'From stand to stand' : yard}
          says={yards.length === 1 ? '' : boxes(p.stops.filter((s) => s.box.yard === yard).length)}
          of={{ lines: p.stops.length, yards: yards.length }}
        >
          <ol class="stops">
            {p.stops
              .filter((s) => s.box.yard === yard)
              .map((s) => (
                <StopLine stop={s} view={p} note={null} />
              ))}
          </ol>
        </YardFold>
      ))}
    </>
  )
}

const StopLine = ({ stop, view, note }: { stop: Stop; view: RoundView; note: string | null }) => {
  // Where more is to be done, it says what that is now, not what the morning asked.
  const toDo = toDoOf(stop.stillAsks ? stop.box.plan : stop.asked)
  return (
    <li class={`stop stop-${stop.state}`}>
      <a href={boxPath(view.where, stop.box.tag)}>
        <span class="stop-stand">{stop.box.stand ?? '–'}</span>
        <span class="stop-text">
          <span class="tag">{stop.box.tag}</span> {toDo?.title ?? ''}
          {note === null ? null : <small>{note}</small>}
          {stop.missed === null || stop.state === 'seen' ? null : (
            <small>{missedWords(stop.missed, view.frame.today)}</small>
          )}
        </span>
        <StateMark stop={stop} toDo={toDo} />
      </a>
    </li>
  )
}

const StateMark = ({ stop, toDo }: { stop: Stop; toDo: ToDo | null }) => {
  if (stop.state === 'seen' && !stop.half)
    return <Mark shape={stop.late ? 'overdue' : 'answered'}>{stop.stillAsks ? 'more to do' : 'seen'}</Mark>
  if (stop.state === 'not-reached') return <Mark shape="void">{STATE_WORDS[stop.state]}</Mark>
  return toDo === null ? null : <PressingMark toDo={toDo} today={stop.box.plan.asOf} half={stop.half} />
}

const PutOff = (p: RoundView) =>
  p.round.putOff.length === 0 ? null : (
    <section class="section">
      <h2>Put off to a later day</h2>
      <ol class="stops">
        {p.round.putOff.map((s) => (
          <StopLine stop={s} view={p} note={isAcrossYards(p) ? `${s.box.yard}.` : null} />
        ))}
      </ol>
    </section>
  )
