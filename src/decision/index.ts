/** What other parts may import from here; README.md explains. */
export { planOf } from './plan.ts'
