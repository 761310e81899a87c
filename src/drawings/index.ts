/** What other parts may import from here; README.md explains. */
export { Meant } from './at-question.tsx'
export { Drawing, type DrawingName } from './drawings.tsx'
