/** What other parts may import from here; README.md explains. */
export type { Lines, ReadYard } from './yard-lines.ts'
