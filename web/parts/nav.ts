/** The ways through the book. A new page that people go to from anywhere is one line here. */
export interface Way {
  href: string
  label: string
  /** In the bar itself, or under "More". */
  place: 'bar' | 'more'
}

export const WAYS: Way[] = [
  { href: '/', label: 'Today', place: 'bar' },
  { href: '/yard', label: 'Yard', place: 'bar' },
  { href: '/intake', label: 'Intake', place: 'bar' },
  { href: '/settings', label: 'Units and time zone', place: 'more' },
  { href: '/name', label: 'Who signs', place: 'more' },
]
