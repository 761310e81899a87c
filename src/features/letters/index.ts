/** The door of this room; README.md says what is behind it. */
export { historyUntil } from './letter.ts'
