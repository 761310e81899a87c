/** Recording a visit: tap what you saw; what it proves and what to do now stands beside it. */

import type { Child } from 'hono/jsx'
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
import { askedRules } from './asked.ts'
import { CageFields, GivenFields, TiesField, WashFields } from './fields/done.tsx'
import { AskedFields, OtherFields, VisitDay } from './fields/visit-fields.tsx'
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
  const deeds = deedsOf(p)
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
      <AskedFields form={p.form} frame={p.frame} plan={plan} />
      {deeds.filter((d) => d.asked).map((d) => d.part)}
      <OtherFields form={p.form} frame={p.frame} plan={plan} />
      {deeds.filter((d) => !d.asked).map((d) => d.part)}
      <Fields form={p.form} frame={p.frame} of={FIELDS.inspection} show={['note', 'photos']} />
      <VisitDay form={p.form} frame={p.frame} />
      <VisitCautions units={p.frame.units} />
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

/** What the plan says before the lid is touched: its question, and on a tap all the rest. */
const Before = ({ plan, frame }: { plan: Plan; frame: Frame }) => {
  const warmth = warmthCaution(plan, frame.units)
  const rules = askedRules(plan)
  const words = (asked: boolean): string =>
    rules
      .filter((rule) => isAsked(rule) === asked)
      .map((rule) => RULE_WORDS[rule].question)
      .join(' ')
  const [first] = rules
  const [toFindOut, toDo] = [words(true), words(false)]
  return (
    <>
      <Quiet plan={plan} />
      <details class="before">
        <summary class="opens">
          {first === undefined ? headline(plan, null) : RULE_WORDS[first].question}
        </summary>
        <p class="soft">{headline(plan, null)}.</p>
        {toFindOut === '' ? null : <p>To find out: {toFindOut}</p>}
        {toDo === '' ? null : <p>To do: {toDo}</p>}
        {warmth === null ? null : <p class="soft">{warmth}</p>}
        <HowTo act={toDoOf(plan)?.act ?? null} />
      </details>
    </>
  )
}

/** Quiet time: the lid stays on, unless the plan itself says what is to be done inside. */
const Quiet = ({ plan }: { plan: Plan }) => {
  if (!isQuiet(plan) || plan.quiet === null) return null
  const why = `${fromTo(plan.quiet.from, plan.quiet.to, plan.asOf)} a queen may be leaving her cell or flying to mate`
  return toDoOf(plan)?.lidOn === false ? (
    <p>Be quick, and do not open it around midday: {why}.</p>
  ) : (
    <div class="notice notice-late">
      <p>
        <b>Leave the lid on.</b> {why}; an open hive can cost you her. If it must be opened, not around
        midday.
      </p>
    </div>
  )
}

interface Deed {
  /** The plan asks for it today. */
  asked: boolean
  part: Child
}

/** What may be done beside looking: what the plan asks for stands open, below what it asks to be seen. */
function deedsOf({ form, frame, summary, donors }: VisitProps): Deed[] {
  const rules = new Set(live(summary.plan).map((c) => c.rule))
  const filled = (prefix: string): boolean =>
    anyTyped(form.typed, prefix) || form.problems.some((x) => x.field.startsWith(prefix))
  const [first, ...more] = GIFT_SLOTS
  const risk = treatmentRisk(summary.plan)
  const deed = (asked: boolean, prefix: string, title: string, fields: Child): Deed => ({
    asked,
    part: (
      <details class="also" open={asked || filled(prefix)}>
        <summary>{title}</summary>
        {fields}
      </details>
    ),
  })
  return [
    deed(
      rules.has('queen-release') || summary.phase === 'awaiting-release',
      CAGE,
      'Looked to a queen’s cage',
      <CageFields form={form} frame={frame} prefix={CAGE} visit />,
    ),
    deed(
      rules.has('egg-frame') || rules.has('buy-queen'),
      first,
      'Gave frames, a queen, feed or treatment',
      <>
        {risk === null ? null : <p class="hint">Treatment: {risk}</p>}
        <GivenFields form={form} frame={frame} prefix={first} donors={donors} visit />
        {more.map((slot) => (
          <details class="also" open={filled(slot)}>
            <summary>and something else</summary>
            <GivenFields form={form} frame={frame} prefix={slot} donors={donors} visit />
          </details>
        ))}
      </>,
    ),
    deed(rules.has('comb-ties'), TIES, 'Took the comb ties off', <TiesField form={form} prefix={TIES} />),
    deed(
      rules.has('mite-wash'),
      WASH,
      'Mite wash',
      <WashFields form={form} frame={frame} prefix={WASH} visit />,
    ),
  ]
}
