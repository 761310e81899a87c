/** The door of this room; README.md says what is behind it. */
export { asks, type Box, beforeThe, doneOn } from './box.ts'
export type { Missed } from './missed.ts'
export { round } from './route.tsx'
export { boxOf, missedNow } from './today-round.ts'
export { missedWords } from './words.ts'
