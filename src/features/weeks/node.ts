/** What other parts may import from here, of what needs Node; README.md explains. */
export { weeks } from './route.tsx'
