/** What other parts may import from here; README.md explains. */
export { how } from './route.tsx'
