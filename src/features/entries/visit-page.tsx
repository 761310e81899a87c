/** Recording a visit: tap what you saw; what it proves and what to do now stands beside it. */

import type { Child } from 'hono/jsx'
import { thenTo } from '../../app/index.ts'
import { anyTyped, FIELDS, Fields, type FormState, idOf } from '../../forms/index.ts'
import { FormPage, type Frame, HowTo, VisitCautions } from '../../parts/index.ts'
import type { Plan } from '../../recovery/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import {
  headline,
  isAsked,
  isQuiet,
  live,
  toDoOf,
  treatmentRisk,
  type Words,
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
  const { record } = p.frame.words
  const deeds = deedsOf(p)
  return (
    <FormPage
      frame={p.frame}
      title={record.visitTo(p.summary.tag)}
      form={p.form}
      action={thenTo(`${p.path}/visit`, p.then)}
      back={{ href: p.then ?? p.path, label: p.summary.tag }}
      button={record.saveVisit}
      labels={(name) => visitLabel(name, p.frame.words)}
      ids={VISIT_PREFIXES.map(idField)}
      scripts={['islands/record.ts']}
      photos
      intro={<Before plan={plan} frame={p.frame} />}
      advice={<LivePanel data={p.liveData} words={record.live} />}
    >
      <NothingNoted form={p.form} words={record} />
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
const NothingNoted = ({ form, words }: { form: FormState; words: Words['record'] }) =>
  form.problems.some((x) => x.field === NOTHING) ? (
    <label class="new-yard" id={idOf(NOTHING)}>
      <input type="checkbox" name={NOTHING} value="yes" /> {words.yesNothing}
    </label>
  ) : null

/** What the plan says before the lid is touched: its question, and on a tap all the rest. */
const Before = ({ plan, frame }: { plan: Plan; frame: Frame }) => {
  const { words: w } = frame
  const warmth = warmthCaution(plan, frame.units, w)
  const rules = askedRules(plan)
  const words = (asked: boolean): string =>
    rules
      .filter((rule) => isAsked(rule) === asked)
      .map((rule) => w.trade.rules[rule].question)
      .join(' ')
  const [first] = rules
  const [toFindOut, toDo] = [words(true), words(false)]
  return (
    <>
      <Quiet plan={plan} words={w} />
      <details class="before">
        <summary class="opens">
          {first === undefined ? headline(plan, null, w) : w.trade.rules[first].question}
        </summary>
        <p class="soft">{headline(plan, null, w)}.</p>
        {toFindOut === '' ? null : (
          <p>
            {w.record.toFindOut} {toFindOut}
          </p>
        )}
        {toDo === '' ? null : (
          <p>
            {w.record.toDo} {toDo}
          </p>
        )}
        {warmth === null ? null : <p class="soft">{warmth}</p>}
        <HowTo act={toDoOf(plan)?.act ?? null} />
      </details>
    </>
  )
}

/** Quiet time: the lid stays on, unless the plan itself says what is to be done inside. */
const Quiet = ({ plan, words: { dates, record } }: { plan: Plan; words: Words }) => {
  if (!isQuiet(plan) || plan.quiet === null) return null
  const why = record.quietWhy(dates.fromTo(plan.quiet.from, plan.quiet.to, plan.asOf))
  return toDoOf(plan)?.lidOn === false ? (
    <p>{record.beQuick(why)}</p>
  ) : (
    <div class="notice notice-late">
      <p>
        <b>{record.leaveLidOn}</b> {record.openCosts(why)}
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
  const { record } = frame.words
  const risk = treatmentRisk(summary.plan, frame.words)
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
      record.cage,
      <CageFields form={form} frame={frame} prefix={CAGE} visit />,
    ),
    deed(
      rules.has('egg-frame') || rules.has('buy-queen'),
      first,
      record.gave,
      <>
        {risk === null ? null : (
          <p class="hint">
            {record.treatment} {risk}
          </p>
        )}
        <GivenFields form={form} frame={frame} prefix={first} donors={donors} visit />
        {more.map((slot) => (
          <details class="also" open={filled(slot)}>
            <summary>{record.somethingElse}</summary>
            <GivenFields form={form} frame={frame} prefix={slot} donors={donors} visit />
          </details>
        ))}
      </>,
    ),
    deed(rules.has('comb-ties'), TIES, record.tiesOff, <TiesField form={form} prefix={TIES} />),
    deed(
      rules.has('mite-wash'),
      WASH,
      record.wash,
      <WashFields form={form} frame={frame} prefix={WASH} visit />,
    ),
  ]
}
