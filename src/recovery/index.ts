/** The door of this room; README.md says what is behind it. */
export type { Adviser, Context, Supplies } from './advice/context.ts'
export { lookAsked, openLook } from './advice/looks.ts'
export { lookFromOutside } from './advice/routine.ts'
export { choresWaitFor } from './derived-asks.ts'
export { fold } from './fold/fold.ts'
export {
  MATING_NUCLEUS_FRAMES,
  mayBuy,
  mayGive,
  mayOpen,
  mayUnite,
  NUCLEUS_FRAMES,
  toTakeOut,
} from './guards.ts'
export { leftOutReason } from './missing-words.ts'
export { isQuiet, phaseOn } from './phase.ts'
export { inWordsToo, planOf } from './plan.ts'
export {
  ACTIONS,
  type Action,
  type Advised,
  type Check,
  type CheckStatus,
  type DayRange,
  PHASES,
  type Phase,
  type Plan,
  RULES,
  type Rule,
} from './plan-types.ts'
export {
  DEFAULT_PROTOCOL,
  MONTHS,
  type Month,
  matesIn,
  miteThresholdOn,
  type Protocol,
  type ProtocolOverrides,
  protocolOverrides,
  protocolWith,
  type Window,
  yardProtocol,
} from './protocol.ts'
export {
  type ColonyChange,
  changeFor,
  type Leaving,
  type PreviewTotals,
  totalsOf,
} from './protocol-preview.ts'
export { ANCHOR_OF, CHORES, factsOf, OUTSIDE, rulesWhere, SOURCE_OF } from './rules.ts'
export { type ADVICE, type Few, type PressingSign, REMEDY, type Sought } from './says/advice.ts'
export type { ASKS } from './says/asks.ts'
export { wordsOf } from './says/catalogue.ts'
export type { CAUSES, DEEDS } from './says/causes.ts'
export type { GUARDS } from './says/guards.ts'
export { type Cause, type Deed, deedInEnglish } from './says/inside.ts'
export type { NEEDS } from './says/needs.ts'
export { inEnglish, type Reason, type SENTENCES, type UnmetReason, unmetInEnglish } from './says/said.ts'
export type { SURPRISES } from './says/surprises.ts'
export type { UNMET } from './says/unmet.ts'
export type { Way, WEIGHED } from './says/weighed.ts'
export {
  CLIMATES,
  type Climate,
  coldSeason,
  DORMANT_MITES,
  leastC,
  seasonOf,
  suggestedMatingMonths,
} from './season.ts'
export { SOURCE_OF_SETTING } from './setting-sources.ts'
export { BROOD_GIFTS, broodAlong, wasThereAt } from './sources.ts'
export { proofOf } from './spans.ts'
export type { Ask } from './state.ts'
export { heldWords, lockedDeed, type Suspicion, suspicionOn } from './suspicion.ts'
export {
  boundTo,
  deedOf,
  type Exposure,
  exposedWords,
  type Traced,
  tellsOfBonds,
  traceFoulbrood,
} from './tracing.ts'
export { untilDay } from './until.ts'
