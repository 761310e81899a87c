/** The door of this room; README.md says what is behind it. */
export { dayLabel } from './day-labels.ts'
export {
  Choices,
  type FormState,
  idOf,
  NoteField,
  ProblemSummary,
  sentenceOf,
  TextField,
  Ticks,
} from './field.tsx'
export { FIELDS, type FieldSpec, hasPhotos, NEW_YARD } from './fields.ts'
export { numberTyped } from './numbers.ts'
export { PhotoField, Photos } from './photo-field.tsx'
export { type Draft, draftOf, fieldsIn, labelOf, typedFields, typedOf } from './read.ts'
export { anyTyped, type FieldProblem, many, one, type Typed, typedFrom } from './typed.ts'
