/** What other parts may import from here; README.md explains. */
export type { Built } from './files.ts'
