/** The door of this room; README.md says what is behind it. */
export type { Built } from './files.ts'
