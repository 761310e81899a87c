/** The short forms of health: a wash, feed, and clearing a suspected disease. */

import type { Child } from 'hono/jsx'
import { FIELDS, Fields } from '../../forms/index.ts'
import { treatmentRisk } from '../../words/index.ts'
import { ClearedFields, DayField, type EntryFormView, SmallFormPage, WashFields } from '../entries/index.ts'
import { FeedFields, TreatmentFields } from './fields.tsx'
import { TreatmentNote } from './guide.tsx'

/** A short form that leads back to the colony's health. */
const HealthForm = (
  p: EntryFormView & {
    kind: 'mite-wash' | 'given' | 'disease-cleared'
    title: string
    /** Where it is sent, below the colony's own address. */
    to: string
    button: string
    intro?: Child
    children: Child
  },
) => (
  <SmallFormPage
    frame={p.frame}
    form={p.form}
    kind={p.kind}
    title={p.title}
    action={`${p.path}/${p.to}`}
    back={{ href: `${p.path}/health`, label: p.frame.words.health.title(p.summary.tag) }}
    button={p.button}
    intro={p.intro}
  >
    {p.children}
  </SmallFormPage>
)

export const WashPage = (p: EntryFormView) => {
  const said = p.frame.words.health.forms
  return (
    <HealthForm
      {...p}
      kind="mite-wash"
      title={said.washTitle(p.summary.tag)}
      to="wash"
      button={said.saveWash}
    >
      <WashFields form={p.form} frame={p.frame} />
      <DayField form={p.form} frame={p.frame} kind="mite-wash" />
    </HealthForm>
  )
}

export const FeedPage = (p: EntryFormView) => {
  const said = p.frame.words.health.forms
  return (
    <HealthForm {...p} kind="given" title={said.feedTitle(p.summary.tag)} to="feed" button={said.saveFeed}>
      <FeedFields form={p.form} frame={p.frame} />
      <DayField form={p.form} frame={p.frame} kind="given" />
    </HealthForm>
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
    <HealthForm
      {...p}
      kind="given"
      title={said.treatTitle(p.summary.tag)}
      to="treat"
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
    </HealthForm>
  )
}

export const ClearedPage = (p: EntryFormView) => (
  <HealthForm
    {...p}
    kind="disease-cleared"
    title={`Clear ${p.summary.tag} of a suspected disease`}
    to="cleared"
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
  </HealthForm>
)
