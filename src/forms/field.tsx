/** Fields of a form: label, hint, the control, and what is wrong with it beside it. */

import type { Child } from 'hono/jsx'
import { Meant } from '../drawings/index.ts'
import type { FieldProblem } from '../result.ts'
import { type Choice, type Words, wordsIn } from '../words/index.ts'
import { type OtherAnswer, typedTwin } from './spec.ts'
import { useWords } from './spoken.ts'
import { many, one, type Typed } from './typed.ts'

/** A form as it stands: what was typed, what is wrong. */
export interface FormState {
  typed: Typed
  problems: FieldProblem[]
}

/** Element ids are made from field names. */
export const idOf = (name: string): string => `f-${name.replaceAll(/[^A-Za-z0-9-]/g, '_')}`

const problemsAt = (form: FormState, name: string): FieldProblem[] =>
  form.problems.filter((p) => p.field === name)

const describedBy = (form: FormState, name: string, hint?: Child): { 'aria-describedby'?: string } => {
  const ids = [
    hint === undefined ? '' : `${idOf(name)}-hint`,
    problemsAt(form, name).length > 0 ? `${idOf(name)}-problem` : '',
  ].filter(Boolean)
  return ids.length === 0 ? {} : { 'aria-describedby': ids.join(' ') }
}

const invalid = (form: FormState, name: string): { 'aria-invalid'?: 'true' } =>
  problemsAt(form, name).length > 0 ? { 'aria-invalid': 'true' } : {}

interface FieldProps {
  form: FormState
  name: string
  label: string
  hint?: Child
}

export const Beside = ({ form, name, label, hint }: FieldProps) => {
  const words = useWords()
  return (
    <>
      {hint === undefined ? null : (
        <p class="hint" id={`${idOf(name)}-hint`}>
          {hint}
        </p>
      )}
      {problemsAt(form, name).length === 0 ? null : (
        <p class="problem" id={`${idOf(name)}-problem`}>
          {problemsAt(form, name)
            .map((p) => `${sentenceOf(label, p.message, words).replace(/\.$/, '')}.`)
            .join(' ')}
        </p>
      )}
    </>
  )
}

interface TextProps extends FieldProps {
  type?: 'text' | 'date' | 'time' | 'tel' | 'email' | 'url'
  unit?: string | undefined
  inputmode?: 'text' | 'decimal' | 'numeric' | undefined
  maxlength?: number | undefined
  required?: boolean | undefined
  max?: string | undefined
  list?: string[] | undefined
  autocomplete?: string
  wide?: boolean | undefined
  /** A button that puts in the time it is. */
  now?: boolean | undefined
}

/** One line of text, a number, a day or a time. Numbers are text fields, so that nothing typed is ever blanked. */
export const TextField = (p: TextProps) => (
  <div class={`field${problemsAt(p.form, p.name).length > 0 ? ' has-problem' : ''}`}>
    <label for={idOf(p.name)}>{p.label}</label>
    <Beside form={p.form} name={p.name} label={p.label} hint={p.hint} />
    <span class="control">
      <input
        id={idOf(p.name)}
        name={p.name}
        type={p.type ?? 'text'}
        value={one(p.form.typed, p.name)}
        class={p.wide ? 'wide' : undefined}
        inputmode={p.inputmode}
        maxlength={p.maxlength}
        required={p.required}
        max={p.max}
        autocomplete={p.autocomplete ?? 'off'}
        list={p.list === undefined ? undefined : `${idOf(p.name)}-list`}
        {...describedBy(p.form, p.name, p.hint)}
        {...invalid(p.form, p.name)}
      />
      {p.unit === undefined ? null : <span class="unit">{p.unit}</span>}
      {p.now ? <Now of={p.name} label={p.label} /> : null}
    </span>
    {p.list === undefined ? null : (
      <datalist id={`${idOf(p.name)}-list`}>
        {p.list.map((value) => (
          <option value={value} />
        ))}
      </datalist>
    )}
  </div>
)

/** Puts in the yard's time; web/islands/now.ts shows it. */
const Now = ({ of, label }: { of: string; label: string }) => (
  <button class="button now" type="button" data-now={idOf(of)} hidden>
    {useWords().forms.now}
    <span class="unseen">: {label}</span>
  </button>
)

export const NoteField = (p: FieldProps & { maxlength?: number | undefined; rows?: number | undefined }) => (
  <div class={`field${problemsAt(p.form, p.name).length > 0 ? ' has-problem' : ''}`}>
    <label for={idOf(p.name)}>{p.label}</label>
    <Beside form={p.form} name={p.name} label={p.label} hint={p.hint} />
    <textarea
      id={idOf(p.name)}
      name={p.name}
      rows={p.rows ?? 3}
      maxlength={p.maxlength ?? 2000}
      {...describedBy(p.form, p.name, p.hint)}
      {...invalid(p.form, p.name)}
    >
      {one(p.form.typed, p.name)}
    </textarea>
  </div>
)

