/** What to do about a colony now, and the ways to write down what was done. */

import { v7 } from 'uuid'
import { useWords } from '../../forms/index.ts'
import { type Frame, HowTo, InspectorLine, LostTaps } from '../../parts/index.ts'
import type { Plan } from '../../recovery/index.ts'
import {
  inUnits,
  isHeld,
  isQuiet,
  leftOutBeside,
  lostWords,
  toDoOf,
  warmthCaution,
} from '../../words/index.ts'

/** `said`: the page says it above already, after saving; only the ways are left to show. */
interface AdviceProps {
  frame: Frame
  plan: Plan
  path: string
  said: boolean
  /** Whom to call about a brood disease. */
  inspector: string
}

export const Advice = ({ frame, plan, path, said, inspector }: AdviceProps) => {
  const w = frame.words
  const toDo = toDoOf(plan, w)
  const why = w.reasons.all(plan.advice.reasons)
  const warmth = toDo === null || toDo.lidOn ? null : warmthCaution(plan, frame.units, w)
  if (said) return <Ways frame={frame} plan={plan} path={path} />
  return (
    <div class={toDo === null ? 'notice' : 'notice notice-do'}>
      <h2>{lostWords(plan, w) ?? toDo?.question ?? toDo?.title ?? w.trade.actions[plan.advice.action]}</h2>
      <p>{inUnits(why, frame.units)}</p>
      <LeftOut plan={plan} why={why} />
      {warmth === null ? null : <p class="soft">{warmth}</p>}
      {plan.advice.action === 'call-inspector' ? <InspectorLine inspector={inspector} frame={frame} /> : null}
      {isQuiet(plan) && plan.quiet !== null ? (
        <p>{w.colony.quietTime(w.dates.fromTo(plan.quiet.from, plan.quiet.to, plan.asOf))}</p>
      ) : null}
      {plan.lost === null ? <HowTo act={toDo?.act ?? null} /> : null}
      <Ways frame={frame} plan={plan} path={path} />
    </div>
  )
}

const LeftOut = ({ plan, why }: { plan: Plan; why: string }) => {
  const words = leftOutBeside(plan, why, useWords())
  return words === null ? null : <p class="left-out">{words}</p>
}

const Ways = ({ frame, plan, path }: Pick<AdviceProps, 'frame' | 'plan' | 'path'>) => (
  <>
    {plan.lost === null ? (
      <VisitWays frame={frame} plan={plan} path={path} />
    ) : (
      <Confirm frame={frame} path={path} />
    )}
    {plan.lost === null ? <LostTaps tag={plan.tag} action={`${path}/lost`} id={v7()} /> : null}
  </>
)

/** Found lost: a beekeeper says how it left, or a visit says that it lives. */
const Confirm = ({ frame, path }: { frame: Frame; path: string }) => {
  const { colony, today } = frame.words
  return (
    <div class="buttons">
      {frame.may('record-outcome') ? (
        <a class="button button-do" href={`${path}/outcome`}>
          {today.confirm}
        </a>
      ) : (
        <p class="soft">{today.beekeeperConfirms}</p>
      )}
      <a class="button" href={`${path}/visit`}>
        {colony.itLives}
      </a>
    </div>
  )
}

const VisitWays = ({ frame, plan, path }: Pick<AdviceProps, 'frame' | 'plan' | 'path'>) => {
  const { action } = plan.advice
  const said = frame.words.colony
  const lidOn = action === 'leave-alone' || action === 'outside-look' || isHeld(plan)
  return (
    <div class="buttons colony-ways">
      <a class="button button-do" href={`${path}/visit${lidOn ? '?lid=on' : ''}`}>
        {said.recordVisit}
      </a>
      {frame.may('record-outcome') ? (
        <a class={action === 'move-out' ? 'button button-do' : 'button'} href={`${path}/outcome`}>
          {said.itLeft}
        </a>
      ) : null}
      <a class="button" href={`${path}/move`}>
        {said.otherStand}
      </a>
      <a class="button" href={`${path}/note`}>
        {said.note}
      </a>
    </div>
  )
}

/** A colony that left takes notes only; how it left is corrected in the journal. */
export const LeftWays = ({ path }: { path: string }) => (
  <div class="buttons">
    <a class="button" href={`${path}/note`}>
      {useWords().colony.addNote}
    </a>
  </div>
)
