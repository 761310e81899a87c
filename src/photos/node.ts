/** What other parts may import from here, of what needs Node; README.md explains. */
export { copyPhotos, photoFolder, photoNow, shelfIn, shelfInMemory } from './shelf.ts'
