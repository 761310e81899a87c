/** The door of this room; README.md says what is behind it. */
export { paper } from './route.tsx'
export { sheetEntry } from './sheet-entry-route.tsx'
