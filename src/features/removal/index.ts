/** What other parts may import from here; README.md explains. */

export { removalActs } from './acts-route.tsx'
export { isOtherwise } from './as-read.ts'
export { type CallBackCount, callBacksByType } from './call-backs.ts'
export { foundWords, killing } from './found-words.ts'
export { removalIntake, unmetOf } from './intake-route.tsx'
export { TICKED } from './item.ts'
export { removals } from './route.tsx'
export { removalSign } from './sign-route.tsx'
export { removalTerms } from './terms-route.tsx'
