/** A colony goes to another stand or yard. */

import { HeldNotice } from '../../parts/index.ts'
import { moveWords } from '../../words/index.ts'
import { MoveFields } from './fields/leaving.tsx'
import { type EntryFormView, SmallFormPage } from './small-forms.tsx'

export const MovePage = ({ frame, form, summary, path, yards }: EntryFormView & { yards: string[] }) => {
  const { corrections, entries } = frame.words
  const said = corrections.move
  return (
    <SmallFormPage
      frame={frame}
      form={form}
      kind="move"
      title={said.title(summary.tag)}
      action={`${path}/move`}
      back={{ href: path, label: summary.tag }}
      button={said.button}
      intro={
        <>
          <HeldNotice summary={summary} />
          <p class="soft">{said.now(entries.at(summary.yard, summary.stand ?? undefined))}</p>
          {moveWords(summary.plan, frame.units, frame.words).map((words) => (
            <p>{words}</p>
          ))}
        </>
      }
    >
      <MoveFields form={form} frame={frame} yards={yards} />
    </SmallFormPage>
  )
}
