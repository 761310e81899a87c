/** The five steps of an act, where it is advised: folded, so that whoever knows it is not kept. */
import { type Act, STEPS } from '../words/index.ts'

/** Address of the page of an act, which has drawings beside the steps. */
export const howPath = (act: Act): string => `/how/${act}`

export const Steps = ({ act }: { act: Act }) => (
  <ol class="how-steps">
    {STEPS[act].steps.map((step) => (
      <li>{step}</li>
    ))}
  </ol>
)

/** Nothing where the advice has no steps of its own. */
export const HowTo = ({ act }: { act: Act | null }) =>
  act === null ? null : (
    <details class="how">
      <summary>How it is done</summary>
      <p class="soft">To hand: {STEPS[act].bring}.</p>
      <Steps act={act} />
      <p>
        <a class="tall" href={howPath(act)}>
          On a page of its own
          <span class="unseen">: {STEPS[act].title}</span>
        </a>
      </p>
    </details>
  )
