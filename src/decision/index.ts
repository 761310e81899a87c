/** What other parts may import from here; README.md explains. */
export { type Costs, costsWith } from './costs.ts'
export { planOf } from './plan.ts'
