/** The door of this room; README.md says what is behind it. */
export type { Adviser, Context, Supplies } from './advice/context.ts'
export { lookAsked, openLook } from './advice/looks.ts'
export { lookFromOutside } from './advice/routine.ts'
export { remedyFor } from './advice/signs.ts'
export { choresWaitFor } from './derived-asks.ts'
export { fold } from './fold/fold.ts'
export { MATING_NUCLEUS_FRAMES, mayBuy, mayGive, mayOpen, mayUnite, NUCLEUS_FRAMES } from './guards.ts'
export { missingWords } from './missing-words.ts'
export { isQuiet, phaseOn } from './phase.ts'
export { planOf } from './plan.ts'
export {
  ACTIONS,
  type Action,
  type Advice,
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
export { ANCHOR_OF, factsOf, OUTSIDE, rulesWhere, SOURCE_OF } from './rules.ts'
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
  type Exposure,
  exposedWords,
  exposureWords,
  type Traced,
  tellsOfBonds,
  traceFoulbrood,
} from './tracing.ts'
export { untilDay } from './until.ts'
