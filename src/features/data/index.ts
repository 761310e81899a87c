/** The door of this room; README.md says what is behind it. */
export type { Lines, ReadYard } from './yard-lines.ts'
