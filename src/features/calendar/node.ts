/** The door of this room for what needs Node; README.md says what is behind it. */
export { calendarsOn } from './feeds.ts'
export { calendar, calendarFeed } from './route.tsx'
