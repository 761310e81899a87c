/** Recording a visit: tap what you saw; what it proves and what to do now stands beside it. */

import { thenTo } from '../../app/index.ts'
import { anyTyped, FIELDS, Fields, type FormState, idOf } from '../../forms/index.ts'
import { FormPage, type Frame, HowTo, VisitCautions } from '../../parts/index.ts'
import type { Plan } from '../../recovery/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import {
  fromTo,
  headline,
  isAsked,
  isQuiet,
  live,
  RULE_WORDS,
  toDoOf,
  treatmentRisk,
  warmthCaution,
} from '../../words/index.ts'
import { CageFields, GivenFields, TiesField, WashFields } from './fields/done.tsx'
import { VisitDay, VisitFields } from './fields/visit-fields.tsx'
import { LivePanel } from './live-panel.tsx'
import { CAGE, GIFT_SLOTS, idField, NOTHING, TIES, VISIT_PREFIXES, visitLabel, WASH } from './visit.ts'

export interface VisitProps {
  frame: Frame
  form: FormState
  summary: ColonySummary
  path: string
  /** Where on the round to go once it is saved; null off the round. */
  then: string | null
  /** What the live panel needs, as JSON. */
  liveData: string
  donors: string[]
}

export const VisitPage = (p: VisitProps) => {
  const { plan } = p.summary
  return (
    <FormPage
      frame={p.frame}
      title={`Visit to ${p.summary.tag}`}
      form={p.form}
      action={thenTo(`${p.path}/visit`, p.then)}
      back={{ href: p.then ?? p.path, label: p.summary.tag }}
      button="Save the visit"
      labels={visitLabel}
      ids={VISIT_PREFIXES.map(idField)}
      scripts={['islands/record.ts']}
      photos
      intro={<Before plan={plan} frame={p.frame} />}
      advice={<LivePanel data={p.liveData} />}
    >
      <NothingNoted form={p.form} />
      <VisitFields form={p.form} frame={p.frame} plan={plan} />
      <AlsoDone {...p} />
      <Fields form={p.form} frame={p.frame} of={FIELDS.inspection} show={['note', 'photos']} />
      <VisitDay form={p.form} frame={p.frame} />
      <VisitCautions />
    </FormPage>
  )
}

/** An empty visit is asked about before it is saved. */
const NothingNoted = ({ form }: { form: FormState }) =>
  form.problems.some((x) => x.field === NOTHING) ? (
    <label class="new-yard" id={idOf(NOTHING)}>
      <input type="checkbox" name={NOTHING} value="yes" /> Yes: nothing was looked at
    </label>
  ) : null

/** What the plan says before the lid is touched. */
const Before = ({ plan, frame }: { plan: Plan; frame: Frame }) => {
  const warmth = warmthCaution(plan, frame.units)
  const checks = live(plan)
  const words = (asked: boolean): string =>
    checks
      .filter((c) => isAsked(c.rule) === asked)
      .map((c) => RULE_WORDS[c.rule].question)
      .join(' ')
  const [toFindOut, toDo] = [words(true), words(false)]
  return (
    <>
      <p class="soft">{headline(plan, null)}.</p>
      {isQuiet(plan) && plan.quiet !== null ? (
        <div class="notice notice-late">
          <p>
            <b>Leave the lid on.</b> {fromTo(plan.quiet.from, plan.quiet.to, plan.asOf)} a queen may be
            leaving her cell or flying to mate; an open hive can cost you her. If it must be opened, not
            around midday.
          </p>
        </div>
      ) : null}
      {toFindOut === '' ? null : <p>To find out: {toFindOut}</p>}
      {toDo === '' ? null : <p>To do: {toDo}</p>}
      {warmth === null ? null : <p class="soft">{warmth}</p>}
      <HowTo act={toDoOf(plan)?.act ?? null} />
    </>
  )
}

const AlsoDone = ({ form, frame, summary, donors }: VisitProps) => {
  const rules = new Set(live(summary.plan).map((c) => c.rule))
  const filled = (prefix: string): boolean =>
    anyTyped(form.typed, prefix) || form.problems.some((x) => x.field.startsWith(prefix))
  const [first, ...more] = GIFT_SLOTS
  const risk = treatmentRisk(summary.plan)
  return (
    <>
      <details
        class="also"
        open={filled(CAGE) || rules.has('queen-release') || summary.phase === 'awaiting-release'}
      >
        <summary>Looked to a queen’s cage</summary>
        <CageFields form={form} frame={frame} prefix={CAGE} visit />
      </details>
      <details class="also" open={filled(first) || rules.has('egg-frame') || rules.has('buy-queen')}>
        <summary>Gave frames, a queen, feed or treatment</summary>
        {risk === null ? null : <p class="hint">Treatment: {risk}</p>}
        <GivenFields form={form} frame={frame} prefix={first} donors={donors} visit />
        {more.map((slot) => (
          <details class="also" open={filled(slot)}>
            <summary>and something else</summary>
            <GivenFields form={form} frame={frame} prefix={slot} donors={donors} visit />
          </details>
        ))}
      </details>
      <details class="also" open={filled(TIES) || rules.has('comb-ties')}>
        <summary>Took the comb ties off</summary>
        <TiesField form={form} prefix={TIES} />
      </details>
      <details class="also" open={filled(WASH) || rules.has('mite-wash')}>
        <summary>Mite wash</summary>
        <WashFields form={form} frame={frame} prefix={WASH} visit />
      </details>
    </>
  )
}
