/** What other parts may import from here; README.md explains. */
export { historyUntil } from './letter.ts'
