/** What other parts may import from here, of what needs Node; README.md explains. */
export { protocol } from './route.tsx'
