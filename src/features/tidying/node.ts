/** What other parts may import from here, of what needs Node; README.md explains. */
export { tidying } from './route.tsx'
