/** The door of this room for what needs Node; README.md says what is behind it. */
export { yardBook } from './yard-book-route.tsx'
