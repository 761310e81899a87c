/** The move-out record: buyer, yard, permits. Private; every version is kept with who saved it. */

import { type FormState, NoteField, one, TextField } from '../../forms/index.ts'
import { FormPage, type Frame } from '../../parts/index.ts'
import { MOST_PERMITS } from '../../records/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { dayWords, leftWords } from '../../words/index.ts'
import { recordLabel } from './move-out-record-form.ts'

export interface VersionLine {
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
  mayErase: boolean
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
    <Who form={p.form} />
    <fieldset class="group">
      <legend>Where to</legend>
      <TextField
        form={p.form}
        name="yard"
        label="Yard it goes to"
        hint="As the authority asks for it: name, place, county. Stands in the yard book."
        maxlength={200}
        wide
      />
      <TextField
        form={p.form}
        name="registration"
        label="Registration of that yard"
        hint="Number, where yards are registered. Stands in the yard book."
        maxlength={80}
      />
    </fieldset>
    <fieldset class="group">
      <legend>Permits and papers</legend>
      <p class="hint">
        Transport permit, certificate of health, registration: which ones are needed is for your local
        authority to say. They stand in the yard book.
      </p>
      {Array.from({ length: MOST_PERMITS }, (_, i) => (
        <Paper form={p.form} i={i} />
      ))}
    </fieldset>
    <fieldset class="group">
      <legend>What was agreed</legend>
      <TextField
        form={p.form}
        name="price"
        label="Price"
        inputmode="decimal"
        maxlength={12}
        {...(p.currency === '' ? {} : { unit: p.currency })}
      />
      <TextField
        form={p.form}
        name="wentAlong"
        label="What went along"
        hint="Hive, frames, feeder."
        maxlength={300}
        wide
      />
      <NoteField form={p.form} name="note" label="Note" />
    </fieldset>
  </FormPage>
)

const Who = ({ form }: { form: FormState }) => (
  <fieldset class="group">
    <legend>Who takes it over</legend>
    <TextField form={form} name="buyer.name" label="Name" maxlength={120} wide />
    <div class="field-row">
      <TextField form={form} name="buyer.phone" label="Telephone" maxlength={60} />
      <TextField form={form} name="buyer.email" label="E-mail" maxlength={200} />
    </div>
    <TextField form={form} name="buyer.address" label="Address" maxlength={300} wide />
  </fieldset>
)

/** One paper; those after the first are folded away until they are needed. */
const Paper = ({ form, i }: { form: FormState; i: number }) => {
  const name = (field: string): string => `permits.${i}.${field}`
  const fields = (
    <>
      <TextField form={form} name={name('what')} label={`Paper ${i + 1}`} maxlength={120} wide />
      <div class="field-row">
        <TextField form={form} name={name('number')} label="Number" maxlength={80} />
        <TextField form={form} name={name('issuedBy')} label="Issued by" maxlength={120} />
      </div>
      <div class="field-row">
        <TextField form={form} name={name('on')} label="On" type="date" />
        <TextField form={form} name={name('until')} label="Good until" type="date" />
      </div>
    </>
  )
  const used =
    ['what', 'number', 'issuedBy', 'on', 'until'].some((f) => one(form.typed, name(f)) !== '') ||
    form.problems.some((problem) => problem.field.startsWith(name('')))
  return i === 0 ? (
    fields
  ) : (
    <details class="also" open={used}>
      <summary>Paper {i + 1}</summary>
      {fields}
    </details>
  )
}

const Intro = ({ summary, frame, saved, old }: RecordProps) => (
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

const Beside = ({ versions, path, mayErase, frame }: RecordProps) =>
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
      {mayErase ? (
        <details class="caution">
          <summary>Erase the record</summary>
          <p>
            Takes out every version, for good, such as when the buyer asks for it. Backups keep it until they
            are thinned out.
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
