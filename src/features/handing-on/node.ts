/** What other parts may import from here, of what needs Node; README.md explains. */
export { yardBook } from './yard-book-route.tsx'
