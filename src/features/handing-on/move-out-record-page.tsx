/** The move-out record: buyer, yard, permits. Private; every version is kept with who saved it. */

import { anyTyped, type DrawnIn, Fields, type FormState, Group } from '../../forms/index.ts'
import { BeforeItLeaves, FormPage, type Frame } from '../../parts/index.ts'
import { MOST_PERMITS } from '../../records/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { dayWords, leftWords } from '../../words/index.ts'
import { PERMIT, permitAt, RECORD, recordLabel } from './move-out-record-form.ts'

interface VersionLine {
  version: number
  /** In words. */
  savedAt: string
  savedBy: string
}

interface RecordProps {
  frame: Frame
  form: FormState
  summary: ColonySummary
  path: string
  versions: VersionLine[]
  /** An old version is shown, to be read. */
  old: boolean
  saved: boolean
  /** Sign before amounts of money. */
  currency: string
  /** What is said before it leaves; empty once it has. */
  before: string[]
}

export const MoveOutRecordPage = (p: RecordProps) => (
  <FormPage
    frame={p.frame}
    title={`Move-out record, ${p.summary.tag}`}
    form={p.form}
    action={`${p.path}/move-record`}
    back={{ href: p.path, label: p.summary.tag }}
    button={p.old ? 'Save this again as the newest' : 'Save the record'}
    labels={recordLabel}
    ids={['base']}
    intro={<Intro {...p} />}
    beside={<Beside {...p} />}
  >
    <Group legend="Who takes it over">
      <Fields {...p} of={RECORD} show={['buyer.name', ['buyer.phone', 'buyer.email'], 'buyer.address']} />
    </Group>
    <Group legend="Where to">
      <Fields {...p} of={RECORD} show={['yard', 'registration']} />
    </Group>
    <Group legend="Permits and papers">
      <p class="hint">
        Transport permit, certificate of health, registration: which ones are needed is for your local
        authority to say. They stand in the yard book.
      </p>
      {Array.from({ length: MOST_PERMITS }, (_, i) => (
        <Paper form={p.form} frame={p.frame} i={i} />
      ))}
    </Group>
    <Group legend="What was agreed">
      <Fields
        {...p}
        of={RECORD}
        show={['price', 'wentAlong', 'note']}
        with={{ price: { unit: p.currency } }}
      />
    </Group>
  </FormPage>
)

/** One paper; those after the first are folded away until they are needed. */
const Paper = ({ i, ...p }: DrawnIn & { i: number }) => {
  const fields = (
    <Fields
      {...p}
      prefix={permitAt(i)}
      of={PERMIT}
      show={['what', ['number', 'issuedBy'], ['on', 'until']]}
      with={{ what: { label: `Paper ${i + 1}` } }}
    />
  )
  const used =
    anyTyped(p.form.typed, permitAt(i)) || p.form.problems.some((x) => x.field.startsWith(permitAt(i)))
  return i === 0 ? (
    fields
  ) : (
    <details class="also" open={used}>
      <summary>Paper {i + 1}</summary>
      {fields}
    </details>
  )
}

const Intro = ({ summary, frame, saved, old, before, path }: RecordProps) => (
  <>
    {saved ? (
      <div class="notice notice-do" role="status">
        <p>The record is saved.</p>
      </div>
    ) : null}
    {old ? (
      <div class="notice">
        <p>This is an old version. Saving it makes it the newest one.</p>
      </div>
    ) : null}
    <p>
      {summary.outcome === null
        ? 'This colony is still in the yard: how it leaves is noted in its journal, beside this.'
        : `${leftWords(summary.outcome)} ${dayWords(summary.closedOn ?? summary.asOf, frame.today)}.`}{' '}
      The record is private: helpers, letters and the yard’s calendar never show it.
    </p>
    <BeforeItLeaves said={before} />
    <p>
      <a class="tall" href={`${path}/keeper-sheet`}>
        Sheet for the new keeper
      </a>
    </p>
    <details class="caution">
      <summary>Before bees travel</summary>
      <ul>
        <li>Suspected brood disease: they stay, and the apiary inspector is called.</li>
        <li>A clean look after a month is not a clearance: disease can show later.</li>
        <li>Registration, permits, inspection and the rules of the road differ: local rules decide.</li>
        <li>Entrance shut, hive strapped, air and shade; somebody with a sting plan along.</li>
      </ul>
    </details>
  </>
)

const Beside = ({ versions, path, frame }: RecordProps) =>
  versions.length === 0 ? null : (
    <section class="section">
      <h2>Versions</h2>
      <ul class="plain">
        {versions.map((v, i) => (
          <li>
            <a
              class="tall"
              href={i === 0 ? `${path}/move-record` : `${path}/move-record?version=${v.version}`}
            >
              {v.version}
              {i === 0 ? ', the newest' : ''}
            </a>{' '}
            <span class="soft">
              {v.savedAt}, {v.savedBy === frame.viewer?.name ? 'you' : v.savedBy}
            </span>
          </li>
        ))}
      </ul>
      {frame.may('safekeeping') ? (
        <details class="caution">
          <summary>Erase the record</summary>
          <p>
            Takes out every version, for good, such as when the buyer asks for it. Backups of before keep it,
            about a year; copies made before an upgrade, exports and downloads until you delete them.
          </p>
          <form method="post" action={`${path}/move-record/erase`}>
            <button class="button button-late" type="submit">
              Erase it
            </button>
          </form>
        </details>
      ) : null}
    </section>
  )
