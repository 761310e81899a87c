/** What other parts may import from here; README.md explains. */
export { yard } from './route.tsx'
