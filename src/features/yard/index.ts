/** The door of this room; README.md says what is behind it. */
export { yard } from './route.tsx'
