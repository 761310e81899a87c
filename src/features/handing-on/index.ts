/** What other parts may import from here; README.md explains. */
export { followUp } from './follow-up-route.tsx'
export { moveOutRecord } from './move-out-record-route.tsx'
