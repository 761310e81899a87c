/** What other parts may import from here, of what needs Node; README.md explains. */
export { keeperSheets, openKeeperSheet } from './keeper-route.tsx'
export { handingOn } from './ready-route.tsx'
export { yardBook } from './yard-book-route.tsx'
