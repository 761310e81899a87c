/** A colony leaves the yard. */

import { HeldNotice } from '../../parts/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { unitingCaution } from '../../words/index.ts'
import { OutcomeFields } from './fields/leaving.tsx'
import { type EntryFormView, SmallFormPage } from './small-forms.tsx'

type OutcomeProps = EntryFormView & { others: string[] }

export const OutcomePage = ({ frame, form, summary, path, others }: OutcomeProps) => (
  <SmallFormPage
    frame={frame}
    form={form}
    kind="outcome"
    title={`How ${summary.tag} left the yard`}
    action={`${path}/outcome`}
    back={{ href: path, label: summary.tag }}
    button="Save how it left"
    intro={<NotReady summary={summary} />}
  >
    <OutcomeFields form={form} frame={frame} others={others} />
  </SmallFormPage>
)

/** What moving out would want, and what uniting and moving ask of everybody. */
const NotReady = ({ summary }: { summary: ColonySummary }) => {
  const { ready, unmet } = summary.plan.readiness
  const queens = unitingCaution(summary.tag, summary.plan)
  return (
    <>
      <HeldNotice summary={summary} />
      {ready ? (
        <div class="notice notice-do">
          <p>Everything for moving out is met. A last look for disease, then go.</p>
        </div>
      ) : (
        <details class="caution">
          <summary>Not ready to move out: {unmet.length} missing</summary>
          <ul>
            {unmet.map((u) => (
              <li>{u.what}</li>
            ))}
          </ul>
          <p>You decide; how it left is noted either way.</p>
        </details>
      )}
      {queens === null ? null : (
        <p>
          <b>Uniting: one queen first.</b> {queens}
        </p>
      )}
      <p class="small">
        Uniting: a disease look first; never unite a sick colony, nor one with laying workers blindly. Moving
        bees: registration, permits and inspection are local rules.
      </p>
    </>
  )
}
