/** What other parts may import from here; README.md explains. */
export { paper } from './route.tsx'
export { sheetEntry } from './sheet-entry-route.tsx'
