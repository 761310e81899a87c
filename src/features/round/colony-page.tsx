/** One box of the round: what matters at the lid, and the buttons at the thumb. */
import { v7 } from 'uuid'

import { boxPath, endPath, roundPath, thenTo } from '../../app/index.ts'
import { HowTo, InspectorLine, Layout, LostTaps, Mark } from '../../parts/index.ts'
import type { Plan } from '../../recovery/index.ts'
import {
  boundWords,
  entryWords,
  headline,
  inUnits,
  leftOutBeside,
  leftWords,
  lidCautions,
  PHASE_WORDS,
  proves,
  RULE_WORDS,
  type ToDo,
  toDoOf,
  type Units,
  warmthCaution,
  windowWords,
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
  const toDo = toDoOf(box.plan)
  const place = [isAcrossYards(p) ? box.yard : '', box.stand === null ? '' : `stand ${box.stand}`]
    .filter(Boolean)
    .join(', ')
  return (
    <Layout frame={frame} title={`${box.tag} on the round`} ways={false}>
      <div class="at-lid">
        <p class="crumb">
          <a href={roundPath(where)}>‹ The round</a>
        </p>
        <RoundProgress round={p.round} here={box.id} />
        {p.saved === null ? null : (
          <p class="just-saved" role="status">
            In the book for {p.saved.tag}: {p.saved.words}.{' '}
            <a class="tall" href={p.saved.path}>
              Correct it
            </a>
          </p>
        )}
        <h1 class="lid-tag">
          {box.tag} {place === '' ? null : <small>{place}</small>}
        </h1>
        <p class="lid-headline">{standing(stop)}</p>
        {stop.state === 'seen' ? <Recorded {...p} /> : null}
        {stop.missed === null || stop.state === 'seen' ? null : <Missed {...p} />}
        {toDo === null || box.history.outcome !== null ? null : (
          <LookFor units={frame.units} toDo={toDo} plan={box.plan} now={stop.state === 'seen'} />
        )}
        {box.plan.advice.action === 'call-inspector' ? (
          <InspectorLine inspector={p.inspector} frame={frame} />
        ) : null}
        <Bound plan={box.plan} said={toDo?.why ?? ''} />
        <Cautions {...p} />
        {box.history.outcome !== null || box.plan.lost !== null ? null : (
          <LostTaps tag={box.tag} action={thenTo(`${p.path}/lost`, boxPath(where, box.tag))} id={v7()} />
        )}
        <p>
          <a class="tall" href={p.path}>
            Everything about {box.tag}
          </a>
        </p>
      </div>
      <Bar {...p} toDo={toDo} />
    </Layout>
  )
}

/** Where the colony is on its way. What is to be done stands below in full, so it is not said here too. */
function standing({ box }: Stop): string {
  const { plan, history } = box
  if (history.outcome !== null) return leftWords(history.outcome.what)
  return toDoOf(plan) === null ? headline(plan, null) : `${PHASE_WORDS[plan.phase]}, day ${plan.day}`
}

/** `now`: a visit today has shown that this is to be done next. */
const LookFor = ({ toDo, plan, now, units }: { toDo: ToDo; plan: Plan; now: boolean; units: Units }) => {
  const second = toDo.also[0]
  const leftOut = leftOutBeside(plan, toDo.why)
  return (
    <section class="look-for">
      <h2>
        {now ? 'Now: ' : ''}
        {now ? lower(toDo.title) : toDo.title}
      </h2>
      {toDo.question === null ? null : <p class="lid-question">{toDo.question}</p>}
      <p class="line-marks">
        {toDo.check === null ? null : <Mark shape={toDo.check.status} />}
        {toDo.lidOn ? <Mark shape="lid" /> : null}
        {toDo.check === null ? null : <span class="small">{windowWords(toDo.check, plan.asOf)}</span>}
      </p>
      <p>{inUnits(toDo.why, units)}</p>
      <HowTo act={toDo.act} />
      {leftOut === null ? null : <p class="left-out">{leftOut}</p>}
      {second === undefined ? null : (
        <p class="line-also">
          On the same visit:{' '}
          {toDo.also
            .map((c) => `${RULE_WORDS[c.rule].name}${c.status === 'overdue' ? ' (late)' : ''}`)
            .join('; ')}
          . <span class="soft">{second.why}</span>
        </p>
      )}
    </section>
  )
}

