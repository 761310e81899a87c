/** What other parts may import from here; README.md explains. */
export { moveOutRecord } from './move-out-record-route.tsx'
