/** What other parts may import from here; README.md explains. */
export { settings } from './settings-route.tsx'
