/** The door of this room; README.md says what is behind it. */
export { photo } from './photo-route.tsx'
export { photos } from './photos-route.ts'
export { colony } from './route.tsx'
