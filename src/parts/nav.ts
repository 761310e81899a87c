/** The ways through the book. A new page that people go to from anywhere is one line here, and its name in every language. */
import type { Words } from '../words/index.ts'

/** What stands under "More", by what it is for; six at most, so that all of it is seen at once. */
export const GROUPS = [
  'field',
  'customers',
  'authority',
  'season',
  'rules',
  'house',
] as const satisfies (keyof Words['groups'])[]

export interface Way {
  href: keyof Words['ways']
  /** In the bar itself, or in which group under "More". */
  place: 'bar' | (typeof GROUPS)[number]
}

export const WAYS: Way[] = [
  { href: '/', place: 'bar' },
  { href: '/round', place: 'bar' },
  { href: '/yard', place: 'bar' },
  { href: '/intake', place: 'bar' },
  { href: '/weeks', place: 'field' },
  { href: '/health', place: 'field' },
  { href: '/paper', place: 'field' },
  { href: '/how', place: 'field' },
  { href: '/removals', place: 'customers' },
  { href: '/letters', place: 'customers' },
  { href: '/handing-on', place: 'customers' },
  { href: '/yard-book', place: 'authority' },
  { href: '/changes', place: 'authority' },
  { href: '/review', place: 'season' },
  { href: '/supplies', place: 'season' },
  { href: '/rates', place: 'season' },
  { href: '/protocol', place: 'rules' },
  { href: '/settings', place: 'rules' },
  { href: '/people', place: 'house' },
  { href: '/data', place: 'house' },
]

/** A page that has others beside it: named on each of them. */
export type Tab = keyof Words['tabs']

export const SUPPLY_TABS: Tab[] = ['/supplies', '/supplies/stands']

/** What is one’s own: reached by one’s name, at the foot of "More". */
export const ACCOUNT_TABS: Tab[] = [
  '/account',
  '/account/calendar',
  '/account/messages',
  '/account/tokens',
  '/outbox',
]
