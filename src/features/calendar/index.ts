/** What other parts may import from here; README.md explains. */
export type { CalendarDeps, Calendars } from './feeds.ts'
