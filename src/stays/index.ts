/** What other parts may import from here; README.md explains. */
export { anyBrood, type ColonyFacts, factsOf, followedSince, type OutcomeKind } from './colony-facts.ts'
export { historyUntil } from './history-until.ts'
export { type LossPhase, phaseBeforeLoss } from './phase-before-loss.ts'
export { PATHS, type Recovery, type RecoveryPath, recoveryOf } from './recovery-path.ts'
export { type Spending, spendingOf } from './spending.ts'
export { type Stay, stayOf } from './stay.ts'
