/** One box of the round: what matters at the lid, and the buttons at the thumb. */
import { v7 } from 'uuid'

import { boxPath, endPath, roundPath, thenTo } from '../../app/index.ts'
import { Crumb, correctPath, HowTo, InspectorLine, Layout, LostTaps, Mark } from '../../parts/index.ts'
import type { Plan } from '../../recovery/index.ts'
import {
  boundBeside,
  entryWords,
  headline,
  inUnits,
  leftOutBeside,
  leftWords,
  lidCautions,
  proves,
  type ToDo,
  toDoOf,
  type Units,
  type Words,
  warmthCaution,
} from '../../words/index.ts'
import { isAcrossYards, type RoundView, walkOf } from './page.tsx'
import { RoundProgress } from './progress.tsx'
import type { Stop } from './round.ts'
import { costWords, missedWords } from './words.ts'

export interface RoundColonyProps extends RoundView {
  stop: Stop
  /** Path of the colony's own page. */
  path: string
  /** Id for the one-tap outside look. */
  entryId: string
  /** Whom to call about a brood disease. */
  inspector: string
  /** What was just saved at the box before this one. */
  saved: { tag: string; words: string; path: string } | null
}

export const RoundColonyPage = (p: RoundColonyProps) => {
  const { frame, stop, where } = p
  const { box } = stop
  const { words } = frame
  const w = words.round
  const toDo = toDoOf(box.plan, words)
  const place = [isAcrossYards(p) ? box.yard : '', box.stand === null ? '' : words.parts.stand(box.stand)]
    .filter(Boolean)
    .join(', ')
  return (
    <Layout frame={frame} title={w.onRound(box.tag)} ways={false}>
      <div class="at-lid">
        <Crumb to={roundPath(where)}>{w.title}</Crumb>
        <RoundProgress round={p.round} words={words} here={box.id} />
        {p.saved === null ? null : (
          <p class="just-saved" role="status">
            {w.inBookFor(p.saved.tag, p.saved.words)}{' '}
            <a class="tall" href={p.saved.path}>
              {w.correctIt}
            </a>
          </p>
        )}
        <h1 class="lid-tag">
          {box.tag} {place === '' ? null : <small>{place}</small>}
        </h1>
        <p class="lid-headline">{standing(stop, words)}</p>
        {stop.state === 'seen' ? <Recorded {...p} /> : null}
        {stop.missed === null || stop.state === 'seen' ? null : <Missed {...p} />}
        {toDo === null || box.history.outcome !== null ? null : (
          <LookFor
            units={frame.units}
            toDo={toDo}
            plan={box.plan}
            now={stop.state === 'seen'}
            words={words}
          />
        )}
        {box.plan.advice.action === 'call-inspector' ? (
          <InspectorLine inspector={p.inspector} frame={frame} />
        ) : null}
        <Bound plan={box.plan} words={words} />
        <Cautions {...p} />
        {box.history.outcome !== null || box.plan.lost !== null ? null : (
          <LostTaps tag={box.tag} action={thenTo(`${p.path}/lost`, boxPath(where, box.tag))} id={v7()} />
        )}
        <p>
          <a class="tall" href={p.path}>
            {w.everything(box.tag)}
          </a>
        </p>
      </div>
      <Bar {...p} toDo={toDo} />
    </Layout>
  )
}

/** Where the colony is on its way. What is to be done stands below in full, so it is not said here too. */
function standing({ box }: Stop, w: Words): string {
  const { plan, history } = box
  if (history.outcome !== null) return leftWords(history.outcome.what, w)
  return toDoOf(plan, w) === null
    ? headline(plan, null, w)
    : w.round.phaseDay(w.trade.phases[plan.phase], plan.day)
}

/** `now`: a visit today has shown that this is to be done next. */
interface LookForProps {
  toDo: ToDo
  plan: Plan
  now: boolean
  words: Words
  units: Units
}

const LookFor = ({ toDo, plan, now, words, units }: LookForProps) => {
  const second = toDo.also[0]
  const leftOut = leftOutBeside(plan, toDo.why, words)
  return (
    <section class="look-for">
      <h2>{now ? words.round.now(lower(toDo.title)) : toDo.title}</h2>
      {toDo.question === null ? null : <p class="lid-question">{toDo.question}</p>}
      <p class="line-marks">
        {toDo.check === null ? null : <Mark shape={toDo.check.status} />}
        {toDo.lidOn ? <Mark shape="lid" /> : null}
        {toDo.check === null ? null : <span class="small">{words.dates.window(toDo.check, plan.asOf)}</span>}
      </p>
      <p>{inUnits(toDo.why, units)}</p>
      <HowTo act={toDo.act} />
      {leftOut === null ? null : <p class="left-out">{leftOut}</p>}
      {second === undefined ? null : (
        <p class="line-also">
          {words.parts.onSameVisit}{' '}
          {toDo.also
            .map(
              (c) =>
                `${words.trade.rules[c.rule].name}${c.status === 'overdue' ? ` ${words.parts.late}` : ''}`,
            )
            .join('; ')}
          . <span class="soft">{inUnits(words.reasons.all([second.reason]), units)}</span>
        </p>
      )}
    </section>
  )
}

