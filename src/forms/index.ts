/** The door of this room; README.md says what is behind it. */

export type { FieldProblem } from '../result.ts'

export { type DrawnIn, Fields, Group } from './draw.tsx'
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
export { ALONG, COMMON, FIELDS, fieldsOf, hasPhotos, NEW_YARD, TAKEN } from './fields.ts'
export { numberTyped } from './numbers.ts'
export { JpegOnly, Photos } from './photo-field.tsx'
export { correctionOf, type Draft, draftOf, fieldsIn, labelOf, typedFields, typedOf } from './read.ts'
export { Save } from './save.tsx'
export type { FieldSpec, FieldSpecs } from './spec.ts'
export * as spec from './spec.ts'
export { Spoken, useWords } from './spoken.ts'
export { anyTyped, many, one, type Typed, typedFrom } from './typed.ts'
