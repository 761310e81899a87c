/** What other parts may import from here, of what needs Node; README.md explains. */
export { review } from './route.tsx'
