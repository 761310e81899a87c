/** The short forms of health: a wash, feed, and clearing a suspected disease. */

import { FIELDS, Fields } from '../../forms/index.ts'
import { treatmentRisk } from '../../words/index.ts'
import {
  ClearedFields,
  DayField,
  type EntryFormView,
  FeedFields,
  SmallFormPage,
  TreatmentFields,
  WashFields,
} from '../entries/index.ts'
import { TreatmentNote } from './guide.tsx'

const back = (p: EntryFormView) => ({
  href: `${p.path}/health`,
  label: p.frame.words.health.title(p.summary.tag),
})

export const WashPage = (p: EntryFormView) => {
  const said = p.frame.words.health.forms
  return (
    <SmallFormPage
      frame={p.frame}
      form={p.form}
      kind="mite-wash"
      title={said.washTitle(p.summary.tag)}
      action={`${p.path}/wash`}
      back={back(p)}
      button={said.saveWash}
    >
      <WashFields form={p.form} frame={p.frame} />
      <DayField form={p.form} frame={p.frame} kind="mite-wash" />
    </SmallFormPage>
  )
}

export const FeedPage = (p: EntryFormView) => {
  const said = p.frame.words.health.forms
  return (
    <SmallFormPage
      frame={p.frame}
      form={p.form}
      kind="given"
      title={said.feedTitle(p.summary.tag)}
      action={`${p.path}/feed`}
      back={back(p)}
      button={said.saveFeed}
    >
      <FeedFields form={p.form} frame={p.frame} />
      <DayField form={p.form} frame={p.frame} kind="given" />
    </SmallFormPage>
  )
}

const Risk = ({ frame, summary: { plan } }: EntryFormView) => {
  const words = treatmentRisk(plan, frame.words)
  return words === null ? null : (
    <p>
      <b>{words}</b>
    </p>
  )
}

export const TreatPage = (p: EntryFormView) => {
  const said = p.frame.words.health.forms
  return (
    <SmallFormPage
      frame={p.frame}
      form={p.form}
      kind="given"
      title={said.treatTitle(p.summary.tag)}
      action={`${p.path}/treat`}
      back={back(p)}
      button={said.saveTreatment}
      intro={
        <div class="notice">
          <TreatmentNote />
          <Risk {...p} />
        </div>
      }
    >
      <input type="hidden" name="what" value="treatment" />
      <TreatmentFields form={p.form} frame={p.frame} />
      <DayField form={p.form} frame={p.frame} kind="given" />
      <Fields
        form={p.form}
        frame={p.frame}
        of={FIELDS.given}
        show={['note']}
        with={{ note: { hint: said.noteHint } }}
      />
    </SmallFormPage>
  )
}

export const ClearedPage = (p: EntryFormView) => (
  <SmallFormPage
    frame={p.frame}
    form={p.form}
    kind="disease-cleared"
    title={`Clear ${p.summary.tag} of a suspected disease`}
    action={`${p.path}/cleared`}
    back={back(p)}
    button="Record that it is cleared"
    intro={
      <div class="notice">
        <p>
          From this day on it may be moved, united and used as a donor again. A clean look of your own is weak
          proof: about one colony in five that carries American foulbrood shows it within a month, half within
          two. Where the inspector was called, the inspector decides.
        </p>
      </div>
    }
  >
    <ClearedFields form={p.form} frame={p.frame} />
    <DayField form={p.form} frame={p.frame} kind="disease-cleared" />
  </SmallFormPage>
)
