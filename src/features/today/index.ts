/** What other parts may import from here; README.md explains. */
export { today } from './route.tsx'
