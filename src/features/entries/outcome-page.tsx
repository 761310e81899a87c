/** A colony leaves the yard. */

import { one } from '../../forms/index.ts'
import { BeforeItLeaves, HeldNotice } from '../../parts/index.ts'
import type { Permit } from '../../records/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { beforeItLeaves, unitingCaution } from '../../words/index.ts'
import { OutcomeFields } from './fields/leaving.tsx'
import { type EntryFormView, SmallFormPage } from './small-forms.tsx'

type OutcomeProps = EntryFormView & {
  others: string[]
  /** Papers noted for its move; null where they are not kept, as on a phone. */
  papers: readonly Permit[] | null
}

export const OutcomePage = ({ frame, form, summary, path, others, papers }: OutcomeProps) => (
  <SmallFormPage
    frame={frame}
    form={form}
    kind="outcome"
    title={`How ${summary.tag} left the yard`}
    action={`${path}/outcome`}
    back={{ href: path, label: summary.tag }}
    button="Save how it left"
    intro={
      <NotReady
        summary={summary}
        path={path}
        leaving={one(form.typed, 'what') === 'moved-out'}
        papers={papers}
      />
    }
  >
    <OutcomeFields form={form} frame={frame} others={others} />
  </SmallFormPage>
)

/** What moving out would want, and what uniting and moving ask of everybody. */
interface NotReadyProps {
  summary: ColonySummary
  path: string
  leaving: boolean
  papers: readonly Permit[] | null
}

const NotReady = ({ summary, path, leaving, papers }: NotReadyProps) => {
  const { ready, unmet } = summary.plan.readiness
  const queens = unitingCaution(summary.tag, summary.plan)
  return (
    <>
      <HeldNotice summary={summary} />
      {!leaving ? null : papers === null ? (
        <p>Its papers are not on this phone: look them up in its move-out record before it leaves.</p>
      ) : (
        <BeforeItLeaves said={beforeItLeaves(summary.plan, papers, summary.plan.asOf)} />
      )}
      {ready ? (
        <div class="notice notice-do">
          <p>
            Everything for moving out is met. A last look for disease, then go.{' '}
            <a class="tall" href={`${path}/visit`}>
              Record it
            </a>
          </p>
        </div>
      ) : (
        <details class="caution" open={leaving}>
          <summary>Not ready to move out: {unmet.length} missing</summary>
          <ul>
            {unmet.map((u) => (
              <li>{u.what}</li>
            ))}
          </ul>
          <p>
            <a class="tall" href={`${path}/visit`}>
              Record a last look
            </a>{' '}
            or{' '}
            <a class="tall" href={`${path}/note`}>
              note a decision
            </a>
            . You decide; how it left is noted either way.
          </p>
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
