/** The door of this room for what needs Node; README.md says what is behind it. */
export { readColonies, rowOf, writeColonies } from './colonies-csv.ts'
export { lineOf } from './csv-table.ts'
export { coloniesImport } from './route.tsx'
export { rehearsed, takeIn } from './take-in.ts'
