/** What other parts may import from here, of what needs Node; README.md explains. */
export { remakerOf } from './recompute.ts'
export { protocol } from './route.tsx'
