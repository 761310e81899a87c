/** What other parts may import from here; README.md explains. */
export { find } from './route.tsx'
