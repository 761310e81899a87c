/** The door of this room; README.md says what is behind it. */
export type { ImportRow } from './take-in.ts'
