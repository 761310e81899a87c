/** What other parts may import from here; README.md explains. */
export type { ImportRow } from './take-in.ts'
