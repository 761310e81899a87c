/** What other parts may import from here, of what needs Node; README.md explains. */
export { calendarsOn } from './feeds.ts'
export { calendar, calendarFeed } from './route.tsx'
