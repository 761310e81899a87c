/** What other parts may import from here, of what needs Node; README.md explains. */
export { readColonies, rowOf, writeColonies } from './colonies-csv.ts'
export { lineOf } from './csv-table.ts'
export { coloniesImport } from './route.tsx'
export { idFor, rehearsing, takingIn } from './take-in.ts'
