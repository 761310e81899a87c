/** What other parts may import from here; README.md explains. */

export { ACTS, type Act } from './acts.ts'
export { beforeItLeaves } from './before-it-leaves.ts'
export { capital } from './capital.ts'
export { type Words, wordsIn } from './catalogue.ts'
export {
  BROOD_CARE,
  CELLS_AT_REMOVAL,
  type Choice,
  GIFT,
  labelIn,
  METHOD,
  NOT_WRITTEN_DOWN,
  OUTCOME,
  QUEEN,
  removalTypes,
  SIGN,
  TEMPER,
} from './choices.ts'
export { dayAndDistance, dayWords, fromTo } from './dates.ts'
export { doubtWays, isInDoubt } from './doubts.ts'
export type { FieldText } from './en/fields.ts'
export { type EntryWords, entryWords } from './entries.ts'
export {
  betterDay,
  chance,
  evidenceWords,
  frames,
  mayWaitUntil,
  moveOutWords,
  oddsWords,
  planActs,
  SHORT_KIND,
  whenToLook,
} from './forecasts.ts'
export { boundBeside, isHeld } from './held.ts'
export { hemisphereOf } from './hemisphere.ts'
export { instantWords, sizeWords } from './instants.ts'
export { knownAs, STAND_WORDS } from './known-as.ts'
export { lidCautions, unitingCaution, warmthCaution } from './lid-cautions.ts'
export {
  headline,
  howPressing,
  lateDays,
  leftOutBeside,
  leftOutWords,
  leftWords,
  lidShutUntil,
  lostWords,
  type ToDo,
  toDoOf,
  waitsUntil,
  waitWords,
} from './lines.ts'
export { moveWords, treatedWords, treatmentRisk } from './moving.ts'
export { type PageWords, pageWordsIn } from './page-words.ts'
export { keysWords, ROLE_CHOICES, ROLE_WORDS, STATE_WORDS, signedInWords } from './people.ts'
export { problemWords } from './problem.ts'
export { proves } from './proof.ts'
export { mailHref, placeHref, smsHref, telHref, telIn } from './reach.ts'
export { ITEMS, type Item } from './round-items.ts'
export {
  ACTION_WORDS,
  afterQuiet,
  coming,
  isAsked,
  isQuiet,
  lidStaysOn,
  live,
  RULE_WORDS,
} from './rules.ts'
export { bareName, type SameName, sameNameReading, sameNames } from './same-names.ts'
export { CLIMATE_WORDS, MONTH_CHOICES, MONTH_NAMES, stretchWords } from './season.ts'
export { FEW, FEW_MEANS, fewWords, percent, percentRange, shortRange } from './shares.ts'
export {
  depth,
  framesWords,
  height,
  inUnits,
  plain,
  type Quantity,
  quarters,
  temperature,
  type Units,
  unitOf,
  volume,
  weight,
} from './units.ts'
export { type WorkDay, workDays } from './work-days.ts'
