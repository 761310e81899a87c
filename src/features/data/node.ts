/** What other parts may import from here, of what needs Node; README.md explains. */
export { changes } from './changes-route.tsx'
export { fileLines } from './file-lines.ts'
export { data } from './route.tsx'
export { exportLines } from './yard-export.ts'
export { takeYard } from './yard-import.ts'
export { readYard } from './yard-lines.ts'
