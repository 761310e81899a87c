/** A colony leaves the yard. */
import type { ColonySummary } from '../../src/store/index.ts'
import { OutcomeFields } from '../parts/entry-fields/leaving.tsx'
import { type EntryFormView, SmallFormPage } from './small-forms.tsx'

type OutcomeProps = EntryFormView & { others: string[] }

export const OutcomePage = ({ frame, form, summary, path, others }: OutcomeProps) => (
  <SmallFormPage
    frame={frame}
    form={form}
    kind="outcome"
    title={`${summary.tag} left the yard`}
    action={`${path}/outcome`}
    back={{ href: path, label: summary.tag }}
    button="Save how it left"
    intro={<NotReady summary={summary} />}
  >
    <OutcomeFields form={form} frame={frame} others={others} />
  </SmallFormPage>
)

const NotReady = ({ summary }: { summary: ColonySummary }) => {
  const { ready, unmet } = summary.plan.readiness
  return (
    <div class={ready ? 'notice notice-do' : 'notice'}>
      {ready ? (
        <p>Everything for moving out is met. Last look for disease, then go.</p>
      ) : (
        <p>
          If it moves out: still missing are {unmet.map((u) => u.what).join('; ')}. You decide; it is noted
          either way.
        </p>
      )}
      <p class="small">
        Uniting: a disease look first; never unite a sick colony, nor one with laying workers blindly. Moving
        bees: registration, permits and inspection are local rules.
      </p>
    </div>
  )
}
