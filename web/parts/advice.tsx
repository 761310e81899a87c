/** What to do about a colony now, and the ways to write down what was done. */
import type { Plan } from '../../src/recovery/plan-types.ts'
import { fromTo } from '../words/dates.ts'
import { toDoOf } from '../words/lines.ts'
import { ACTION_WORDS, isQuiet } from '../words/rules.ts'

/** `said`: the page says it above already, after saving; only the ways are left to show. */
export const Advice = ({ plan, path, said }: { plan: Plan; path: string; said: boolean }) => {
  const toDo = toDoOf(plan)
  if (said) return <Ways plan={plan} path={path} />
  return (
    <div class={toDo === null ? 'notice' : 'notice notice-do'}>
      <h2>{toDo?.question ?? ACTION_WORDS[plan.advice.action]}</h2>
      <p>{plan.advice.why}</p>
      {isQuiet(plan) && plan.quiet !== null ? (
        <p>
          Quiet time {fromTo(plan.quiet.from, plan.quiet.to, plan.asOf)}: a queen may be leaving her cell,
          maturing or flying to mate. Look from outside only.
        </p>
      ) : null}
      <Ways plan={plan} path={path} />
    </div>
  )
}

const Ways = ({ plan, path }: { plan: Plan; path: string }) => {
  const { action } = plan.advice
  const lidOn = action === 'leave-alone' || action === 'outside-look'
  return (
    <div class="buttons colony-ways">
      <a class="button button-do" href={`${path}/visit${lidOn ? '?lid=on' : ''}`}>
        Record a visit
      </a>
      <a class={action === 'move-out' ? 'button button-do' : 'button'} href={`${path}/outcome`}>
        It left the yard
      </a>
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
