/** The door of this room; README.md says what is behind it. */
export { health } from './route.tsx'
