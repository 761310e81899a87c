/** What other parts may import from here, of what needs Node; README.md explains. */
export { rates } from './route.tsx'
