/** The ways through the book. A new page that people go to from anywhere is one line here. */

/** What stands under "More", by what it is for; six at most, so that all of it is seen at once. */
export const GROUPS = ['In the field', 'Customers', 'Authority', 'Season', 'Rules', 'The house'] as const

export interface Way {
  href: string
  label: string
  /** In the bar itself, or in which group under "More". */
  place: 'bar' | (typeof GROUPS)[number]
}

export const WAYS: Way[] = [
  { href: '/', label: 'Today', place: 'bar' },
  { href: '/round', label: 'Round', place: 'bar' },
  { href: '/yard', label: 'Yard', place: 'bar' },
  { href: '/intake', label: 'Intake', place: 'bar' },
  { href: '/weeks', label: 'Weeks ahead', place: 'In the field' },
  { href: '/health', label: 'Health', place: 'In the field' },
  { href: '/paper', label: 'On paper', place: 'In the field' },
  { href: '/removals', label: 'Removals', place: 'Customers' },
  { href: '/letters', label: 'Letters', place: 'Customers' },
  { href: '/handing-on', label: 'Handing on', place: 'Customers' },
  { href: '/yard-book', label: 'Yard book', place: 'Authority' },
  { href: '/changes', label: 'History of changes', place: 'Authority' },
  { href: '/review', label: 'Review', place: 'Season' },
  { href: '/supplies', label: 'Supplies and stands', place: 'Season' },
  { href: '/rates', label: 'What the odds rest on', place: 'Season' },
  { href: '/protocol', label: 'Protocol', place: 'Rules' },
  { href: '/settings', label: 'Units and time zone', place: 'Rules' },
  { href: '/people', label: 'People', place: 'The house' },
  { href: '/data', label: 'Data and backups', place: 'The house' },
]

/** A page that has others beside it: named on each of them. */
export type Tab = Pick<Way, 'href' | 'label'>

export const SUPPLY_TABS: Tab[] = [
  { href: '/supplies', label: 'Queens and eggs' },
  { href: '/supplies/stands', label: 'Stands' },
]

/** What is one’s own: reached by one’s name, at the foot of "More". */
export const ACCOUNT_TABS: Tab[] = [
  { href: '/account', label: 'Account' },
  { href: '/account/calendar', label: 'Calendar' },
  { href: '/account/messages', label: 'Morning messages' },
  { href: '/account/tokens', label: 'Tokens' },
  { href: '/outbox', label: 'Without signal' },
]
