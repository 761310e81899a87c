/** The end of the round: what was done, what it set in motion, what was not reached, and what to bring next time. */

import { boxPath, roundPath } from '../../app/index.ts'
import { Crumb, Layout, Mark } from '../../parts/index.ts'
import { entryWords, headline, inUnits, leftWords, proves, toDoOf } from '../../words/index.ts'
import { LoadList, MOST_TAGS, Tags } from './load-list.tsx'
import type { NextRound } from './next-round.ts'
import { isAcrossYards, type RoundView } from './page.tsx'
import { RoundProgress } from './progress.tsx'
import type { Stop } from './round.ts'
import { costWords, doneWords, missedWords } from './words.ts'

/** More boxes than this nobody got to are folded behind their number (judgement: half a screen of a phone). */
const MOST_LEFT = 6

export const RoundSummaryPage = (p: RoundView & { next: NextRound | null }) => {
  const { frame, round, where } = p
  const w = frame.words.round
  const seen = round.stops.filter((s) => s.state === 'seen')
  const left = round.stops.filter((s) => s.state !== 'seen')
  // What somebody said of a box today stands open.
  const told = left.filter((s) => s.state === 'not-reached')
  const rest = left.filter((s) => s.state !== 'not-reached')
  return (
    <Layout frame={frame} title={w.end}>
      <Crumb to={roundPath(where)}>{w.title}</Crumb>
      <h1>{where.yard === null ? w.end : w.endAt(where.yard)}</h1>
      <RoundProgress round={round} words={frame.words} />
      <Next {...p} />
      <section class="section">
        <h2>{w.done}</h2>
        {seen.length === 0 ? <p>{w.nothingRecorded}</p> : null}
        {seen.map((s) => (
          <Done stop={s} view={p} />
        ))}
      </section>
      {left.length === 0 ? null : (
        <section class="section">
          <h2>{w.notSeen}</h2>
          <NotSeenList of={told} view={p} />
          {rest.length <= MOST_LEFT ? (
            <NotSeenList of={rest} view={p} />
          ) : (
            <details class="caution">
              <summary>{frame.words.parts.box(rest.length)}</summary>
              <NotSeenList of={rest} view={p} />
            </details>
          )}
        </section>
      )}
      {round.putOff.length === 0 ? null : (
        <section class="section">
          <h2>{w.putOff}</h2>
          <NotSeenList of={round.putOff} view={p} />
        </section>
      )}
    </Layout>
  )
}

const Next = ({ next, frame, where }: RoundView & { next: NextRound | null }) => {
  const { dates, parts, round: w } = frame.words
  if (next === null) return <p>{w.noneInThreeWeeks(where.yard)}</p>
  return (
    <section class="notice notice-do">
      <h2>{w.nextRound(dates.day(next.day, frame.today), dates.fromToday(next.day, frame.today))}</h2>
      <p>
        {parts.box(next.boxes.length)}
        {next.boxes.length > MOST_TAGS ? (
          '.'
        ) : (
          <>
            : <Tags tags={next.boxes.map((b) => b.tag)} />
          </>
        )}
      </p>
      {next.load.length === 0 ? (
        <p>{w.nothingSpecial}</p>
      ) : (
        <>
          <p>
            <b>{w.bring}</b>
          </p>
          <LoadList load={next.load} words={frame.words} />
        </>
      )}
    </section>
  )
}

const Done = ({ stop, view }: { stop: Stop; view: RoundView }) => {
  const { frame } = view
  const { words: w } = frame
  const { box } = stop
  const look = stop.done.findLast((e) => e.kind === 'inspection') ?? null
  const moved = stop.asked === box.plan ? [] : proves(look, stop.asked, box.plan, w)
  const gone = box.history.outcome
  return (
    <article class="done">
      <h3>
        <a class="tag" href={boxPath(view.where, box.tag)}>
          {box.tag}
        </a>{' '}
        {gone === null ? headline(box.plan, null, w) : leftWords(gone.what, w)}
      </h3>
      <p>{doneWords(stop.done.map((e) => entryWords(e, frame.units, frame.today, false, w)))}</p>
      {moved.length === 0 ? null : (
        <ul>
          {moved.map((line) => (
            <li>{line}</li>
          ))}
        </ul>
      )}
      {stop.stillAsks ? (
        <p>
          <Mark shape="due">{w.round.stillToDo}</Mark> {w.trade.actions[box.plan.advice.action]}.{' '}
          {inUnits(w.reasons.all(box.plan.advice.reasons), frame.units)}
        </p>
      ) : null}
    </article>
  )
}

const NotSeenList = ({ of, view }: { of: readonly Stop[]; view: RoundView }) =>
  of.length === 0 ? null : (
    <ul class="plain">
      {of.map((s) => (
        <NotSeen stop={s} view={view} />
      ))}
    </ul>
  )

const NotSeen = ({ stop, view }: { stop: Stop; view: RoundView }) => (
  <li>
    <a class="tag" href={boxPath(view.where, stop.box.tag)}>
      {stop.box.tag}
    </a>{' '}
    {isAcrossYards(view) ? `(${stop.box.yard}) ` : ''}
    {toDoOf(stop.asked, view.frame.words)?.title ?? ''}.{' '}
    {stop.missed === null ? null : <>{missedWords(stop.missed, view.frame.today, view.frame.words)} </>}
    <span class="soft">{costWords(stop, view.frame.today, stop.missed?.again, view.frame.words)}</span>
  </li>
)
