/** The door of this room; README.md says what is behind it. */
export { PHOTO_LIMIT, type Photo, type PhotoRead, type PhotoShelf, photoIn } from './photo.ts'
export type { PhotoFiles } from './shelf.ts'