/** Why a box is held that is bound to a suspected one. */
const Bound = ({ plan, said }: { plan: Plan; said: string }) => {
  const words = plan.exposed === null || said.includes(plan.exposed.how) ? null : boundWords(plan)
  return words === null ? null : <p class="left-out">{words}</p>
}

const Missed = ({ stop, frame }: RoundColonyProps) =>
  stop.missed === null ? null : (
    <div class={stop.urgency.window === null ? 'notice' : 'notice notice-late'}>
      <p>{missedWords(stop.missed, frame.today)}</p>
      {stop.urgency.window === null ? null : <p>{costWords(stop, frame.today, stop.missed.again)}</p>}
    </div>
  )

/** What was written down today, what it set in motion, and what is to be done now. */
const Recorded = ({ stop, frame }: RoundColonyProps) => {
  const { plan, history } = stop.box
  const look = stop.done.findLast((e) => e.kind === 'inspection') ?? null
  const found = stop.asked.asOf === plan.asOf && stop.asked !== plan ? proves(look, stop.asked, plan) : []
  return (
    <div class="notice notice-do">
      <p>
        <b>In the book today:</b>{' '}
        {stop.done.map((e, i) => {
          const words = entryWords(e, frame.units, frame.today)
          return (
            <>
              {i === 0 ? '' : '; '}
              {words.title}
              {words.facts.length === 0 ? '' : ` (${words.facts.join(', ')})`}{' '}
              <a href={`/entry/${e.id}/correct`}>
                correct<span class="unseen"> {words.title}</span>
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
      {history.outcome !== null || toDoOf(plan) !== null ? null : <p>{plan.advice.why}</p>}
    </div>
  )
}

const lower = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)

const Cautions = ({ stop, frame }: RoundColonyProps) => {
  const { plan, history } = stop.box
  const said =
    history.outcome === null
      ? [...lidCautions(plan, history), warmthCaution(plan, frame.units) ?? []].flat()
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
  const here = boxPath(where, stop.box.tag)
  const onward = after === undefined ? endPath(where) : boxPath(where, after.box.tag)
  const gone = stop.box.history.outcome !== null
  return (
    <nav class="lid-bar" aria-label={`Record ${stop.box.tag}, or walk on`}>
      {gone ? null : (
        <div class="lid-do">
          {toDo?.lidOn && frame.may('record-visit') ? (
            <form method="post" action={thenTo(`${path}/outside-look`, onward)}>
              <input type="hidden" name="id" value={p.entryId} />
              <button class="button button-do" type="submit">
                Looked, all well
              </button>
            </form>
          ) : null}
          {toDo !== null && box.plan.advice.action === 'move-out' && frame.may('record-outcome') ? (
            <a class="button" href={`${path}/outcome`}>
              It left
            </a>
          ) : null}
          <a
            class={toDo === null || toDo.lidOn || stop.state === 'seen' ? 'button' : 'button button-do'}
            href={thenTo(`${path}/visit${toDo?.lidOn ? '?lid=on' : ''}`, here)}
          >
            {toDo?.lidOn || stop.state === 'seen' ? 'Record more' : 'Record the visit'}
          </a>
        </div>
      )}
      <div class="lid-walk">
        {before === undefined ? (
          <a class="button" href={roundPath(where)}>
            ‹ List
          </a>
        ) : (
          <a class="button" href={boxPath(where, before.box.tag)}>
            ‹ {before.box.tag}
            <span class="unseen">, the one before</span>
          </a>
        )}
        {stop.state === 'seen' || gone ? (
          <span />
        ) : (
          <a class="button button-plain" href={thenTo(`${path}/missed`, onward)}>
            Couldn’t get to it
          </a>
        )}
        <a class={stop.state === 'to-do' ? 'button' : 'button button-do'} href={onward}>
          {after === undefined ? 'End' : after.box.tag} ›
          <span class="unseen">{after === undefined ? ' of the round' : ', the next one'}</span>
        </a>
      </div>
    </nav>
  )
}
