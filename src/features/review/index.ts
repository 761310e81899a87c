/** What other parts may import from here; README.md explains. */
export { type DrawnArea, type DrawnLine, drawOn, type Stroke } from './canvas.ts'
export type { ChartData, Line } from './chart-data.ts'
export { factsOfRow } from './facts.ts'
export { TESTED } from './outcomes.ts'
export { linesOn, waysOn } from './readout.ts'
export { factsInStore } from './records.ts'
export { type Review, reviewOf } from './review.ts'
export { summaryOf } from './summary.ts'
