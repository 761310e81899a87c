/** The door of this room for what needs Node; README.md says what is behind it. */
export { supplies, supplyWarmer } from './route.tsx'
export { stands } from './stands-route.tsx'
