/** What other parts may import from here; README.md explains. */
export { countingLetters, lettersDue } from './due.ts'
export { historyUntil } from './letter.ts'
export { NothingAtAddress } from './letter-page.tsx'
export { AddressMade } from './page.tsx'
