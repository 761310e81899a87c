/** The door of this room; README.md says what is behind it. */
export { moveOutRecord } from './move-out-record-route.tsx'
