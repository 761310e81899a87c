/** The door of this room; README.md says what is behind it. */
export { today } from './route.tsx'
