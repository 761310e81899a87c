import type { Words } from '../words/index.ts'

/** The ways through the book. A new page that people go to from anywhere is one line here, and its name in every language. */
export interface Way {
  href: keyof Words['ways']
  /** In the bar itself, or under "More". */
  place: 'bar' | 'more'
}

export const WAYS: Way[] = [
  { href: '/', place: 'bar' },
  { href: '/round', place: 'bar' },
  { href: '/yard', place: 'bar' },
  { href: '/intake', place: 'bar' },
  { href: '/weeks', place: 'more' },
  { href: '/paper', place: 'more' },
  { href: '/calendar', place: 'more' },
  { href: '/how', place: 'more' },
  { href: '/health', place: 'more' },
  { href: '/removals', place: 'more' },
  { href: '/handing-on', place: 'more' },
  { href: '/letters', place: 'more' },
  { href: '/yard-book', place: 'more' },
  { href: '/outbox', place: 'more' },
  { href: '/review', place: 'more' },
  { href: '/supplies', place: 'more' },
  { href: '/stands', place: 'more' },
  { href: '/rates', place: 'more' },
  { href: '/protocol', place: 'more' },
  { href: '/settings', place: 'more' },
  { href: '/people', place: 'more' },
  { href: '/data', place: 'more' },
  { href: '/changes', place: 'more' },
  { href: '/account', place: 'more' },
]
