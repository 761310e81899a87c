/** What other parts may import from here; README.md explains. */
export { PHOTO_LIMIT, type Photo, type PhotoShelf, photoIn } from './photo.ts'
export type { PhotoFiles } from './shelf.ts'
