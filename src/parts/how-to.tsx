/** The five steps of an act, where it is advised: folded, so that whoever knows it is not kept. */
import { useWords } from '../forms/index.ts'
import type { Act } from '../words/index.ts'

/** Address of the page of an act, which has drawings beside the steps. */
export const howPath = (act: Act): string => `/how/${act}`

export const Steps = ({ act }: { act: Act }) => (
  <ol class="how-steps">
    {useWords().steps[act].steps.map((step) => (
      <li>{step}</li>
    ))}
  </ol>
)

/** Nothing where the advice has no steps of its own. */
export const HowTo = ({ act }: { act: Act | null }) => {
  const { how, steps } = useWords()
  return act === null ? null : (
    <details class="how">
      <summary>{how.title}</summary>
      <p class="soft">{how.toHand(steps[act].bring)}</p>
      <Steps act={act} />
      <p>
        <a class="tall" href={howPath(act)}>
          {how.ownPage}
          <span class="unseen">: {steps[act].title}</span>
        </a>
      </p>
    </details>
  )
}
