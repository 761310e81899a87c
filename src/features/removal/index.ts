/** What other parts may import from here; README.md explains. */
export { TICKED } from './before-cut.ts'
export { removalIntake } from './intake-route.tsx'
export { removals } from './route.tsx'
export { removalSteps } from './steps-route.tsx'
export { removalTerms } from './terms-route.tsx'
