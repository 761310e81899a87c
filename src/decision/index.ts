/** What other parts may import from here; README.md explains. */
export { COST_NAMES, type Costs, DEFAULT_COSTS, DEFAULT_SUPPLIES, type Supplies } from './costs.ts'
export { modelFor } from './models.ts'
export { type DecidedPlan, planOf } from './plan.ts'
