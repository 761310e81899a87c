/** The ways through the book. A new page that people go to from anywhere is one line here. */
export interface Way {
  href: string
  label: string
  /** In the bar itself, or under "More". */
  place: 'bar' | 'more'
}

export const WAYS: Way[] = [
  { href: '/', label: 'Today', place: 'bar' },
  { href: '/round', label: 'Round', place: 'bar' },
  { href: '/yard', label: 'Yard', place: 'bar' },
  { href: '/intake', label: 'Intake', place: 'bar' },
  { href: '/weeks', label: 'Weeks ahead', place: 'more' },
  { href: '/paper', label: 'On paper', place: 'more' },
  { href: '/calendar', label: 'Calendar', place: 'more' },
  { href: '/how', label: 'How it is done', place: 'more' },
  { href: '/health', label: 'Health', place: 'more' },
  { href: '/removals', label: 'Removals', place: 'more' },
  { href: '/handing-on', label: 'Handing on', place: 'more' },
  { href: '/letters', label: 'Letters', place: 'more' },
  { href: '/yard-book', label: 'Yard book', place: 'more' },
  { href: '/outbox', label: 'Without signal', place: 'more' },
  { href: '/review', label: 'Review', place: 'more' },
  { href: '/supplies', label: 'Supplies', place: 'more' },
  { href: '/stands', label: 'Stands', place: 'more' },
  { href: '/rates', label: 'What the odds rest on', place: 'more' },
  { href: '/protocol', label: 'Protocol', place: 'more' },
  { href: '/settings', label: 'Units and time zone', place: 'more' },
  { href: '/people', label: 'People', place: 'more' },
  { href: '/data', label: 'Data and backups', place: 'more' },
  { href: '/changes', label: 'History of changes', place: 'more' },
  { href: '/account', label: 'Your account', place: 'more' },
]
