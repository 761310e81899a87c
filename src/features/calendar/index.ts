/** The door of this room; README.md says what is behind it. */
export type { CalendarDeps, Calendars } from './feeds.ts'
