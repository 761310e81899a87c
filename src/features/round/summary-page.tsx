/** The end of the round: what was done, what it set in motion, what was not reached, and what to bring next time. */

import { boxPath, roundPath } from '../../app/index.ts'
import { fromToday } from '../../days.ts'
import { Layout, Mark } from '../../parts/index.ts'
import { ACTION_WORDS, dayWords, entryWords, headline, leftWords, proves, toDoOf } from '../../words/index.ts'
import { LoadList, Tags } from './load-list.tsx'
import type { NextRound } from './next-round.ts'
import { isAcrossYards, type RoundView } from './page.tsx'
import { RoundProgress } from './progress.tsx'
import type { Stop } from './round.ts'
import { boxes, costWords, doneWords, missedWords } from './words.ts'

export const RoundSummaryPage = (p: RoundView & { next: NextRound | null }) => {
  const { frame, round, where } = p
  const seen = round.stops.filter((s) => s.state === 'seen')
  const left = round.stops.filter((s) => s.state !== 'seen')
  return (
    <Layout frame={frame} title="End of the round">
      <p class="crumb">
        <a href={roundPath(where)}>‹ The round</a>
      </p>
      <h1>{where.yard === null ? 'End of the round' : `End of the round at ${where.yard}`}</h1>
      <RoundProgress round={round} />
      <Next {...p} />
      <section class="section">
        <h2>Done</h2>
        {seen.length === 0 ? <p>Nothing has been recorded today.</p> : null}
        {seen.map((s) => (
          <Done stop={s} view={p} />
        ))}
      </section>
      {left.length === 0 ? null : (
        <section class="section">
          <h2>Not seen</h2>
          <ul class="plain">
            {left.map((s) => (
              <NotSeen stop={s} view={p} />
            ))}
          </ul>
        </section>
      )}
      {round.putOff.length === 0 ? null : (
        <section class="section">
          <h2>Put off to a later day</h2>
          <ul class="plain">
            {round.putOff.map((s) => (
              <NotSeen stop={s} view={p} />
            ))}
          </ul>
        </section>
      )}
    </Layout>
  )
}

const Next = ({ next, frame, where }: RoundView & { next: NextRound | null }) => {
  if (next === null)
    return (
      <p>No box asks for anything in the next three weeks{where.yard === null ? '' : ` at ${where.yard}`}.</p>
    )
  return (
    <section class="notice notice-do">
      <h2>
        Next round: {dayWords(next.day, frame.today)}, {fromToday(next.day, frame.today)}
      </h2>
      <p>
        {boxes(next.boxes.length)}: <Tags tags={next.boxes.map((b) => b.tag)} />
      </p>
      {next.load.length === 0 ? (
        <p>Nothing special to bring: smoker, tool, veil.</p>
      ) : (
        <>
          <p>
            <b>Bring</b>
          </p>
          <LoadList load={next.load} />
        </>
      )}
    </section>
  )
}

const Done = ({ stop, view }: { stop: Stop; view: RoundView }) => {
  const { frame } = view
  const { box } = stop
  const look = stop.done.findLast((e) => e.kind === 'inspection') ?? null
  const moved = stop.asked === box.plan ? [] : proves(look, stop.asked, box.plan)
  const gone = box.history.outcome
  return (
    <article class="done">
      <h3>
        <a class="tag" href={boxPath(view.where, box.tag)}>
          {box.tag}
        </a>{' '}
        {gone === null ? headline(box.plan, null) : leftWords(gone.what)}
      </h3>
      <p>{doneWords(stop.done.map((e) => entryWords(e, frame.units, frame.today)))}</p>
      {moved.length === 0 ? null : (
        <ul>
          {moved.map((line) => (
            <li>{line}</li>
          ))}
        </ul>
      )}
      {stop.stillAsks ? (
        <p>
          <Mark shape="due">still to do</Mark> {ACTION_WORDS[box.plan.advice.action]}. {box.plan.advice.why}
        </p>
      ) : null}
    </article>
  )
}

const NotSeen = ({ stop, view }: { stop: Stop; view: RoundView }) => (
  <li>
    <a class="tag" href={boxPath(view.where, stop.box.tag)}>
      {stop.box.tag}
    </a>{' '}
    {isAcrossYards(view) ? `(${stop.box.yard}) ` : ''}
    {toDoOf(stop.asked)?.title ?? ''}.{' '}
    {stop.missed === null ? null : <>{missedWords(stop.missed, view.frame.today)} </>}
    <span class="soft">{costWords(stop, view.frame.today, stop.missed?.again)}</span>
  </li>
)
