/** The door of this room for what needs Node; README.md says what is behind it. */
export { labels } from './labels-route.tsx'
