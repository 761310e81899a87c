/** A colony goes to another stand or yard. */

import { HeldNotice } from '../../parts/index.ts'
import { moveWords } from '../../words/index.ts'
import { MoveFields } from './fields/leaving.tsx'
import { type EntryFormView, SmallFormPage } from './small-forms.tsx'

export const MovePage = ({ frame, form, summary, path, yards }: EntryFormView & { yards: string[] }) => (
  <SmallFormPage
    frame={frame}
    form={form}
    kind="move"
    title={`${summary.tag} to another stand`}
    action={`${path}/move`}
    back={{ href: path, label: summary.tag }}
    button="Save the move"
    intro={
      <>
        <HeldNotice summary={summary} />
        <p class="soft">
          Now in {summary.yard}
          {summary.stand === null ? '' : `, stand ${summary.stand}`}.
        </p>
        {moveWords(summary.plan, frame.units).map((words) => (
          <p>{words}</p>
        ))}
      </>
    }
  >
    <MoveFields form={form} frame={frame} yards={yards} />
  </SmallFormPage>
)
