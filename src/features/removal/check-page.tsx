/** Before the cut: what is unmet, the list to fill in, and the decision. */

import { Fields, type FormState, ProblemSummary } from '../../forms/index.ts'
import { FormPage, type Frame, Layout } from '../../parts/index.ts'
import type { Decision } from '../../records/index.ts'
import { dayWords } from '../../words/index.ts'
import type { Reckoning } from './before-cut.ts'
import { FirstCheck } from './cautions.tsx'
import { DECISION_FIELDS } from './fields.ts'
import { partLabel } from './form.ts'
import { PartFields } from './part-fields.tsx'
import { ClashNotice, type RemovalPartProps } from './part-page.tsx'
import { ReckoningBox, ReckoningList } from './reckoning.tsx'
import { DECIDE } from './words.ts'

export const RemovalCheckPage = (p: RemovalPartProps & { reckoning: Reckoning; heat: string }) => (
  <FormPage
    frame={p.frame}
    title="Before the cut"
    form={p.form}
    action={`${p.path}/check`}
    back={{ href: p.path ?? '/removals', label: p.name }}
    button={p.clash === null ? 'Save and reckon' : 'Save mine over theirs'}
    labels={(field) => partLabel('check', field)}
    ids={['id', 'version']}
    intro={
      <>
        {p.clash === null ? null : <ClashNotice clash={p.clash} />}
        <FirstCheck sheet={p.sheet} />
        <p class="soft">Above {p.heat} nothing is cut out: the limit of this yard’s protocol.</p>
      </>
    }
    beside={
      <div class="beside">
        <ReckoningBox reckoning={p.reckoning} />
      </div>
    }
  >
    <PartFields part="check" form={p.form} frame={p.frame} types={p.types} currency={p.currency} />
  </FormPage>
)

export interface DecideProps {
  frame: Frame
  form: FormState
  path: string
  name: string
  reckoning: Reckoning
  decision: Decision | null
}

export const RemovalDecidePage = ({ frame, form, path, name, reckoning, decision }: DecideProps) => (
  <Layout frame={frame} title="Go, wait or refuse" ways={false}>
    <p class="crumb">
      <a href={path}>‹ {name}</a>
    </p>
    <h1>Go, wait or refuse</h1>
    <ProblemSummary form={form} labels={(field) => partLabel('decision', field)} />
    {decision === null ? null : (
      <p class="soft">
        Last decided: {DECIDE.find((d) => d.value === decision.is)?.label.toLowerCase()}, by {decision.by},{' '}
        {dayWords(decision.on, frame.today)}.
      </p>
    )}
    <ReckoningBox reckoning={reckoning} />
    <details class="caution">
      <summary>The whole list</summary>
      <ReckoningList reckoning={reckoning} />
    </details>
    <form method="post" action={`${path}/decide`} id="entry-form" novalidate>
      <Fields form={form} frame={frame} of={DECISION_FIELDS} show={['is', 'by', 'reason']} />
      <div class="save">
        <button class="button button-do" type="submit">
          Write it down
        </button>
        <a class="button" href={`${path}/check`}>
          Change the list
        </a>
      </div>
    </form>
  </Layout>
)
