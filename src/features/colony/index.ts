/** What other parts may import from here; README.md explains. */
export { photo } from './photo-route.tsx'
export { photos } from './photos-route.ts'
export { colony } from './route.tsx'
