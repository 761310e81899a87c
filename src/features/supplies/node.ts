/** What other parts may import from here, of what needs Node; README.md explains. */
export { supplies, suppliesOn, supplyWarmer } from './route.tsx'
export { stands } from './stands-route.tsx'
