/** What other parts may import from here; README.md explains. */

export { asks, type Box, beforeThe, doneOn } from './box.ts'
export { loadFor } from './bring.ts'
export { LoadList } from './load-list.tsx'
export type { Missed } from './missed.ts'
export { round } from './route.tsx'
export { boxOf, missedNow } from './today-round.ts'
export { type Urgency, urgencyOf } from './urgency.ts'
export { missedWords } from './words.ts'
