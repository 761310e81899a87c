/** A visit's questions: what the plan asks first and open, the others folded by subject, the day last. */
import { type DrawnIn, FIELDS, Fields, one, useWords } from '../../../forms/index.ts'
import type { Plan } from '../../../recovery/index.ts'
import { INSIDE, leading, type Seen, SUBJECTS, type Subject } from '../asked.ts'
import { DayAndTime, type EntryFieldsProps } from './common.tsx'

interface AskedProps extends EntryFieldsProps {
  plan: Plan
}

const leads = ({ plan, form }: AskedProps): Seen[] => leading(plan, one(form.typed, 'opened') === 'no')

/** The lid, and what the plan asks. */
export const AskedFields = (p: AskedProps) => {
  const lead = leads(p)
  const inside = lead.filter((f) => (INSIDE as readonly Seen[]).includes(f))
  return (
    <>
      <div class="lid-taps">
        <Fields {...p} of={FIELDS.inspection} show={['opened']} />
      </div>
      <div class="inside">
        <Fields {...p} of={FIELDS.inspection} show={inside} />
      </div>
      <Fields {...p} of={FIELDS.inspection} show={lead.filter((f) => !inside.includes(f))} />
      {lead.includes('signs') ? <Foulbrood /> : null}
    </>
  )
}

/** What nobody asks today, by subject. */
export const OtherFields = (p: AskedProps) => {
  const lead = leads(p)
  const rest = (subjects: readonly Subject[]) =>
    subjects.map((s) => <Folded {...p} subject={s} leads={lead} />)
  return (
    <>
      <div class="inside">{rest(SUBJECTS.inside)}</div>
      {rest(SUBJECTS.outside)}
    </>
  )
}

/** Open where something in it was said already, or is wrong. */
const Folded = ({ subject, leads, ...p }: DrawnIn & { subject: Subject; leads: readonly Seen[] }) => {
  const { record } = useWords()
  const title = record.subjects[subject.title]
  const fields = subject.fields.filter((f) => !leads.includes(f))
  if (fields.length === 0) return null
  const said = fields.some(
    (f) => one(p.form.typed, f) !== '' || p.form.problems.some((x) => x.field.startsWith(f)),
  )
  return (
    <details class="also" open={said}>
      <summary>{fields.length === subject.fields.length ? title : record.more(title)}</summary>
      <Fields {...p} of={FIELDS.inspection} show={fields} />
      {fields.includes('signs') ? <Foulbrood /> : null}
    </details>
  )
}

export const Foulbrood = () => <p class="hint">{useWords().record.foulbrood}</p>

/** Today and now, unless somebody writes it down later. */
export const VisitDay = (p: EntryFieldsProps) => {
  const { typed, problems } = p.form
  const [on, at] = [one(typed, 'on'), one(typed, 'at')]
  const today = on === p.frame.today
  const { dates, record } = p.frame.words
  const day = today
    ? record.todayWord
    : /^\d{4}-\d\d-\d\d$/.test(on)
      ? dates.day(on, p.frame.today)
      : record.theDay
  return (
    <details class="also" open={!today || problems.some((x) => x.field === 'on' || x.field === 'at')}>
      <summary>{record.anotherDay(day, at)}</summary>
      <DayAndTime {...p} kind="inspection" />
    </details>
  )
}
