/** The round: pick a yard, see how far one is, how long it takes and what to load; walk it, or say how much time there is. */

import { boxPath, endPath, roundPath, type Where } from '../../app/index.ts'
import { type Frame, Layout, Mark, PressingMark, VisitCautions, YardFold } from '../../parts/index.ts'
import { capital, type ToDo, toDoOf } from '../../words/index.ts'
import type { Load } from './bring.ts'
import { LoadList } from './load-list.tsx'
import type { Pace } from './pace.ts'
import { RoundProgress } from './progress.tsx'
import type { Round, Stop } from './round.ts'
import type { Choice } from './short-of-time.ts'
import { Time } from './time.tsx'
import { costWords, minutesWords, missedWords, urgencyWords } from './words.ts'

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
  /** A helper who has written nothing down yet, of late. */
  newHere: boolean
}

/** Whether boxes of more than one yard are on it, so that a box's yard has to be named. */
export const isAcrossYards = ({ round, where }: Pick<RoundView, 'round' | 'where'>): boolean =>
  where.yard === null && new Set([...round.stops, ...round.putOff].map((s) => s.box.yard)).size > 1

/** The order one walks: as chosen when time is short, else from stand to stand. */
export const walkOf = ({ round, choice }: Pick<RoundView, 'round' | 'choice'>): Stop[] =>
  choice?.open ?? round.stops

