/** What other parts may import from here; README.md explains. */
export { AT_QUESTION, Meant } from './at-question.tsx'
export { DRAWING_WORDS, DRAWINGS, Drawing, type DrawingName } from './drawings.tsx'
