/** What is said of a field once: it is drawn, read and filled again from it. */
import type { Choice, FieldText, Quantity, Units } from '../words/index.ts'

export interface FieldSpec {
  as: 'text' | 'lines' | 'day' | 'time' | 'choice' | 'yes-no' | 'list' | 'number' | 'whole' | 'photos'
  /** At the start of a problem's sentence, and beside the field where `asks` says nothing else. */
  label: string
  asks?: string
  hint?: string | ((units: Units) => string) | undefined
  /** The answers to tap; without them a field is typed. */
  choices?: Choice[]
  /** How many answers stand in a row on a phone. */
  across?: 2 | 3 | 4 | 5
  /** The answer that stands when nothing was typed. */
  standing?: string
  /** A second field, typed by hand, that wins over the tapped one. */
  other?: OtherAnswer
  /** For numbers: what is stored, in SI. Typed in the yard's units. */
  quantity?: Quantity
  /** What stands after a field that is typed in no unit of the yard's. */
  unit?: string
  /** For numbers: limits in what is stored. */
  min?: number
  max?: number
  /** Most characters. */
  maxlength?: number
  wide?: true
  required?: boolean
  rows?: number
  /** The keys a phone shows. Nothing of the typist's own is offered: it is somebody else's number. */
  keys?: 'tel' | 'email' | 'url'
  /** A time that is noted while it happens: one tap puts it in. */
  now?: true
  /** A day that cannot be later than today. */
  past?: true
}

/** A field beside the answers, for what cannot be tapped. */
export interface OtherAnswer {
  label: string
  inputmode?: 'decimal' | 'text'
  maxlength?: number
}

/** Fields by their dotted path in what is read, which is their name in the form, in the form's order. */
export type FieldSpecs = Readonly<Record<string, FieldSpec>>

type More = Omit<Partial<FieldSpec>, 'as' | 'label' | 'other'> & { other?: Partial<OtherAnswer> }

/** What is asked: the words, or a label alone. */
type Asked = string | FieldText

/** `other` is said in the words, and how it is typed beside them. */
function specOf(as: FieldSpec['as'], asked: Asked, { other: typed, ...more }: More): FieldSpec {
  const { other: label, ...said }: FieldText = typeof asked === 'string' ? { label: asked } : asked
  const other = label ?? typed?.label
  return { as, ...said, ...more, ...(other === undefined ? {} : { other: { ...typed, label: other } }) }
}

const made =
  (as: FieldSpec['as'], usual: More = {}) =>
  (asked: Asked, more: More = {}): FieldSpec =>
    specOf(as, asked, { ...usual, ...more })

export const text = made('text')
export const lines = made('lines')
export const day = made('day')
export const time = made('time')
export const number = made('number', { min: 0, maxlength: 8 })
export const whole = made('whole', { min: 0, maxlength: 6 })

const tapped =
  (as: FieldSpec['as']) =>
  (asked: Asked, choices: Choice[], across: 2 | 3 | 4 | 5, more: More = {}): FieldSpec =>
    specOf(as, asked, { choices, across, ...more })

export const choice = tapped('choice')
export const yesNo = tapped('yes-no')
export const list = tapped('list')
/** A whole number, tapped. */
export const score = tapped('whole')

/** Frames, in quarters at best; no box has more than 60 (judgement). */
export const frames = (asked: Asked, choices: Choice[], more: More = {}): FieldSpec =>
  tapped('number')(asked, choices, 4, { min: 0, max: 60, other: { label: 'or type' }, ...more })

/** Name of the hand-typed twin of a field with an `other` answer. */
export const typedTwin = (name: string): string => `${name}+`
