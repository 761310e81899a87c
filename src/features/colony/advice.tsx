/** What to do about a colony now, and the ways to write down what was done. */

import { v7 } from 'uuid'
import { type Frame, FromTo, HowTo, InspectorLine, LostTaps } from '../../parts/index.ts'
import type { Plan } from '../../recovery/index.ts'
import {
  ACTION_WORDS,
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
  const toDo = toDoOf(plan)
  const warmth = toDo === null || toDo.lidOn ? null : warmthCaution(plan, frame.units)
  if (said) return <Ways frame={frame} plan={plan} path={path} />
  return (
    <div class={toDo === null ? 'notice' : 'notice notice-do'}>
      <h2>{lostWords(plan) ?? toDo?.question ?? toDo?.title ?? ACTION_WORDS[plan.advice.action]}</h2>
      <p>{inUnits(plan.advice.why, frame.units)}</p>
      <LeftOut plan={plan} />
      {warmth === null ? null : <p class="soft">{warmth}</p>}
      {plan.advice.action === 'call-inspector' ? <InspectorLine inspector={inspector} frame={frame} /> : null}
      {isQuiet(plan) && plan.quiet !== null ? (
        <p>
          Quiet time <FromTo from={plan.quiet.from} to={plan.quiet.to} today={plan.asOf} />: look from outside
          only.
        </p>
      ) : null}
      {plan.lost === null ? <HowTo act={toDo?.act ?? null} /> : null}
      <Ways frame={frame} plan={plan} path={path} />
    </div>
  )
}

const LeftOut = ({ plan }: { plan: Plan }) => {
  const words = leftOutBeside(plan, plan.advice.why)
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
const Confirm = ({ frame, path }: { frame: Frame; path: string }) => (
  <div class="buttons">
    {frame.may('record-outcome') ? (
      <a class="button button-do" href={`${path}/outcome`}>
        Confirm how it left
      </a>
    ) : (
      <p class="soft">A beekeeper confirms how it left.</p>
    )}
    <a class="button" href={`${path}/visit`}>
      It lives: record a visit
    </a>
  </div>
)

const VisitWays = ({ frame, plan, path }: Pick<AdviceProps, 'frame' | 'plan' | 'path'>) => {
  const { action } = plan.advice
  const lidOn = action === 'leave-alone' || action === 'outside-look' || isHeld(plan)
  return (
    <div class="buttons colony-ways">
      <a class="button button-do" href={`${path}/visit${lidOn ? '?lid=on' : ''}`}>
        Record a visit
      </a>
      {frame.may('record-outcome') ? (
        <a class={action === 'move-out' ? 'button button-do' : 'button'} href={`${path}/outcome`}>
          It left the yard
        </a>
      ) : null}
      <a class="button" href={`${path}/move`}>
        Other stand
      </a>
      <a class="button" href={`${path}/note`}>
        Note
      </a>
    </div>
  )
}

/** A colony that left takes notes only; how it left is corrected in the journal. */
export const LeftWays = ({ path }: { path: string }) => (
  <div class="buttons">
    <a class="button" href={`${path}/note`}>
      Add a note
    </a>
  </div>
)
