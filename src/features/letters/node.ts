/** The door of this room for what needs Node; README.md says what is behind it. */
export { letters, openLetter } from './route.tsx'
