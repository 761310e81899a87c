/** What other parts may import from here; README.md explains. */
export { type Costs, DEFAULT_COSTS } from './costs.ts'
export { type DecidedPlan, type PlanOption, type PlanSettings, planOf } from './plan.ts'
