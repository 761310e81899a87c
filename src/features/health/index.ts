/** What other parts may import from here; README.md explains. */
export { health } from './route.tsx'