/** Why a box is held that is bound to a suspected one. */
const Bound = ({ plan, words }: { plan: Plan; words: Words }) => {
  const said = boundBeside(plan, words)
  return said === null ? null : <p class="left-out">{said}</p>
}

const Missed = ({ stop, frame }: RoundColonyProps) =>
  stop.missed === null ? null : (
    <div class={stop.urgency.window === null ? 'notice' : 'notice notice-late'}>
      <p>{missedWords(stop.missed, frame.today, frame.words)}</p>
      {stop.urgency.window === null ? null : (
        <p>{costWords(stop, frame.today, stop.missed.again, frame.words)}</p>
      )}
    </div>
  )

/** What was written down today, what it set in motion, and what is to be done now. */
const Recorded = ({ stop, frame }: RoundColonyProps) => {
  const { plan, history } = stop.box
  const { words: w } = frame
  const look = stop.done.findLast((e) => e.kind === 'inspection') ?? null
  const found = stop.asked.asOf === plan.asOf && stop.asked !== plan ? proves(look, stop.asked, plan, w) : []
  return (
    <div class="notice notice-do">
      <p>
        <b>{w.round.inBookToday}</b>{' '}
        {stop.done.map((e, i) => {
          const words = entryWords(e, frame.units, frame.today, false, w)
          return (
            <>
              {i === 0 ? '' : '; '}
              {words.title}
              {words.facts.length === 0 ? '' : ` (${words.facts.join(', ')})`}{' '}
              <a href={correctPath(e.id, frame)}>
                {w.round.correct}
                <span class="unseen"> {words.title}</span>
              </a>
            </>
          )
        })}
      </p>
      {found.length === 0 ? null : (
        <ul>
          {found.map((line) => (
            <li>{line}</li>
          ))}
        </ul>
      )}
      {history.outcome !== null || toDoOf(plan) !== null ? null : (
        <p>{inUnits(w.reasons.all(plan.advice.reasons), frame.units)}</p>
      )}
    </div>
  )
}

const lower = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)

const Cautions = ({ stop, frame }: RoundColonyProps) => {
  const { plan, history } = stop.box
  const said =
    history.outcome === null
      ? [
          ...lidCautions(plan, history, frame.words),
          warmthCaution(plan, frame.units, frame.words) ?? [],
        ].flat()
      : []
  return said.length === 0 ? null : (
    <ul class="lid-cautions">
      {said.map((text) => (
        <li>{text}</li>
      ))}
    </ul>
  )
}

/** The boxes before and after on the walk. Once a box is seen it is out of the order of urgency: the first one is next. */
function neighbours(p: RoundColonyProps): { before: Stop | undefined; after: Stop | undefined } {
  const walk = walkOf(p)
  const at = walk.findIndex((s) => s.box.id === p.stop.box.id)
  return { before: at > 0 ? walk[at - 1] : undefined, after: walk[at + 1] }
}

/** At the thumb: what to write down, then previous, "could not get to it" and next. */
const Bar = (p: RoundColonyProps & { toDo: ToDo | null }) => {
  const { stop, where, toDo, path, frame } = p
  const { box } = stop
  const { before, after } = neighbours(p)
  const { parts, round: w } = frame.words
  const here = boxPath(where, stop.box.tag)
  const onward = after === undefined ? endPath(where) : boxPath(where, after.box.tag)
  const gone = stop.box.history.outcome !== null
  return (
    <nav class="lid-bar" aria-label={w.recordOr(stop.box.tag)}>
      {gone ? null : (
        <div class="lid-do">
          {toDo?.lidOn && frame.may('record-visit') ? (
            <form method="post" action={thenTo(`${path}/outside-look`, onward)}>
              <input type="hidden" name="id" value={p.entryId} />
              <button class="button button-do" type="submit">
                {parts.lookedAllWell}
              </button>
            </form>
          ) : null}
          {toDo !== null && box.plan.advice.action === 'move-out' && frame.may('record-outcome') ? (
            <a class="button" href={`${path}/outcome`}>
              {w.itLeft}
            </a>
          ) : null}
          <a
            class={toDo === null || toDo.lidOn || stop.state === 'seen' ? 'button' : 'button button-do'}
            href={thenTo(`${path}/visit${toDo?.lidOn ? '?lid=on' : ''}`, here)}
          >
            {toDo?.lidOn || stop.state === 'seen' ? w.recordMore : parts.recordVisit}
          </a>
        </div>
      )}
      <div class="lid-walk">
        {before === undefined ? (
          <a class="button" href={roundPath(where)}>
            ‹ {w.list}
          </a>
        ) : (
          <a class="button" href={boxPath(where, before.box.tag)}>
            ‹ {before.box.tag}
            <span class="unseen">{w.theOneBefore}</span>
          </a>
        )}
        {stop.state === 'seen' || gone ? (
          <span />
        ) : (
          <a class="button button-plain" href={thenTo(`${path}/missed`, onward)}>
            {w.couldNot}
          </a>
        )}
        <a class={stop.state === 'to-do' ? 'button' : 'button button-do'} href={onward}>
          {after === undefined ? w.endShort : after.box.tag} ›
          <span class="unseen">{after === undefined ? w.ofTheRound : w.theNextOne}</span>
        </a>
      </div>
    </nav>
  )
}