export const RoundPage = (p: RoundView & { load: Load[] }) => {
  const { frame, round, where } = p
  const w = frame.words.round
  const walk = walkOf(p)
  const next = walk.find((s) => s.state === 'to-do')
  const begun = round.progress.seen + round.progress.notReached > 0
  const held = heldIn(round)
  return (
    <Layout frame={frame} title={w.title}>
      <h1>{where.yard === null ? w.title : w.titleAt(where.yard)}</h1>
      <YardPicker {...p} />
      {round.stops.length === 0 ? (
        <p>{w.nothingAsked}</p>
      ) : (
        <>
          <RoundProgress round={round} words={frame.words} />
          <First held={held} {...p} />
          <div class="buttons">
            {next === undefined ? null : (
              <a
                class={held.length === 0 ? 'button button-do button-big' : 'button button-big'}
                href={boxPath(where, next.box.tag)}
              >
                {(begun ? w.goOn : w.start)(next.box.tag, next.box.stand)}
              </a>
            )}
            {next !== undefined ? null : (
              <a class="button button-do button-big" href={endPath(where)}>
                {w.howItWent}
              </a>
            )}
          </div>
          {p.newHere ? (
            <p>
              <a class="tall" href="/how/first-round">
                {frame.words.how.firstRoundTitle}
              </a>
            </p>
          ) : null}
          <Loads load={p.load} begun={begun} frame={frame} />
          <Time {...p} />
          {p.choice === null ? <Stops stops={round.stops} {...p} /> : <Chosen {...p} choice={p.choice} />}
          {next === undefined ? null : (
            <a class="button" href={endPath(where)}>
              {w.end}
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
          {w.printSheet}
        </a>
      </p>
    </Layout>
  )
}

const YardPicker = ({ yards, where, frame: { words } }: RoundView) =>
  yards.length < 2 ? null : (
    <nav class="picker" aria-label={words.round.whichYard}>
      {[{ yard: null, due: yards.reduce((n, y) => n + y.due, 0) }, ...yards].map((y) => (
        <a
          class="pick"
          href={roundPath({ yard: y.yard, until: where.until })}
          aria-current={y.yard === where.yard ? 'true' : undefined}
        >
          <b>{y.yard ?? words.round.allYards}</b> <span>{words.parts.box(y.due)}</span>
        </a>
      ))}
    </nav>
  )

/** Boxes that nothing may go in or out of: seen to before one walks from box to box. */
const heldIn = (round: RoundView['round']): Stop[] =>
  round.stops.filter((s) => s.state === 'to-do' && s.asked.advice.action === 'call-inspector')

const First = ({ held, where, frame: { words } }: RoundView & { held: Stop[] }) =>
  held.length === 0 ? null : (
    <div class="notice notice-late">
      <p>
        <b>{words.today.first}:</b> {words.trade.actions['call-inspector']}
      </p>
      <p class="buttons">
        {held.map((s) => (
          <a class="button button-do" href={boxPath(where, s.box.tag)}>
            {s.box.tag}
          </a>
        ))}
      </p>
    </div>
  )

const Loads = ({ load, begun, frame }: { load: Load[]; begun: boolean; frame: Frame }) =>
  load.length === 0 ? null : (
    <details class="caution" open={!begun}>
      <summary>{frame.words.round.bring}</summary>
      <LoadList load={load} words={frame.words} />
    </details>
  )

const Chosen = (p: RoundView & { choice: Choice }) => {
  const { choice, frame } = p
  const { words } = frame
  const w = words.round
  const across = isAcrossYards(p)
  /** Where ranks stand before the boxes, their stands do not. */
  const placeOf = ({ box }: Stop, ranked: boolean): string => {
    const place = [across ? box.yard : '', ranked && box.stand !== null ? words.parts.stand(box.stand) : '']
    const said = place.filter(Boolean).join(', ')
    return said === '' ? '' : `${capital(said)}. `
  }
  return (
    <>
      <section class="section">
        <h2>
          {choice.minutes === 0
            ? w.timeIsUp(p.where.until ?? '')
            : choice.open.length === 0
              ? w.nothingFits(choice.minutes)
              : w.inMinutes(choice.minutes, p.where.until ?? '')}
        </h2>
        {choice.open.length === 0 ? null : (
          <p class="soft">
            {w.order} {w.theseTake(choice.open.length, minutesWords(choice.used, words), across)}
          </p>
        )}
        <ol class="stops stops-ranked">
          {choice.open.map((s) => (
            <StopLine
              stop={s}
              view={p}
              note={`${placeOf(s, true)}${urgencyWords(s.urgency, frame.today, words)}.`}
            />
          ))}
        </ol>
      </section>
      {choice.left.length === 0 ? null : (
        <section class="section">
          <h2>{w.leftOut}</h2>
          <ol class="stops">
            {choice.left.map((s) => (
              <StopLine
                stop={s}
                view={p}
                note={`${placeOf(s, false)}${costWords(s, frame.today, undefined, words)}`}
              />
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
          yard={yards.length === 1 ? p.frame.words.round.standToStand : yard}
          says={
            yards.length === 1
              ? ''
              : p.frame.words.parts.box(p.stops.filter((s) => s.box.yard === yard).length)
          }
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
  const toDo = toDoOf(stop.stillAsks ? stop.box.plan : stop.asked, view.frame.words)
  return (
    <li class={`stop stop-${stop.state}`}>
      <a href={boxPath(view.where, stop.box.tag)}>
        <span class="stop-stand">{stop.box.stand ?? '–'}</span>
        <span class="stop-text">
          <span class="tag">{stop.box.tag}</span> {toDo?.title ?? ''}
          {note === null ? null : <small>{note}</small>}
          {stop.missed === null || stop.state === 'seen' ? null : (
            <small>{missedWords(stop.missed, view.frame.today, view.frame.words)}</small>
          )}
        </span>
        <StateMark stop={stop} toDo={toDo} words={view.frame.words.round} />
      </a>
    </li>
  )
}

interface StateProps {
  stop: Stop
  toDo: ToDo | null
  words: Frame['words']['round']
}

const StateMark = ({ stop, toDo, words }: StateProps) => {
  if (stop.state === 'seen' && !stop.half)
    return (
      <Mark shape={stop.late ? 'overdue' : 'answered'}>
        {stop.stillAsks ? words.moreToDo : words.states.seen}
      </Mark>
    )
  if (stop.state === 'not-reached') return <Mark shape="void">{words.states[stop.state]}</Mark>
  return toDo === null ? null : <PressingMark toDo={toDo} today={stop.box.plan.asOf} half={stop.half} />
}

const PutOff = (p: RoundView) =>
  p.round.putOff.length === 0 ? null : (
    <section class="section">
      <h2>{p.frame.words.round.putOff}</h2>
      <ol class="stops">
        {p.round.putOff.map((s) => (
          <StopLine stop={s} view={p} note={isAcrossYards(p) ? `${s.box.yard}.` : null} />
        ))}
      </ol>
    </section>
  )
