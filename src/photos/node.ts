/** The door of this room for what needs Node; README.md says what is behind it. */
export { copyPhotos, photoFolder, photoNow, shelfIn, shelfInMemory } from './shelf.ts'
