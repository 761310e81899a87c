/** Correcting an entry: its own form, filled in. Taking one back: a reason. */

import type { Child } from 'hono/jsx'
import { FIELDS, Fields, type FormState } from '../../forms/index.ts'
import type { StandingEntry } from '../../journal/index.ts'
import type { Frame } from '../../parts/index.ts'
import { ClearedFields } from './fields/cleared.tsx'
import { DayAndTime, type EntryFieldsProps } from './fields/common.tsx'
import { CageFields, GivenFields, WashFields } from './fields/done.tsx'
import { InspectionFields } from './fields/inspection.tsx'
import { IntakeFields } from './fields/intake.tsx'
import { MissedFields, MoveFields, NoteFields, OutcomeFields } from './fields/leaving.tsx'
import { isMovable } from './other-box.ts'
import { SmallFormPage } from './small-forms.tsx'

interface OneEntryProps {
  frame: Frame
  form: FormState
  entry: StandingEntry
  tag: string
  path: string
}

interface Unsent {
  /** Of an entry that waits on a phone: where it is changed in place, because nobody else has it yet. */
  unsent?: string
}

interface Lists {
  yards: string[]
  types: string[]
  tags: string[]
}

const backTo = (p: OneEntryProps) => ({ href: p.path, label: p.tag })

/** 'the visit of Sun 10 May' */
const named = ({ entry, frame: { today, words } }: OneEntryProps): string =>
  words.corrections.named(words.entries.kinds[entry.kind], words.dates.day(entry.on, today))

/** Where what was written down belongs to another box; not of what founds a colony, moves it or ends it. */
const OtherBox = ({ entry, frame, tag }: OneEntryProps) =>
  isMovable(entry) ? (
    <a href={`/entry/${entry.id}/other-box`}>{frame.words.corrections.anotherThan(tag)}</a>
  ) : null

export const CorrectPage = (p: OneEntryProps & Lists & Unsent) => {
  const said = p.frame.words.corrections
  const sent = p.unsent === undefined
  return (
    <SmallFormPage
      frame={p.frame}
      form={p.form}
      kind={p.entry.kind}
      title={sent ? said.correct(named(p)) : said.change(named(p))}
      action={p.unsent ?? `/entry/${p.entry.id}/correct`}
      back={sent ? backTo(p) : { href: p.path, label: said.waiting }}
      button={sent ? said.saveCorrection : said.saveChange}
      intro={
        <p class="soft">
          {sent ? said.asItStands(p.tag) : said.notSent(p.tag)} <OtherBox {...p} />
        </p>
      }
    >
      {FORM[p.entry.kind]({ form: p.form, frame: p.frame }, p)}
    </SmallFormPage>
  )
}

type Kind = StandingEntry['kind']

const timed = (kind: Kind, p: EntryFieldsProps, fields: Child) => (
  <>
    <DayAndTime {...p} kind={kind} />
    {fields}
  </>
)

/** The fields of every kind that can be corrected. */
const FORM: Record<Kind, (p: EntryFieldsProps, lists: Lists) => Child> = {
  intake: (p, { yards, types }) => <IntakeFields {...p} yards={yards} types={types} />,
  inspection: (p) => timed('inspection', p, <InspectionFields {...p} />),
  given: (p, { tags }) => timed('given', p, <GivenFields {...p} donors={tags} />),
  'queen-cage': (p) => timed('queen-cage', p, <CageFields {...p} />),
  'ties-removed': (p) =>
    timed('ties-removed', p, <Fields {...p} of={FIELDS['ties-removed']} show={['note']} />),
  'mite-wash': (p) => timed('mite-wash', p, <WashFields {...p} />),
  'disease-cleared': (p) => timed('disease-cleared', p, <ClearedFields {...p} />),
  move: (p, { yards }) => <MoveFields {...p} yards={yards} />,
  outcome: (p, { tags }) => <OutcomeFields {...p} others={tags} />,
  note: (p) => <NoteFields {...p} decides />,
  'missed-visit': (p) => <MissedFields {...p} />,
}

export const WithdrawPage = (p: OneEntryProps) => {
  const said = p.frame.words.corrections
  return (
    <SmallFormPage
      frame={p.frame}
      form={p.form}
      kind="withdrawal"
      title={said.takeBack(named(p))}
      action={`/entry/${p.entry.id}/withdraw`}
      back={backTo(p)}
      button={said.takeItBack}
      intro={
        <p class="soft">
          {p.entry.kind === 'intake' ? said.intakeBack(p.tag) : said.didNotHappen} <OtherBox {...p} />
        </p>
      }
    >
      <Fields form={p.form} frame={p.frame} of={FIELDS.withdrawal} show={['reason']} />
    </SmallFormPage>
  )
}
