/** What other parts may import from here; README.md explains. */
export { keptOf } from './kept.ts'
export { leftBehind } from './left-route.ts'
export { refusedEntries } from './route.tsx'
