/** The door of this room; README.md says what is behind it. */
export { settings } from './settings-route.tsx'
