/** What other parts may import from here, of what needs Node; README.md explains. */
export { labels } from './labels-route.tsx'