const MeantBy = (p: { name: string; label: string }) => {
  const { drawings, forms } = useWords()
  return <Meant {...p} title={forms.howItLooks} captions={drawings} />
}

interface ChoicesProps extends FieldProps {
  choices: Choice[]
  /** How many stand in a row on a phone. */
  across?: 2 | 3 | 4 | 5 | undefined
  /** The answer that stands when nothing was typed. */
  standing?: string | undefined
  other?: OtherAnswer | undefined
}

/** One answer of several, each a big target. */
export const Choices = (p: ChoicesProps) => {
  const tapped = p.form.typed[p.name] === undefined ? (p.standing ?? '') : one(p.form.typed, p.name)
  const known = p.choices.some((c) => c.value === tapped)
  const bad = problemsAt(p.form, p.name).length > 0
  return (
    <fieldset
      class={`field choices${bad ? ' has-problem' : ''}`}
      id={idOf(p.name)}
      tabindex={bad ? -1 : undefined}
      {...describedBy(p.form, p.name, p.hint)}
    >
      <legend>{p.label}</legend>
      <MeantBy name={p.name} label={p.label} />
      <Beside form={p.form} name={p.name} label={p.label} hint={p.hint} />
      <div class={`taps taps-${p.across ?? 4}`}>
        {p.choices.map((c) => (
          <label class={c.value === '' ? 'tap tap-unsaid' : 'tap'}>
            <input type="radio" name={p.name} value={c.value} checked={c.value === tapped} />
            <span lang={c.language}>
              {c.label}
              {c.hint === undefined ? null : <small>{c.hint}</small>}
            </span>
          </label>
        ))}
        {p.other === undefined ? null : <OtherField {...p} other={p.other} kept={known ? '' : tapped} />}
      </div>
    </fieldset>
  )
}

/** A cell among the answers to type in: what cannot be tapped. */
const OtherField = (p: FieldProps & { other: OtherAnswer; kept: string }) => (
  <input
    class="other"
    name={typedTwin(p.name)}
    type="text"
    inputmode={p.other.inputmode ?? 'decimal'}
    maxlength={p.other.maxlength ?? 8}
    autocomplete="off"
    aria-label={`${p.label}, ${p.other.label}`}
    placeholder={p.other.label}
    value={one(p.form.typed, typedTwin(p.name)) || p.kept}
  />
)

/** Any number of answers. */
export const Ticks = (p: FieldProps & { choices: Choice[]; across?: 2 | 3 | 4 | 5 | undefined }) => {
  const ticked = many(p.form.typed, p.name)
  return (
    <fieldset class="field choices" id={idOf(p.name)} {...describedBy(p.form, p.name, p.hint)}>
      <legend>{p.label}</legend>
      <MeantBy name={p.name} label={p.label} />
      <Beside form={p.form} name={p.name} label={p.label} hint={p.hint} />
      <div class={`taps taps-${p.across ?? 2}`}>
        {p.choices.map((c) => (
          <label class="tap">
            <input type="checkbox" name={p.name} value={c.value} checked={ticked.includes(c.value)} />
            <span>
              {c.label}
              {c.hint === undefined ? null : <small>{c.hint}</small>}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}

interface SummaryProps {
  form: FormState
  labels: (field: string) => string
  heading?: string
  /** What to do about it; null: nothing more to say. */
  ending?: string | null
}

/** What is wrong, on top of the form, each line leading to its field. */
export const ProblemSummary = ({ form, labels, heading, ending }: SummaryProps) => {
  const words = useWords()
  if (form.problems.length === 0) return null
  const todo = ending === undefined ? words.forms.mend : ending
  return (
    <div class="notice notice-late" role="alert" tabindex={-1} id="problems">
      <h2>{heading ?? words.forms.nothingSaved}</h2>
      <ul class="problem-list">
        {form.problems.map((p) => (
          <li>
            {p.field === '' ? (
              words.forms.problem(p.message)
            ) : (
              <a href={`#${idOf(p.field)}`}>{sentenceOf(labels(p.field), p.message, words)}</a>
            )}
          </li>
        ))}
      </ul>
      {todo === null ? null : <p>{todo}</p>}
    </div>
  )
}

const CONTINUES = /^(must|is|are|cannot|has|have|names|comes|can|needs)\b/

/** Says itself what it is about. */
const WHOLE = /^There is no yard\b/

/** 'Tag must not be empty'; 'Day: 2026-05-01 is before the intake'; 'There is no yard called Mill yet'. */
export function sentenceOf(label: string, message: string, { forms }: Words = wordsIn('en')): string {
  const said = forms.problem(message)
  if (label === '' || WHOLE.test(said)) return said
  return CONTINUES.test(said) ? `${label} ${said}` : `${label}: ${said}`
}
