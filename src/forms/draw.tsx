/** Fields drawn as their specs say. */

import type { Child } from 'hono/jsx'
import type { Day } from '../days.ts'
import { type Units, unitOf } from '../words/index.ts'
import { Choices, type FormState, NoteField, TextField, Ticks } from './field.tsx'
import { fieldsSaid } from './fields.ts'
import { PhotoField } from './photo-field.tsx'
import type { FieldSpec, FieldSpecs } from './spec.ts'
import { useWords } from './spoken.ts'

/** What a field is drawn in: what was typed, the yard's units, the day that is today. */
export interface DrawnIn {
  form: FormState
  frame: { units: Units; today: Day }
  /** What the names of its fields begin with ('' or 'cage.'). */
  prefix?: string
}

/** What only the page knows of a field: tags to choose from, an answer more, its own words. */
type Known = Partial<FieldSpec> & { list?: string[] }

interface FieldsProps<S extends FieldSpecs> extends DrawnIn {
  of: S
  /** Paths, in order; those in brackets stand in one row on a wide screen. */
  show: readonly (NoInfer<keyof S & string> | readonly NoInfer<keyof S & string>[])[]
  with?: { [P in keyof NoInfer<S>]?: Known }
}

export const Fields = <S extends FieldSpecs>({ of, show, with: known = {}, ...at }: FieldsProps<S>) => {
  const said = fieldsSaid(of, useWords())
  const one = (path: keyof S & string) => (
    <Field
      {...at}
      path={path}
      spec={{ ...said[path], ...(known as Record<string, Known>)[path] } as Known & FieldSpec}
    />
  )
  return (
    <>
      {show.map((path) =>
        typeof path === 'string' ? one(path) : <div class="field-row">{path.map(one)}</div>,
      )}
    </>
  )
}

/** Fields that belong together, under a heading of their own. */
export const Group = ({ legend, children }: { legend: string; children?: Child }) => (
  <fieldset class="group">
    <legend>{legend}</legend>
    {children}
  </fieldset>
)

const TYPES = { day: 'date', time: 'time' } as const

const Field = ({
  form,
  frame,
  prefix = '',
  path,
  spec,
}: DrawnIn & { path: string; spec: Known & FieldSpec }) => {
  const { as, hint, choices, quantity } = spec
  const words = useWords()
  const field = {
    form,
    name: prefix + path,
    label: spec.asks ?? spec.label,
    hint: typeof hint === 'function' ? hint(frame.units) : hint,
  }
  if (as === 'photos') return <PhotoField form={form} hint={field.hint} />
  if (choices !== undefined)
    return as === 'list' ? (
      <Ticks {...field} choices={choices} across={spec.across} />
    ) : (
      <Choices
        {...field}
        choices={choices}
        across={spec.across}
        standing={spec.standing}
        other={spec.other}
      />
    )
  if (as === 'lines') return <NoteField {...field} maxlength={spec.maxlength} rows={spec.rows} />
  return (
    <TextField
      {...field}
      type={as === 'day' || as === 'time' ? TYPES[as] : (spec.keys ?? 'text')}
      now={spec.now}
      unit={quantity === undefined ? spec.unit || undefined : unitOf(frame.units, quantity, words).symbol}
      inputmode={inputmodeOf(spec)}
      maxlength={spec.maxlength}
      required={spec.required}
      max={spec.past ? frame.today : undefined}
      list={spec.list}
      wide={spec.wide}
    />
  )
}

/** The keys a phone shows. Inches are typed as '1 1/2', which needs all of them. */
function inputmodeOf({ as, quantity }: FieldSpec): 'text' | 'decimal' | 'numeric' | undefined {
  if (as === 'whole') return 'numeric'
  return as !== 'number' ? undefined : quantity === 'length' ? 'text' : 'decimal'
}
