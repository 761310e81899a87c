/** The door of this room; README.md says what is behind it. */
export { day, MOST_PHOTOS, photoId, photos, text, time } from './answers.ts'
export { type Disagreement, saysNothing, withDayLooks } from './day-looks.ts'
export {
  BROOD_STATES,
  beesBoxed,
  broodComb,
  CLEARED_BY,
  type DiseaseCleared,
  type Entry,
  type EntryKind,
  entry,
  GIFTS,
  type Gift,
  type Given,
  type Inspection,
  type Intake,
  intake,
  KIND_SCHEMAS,
  LOST_BOX,
  METHODS,
  MISSED_REASONS,
  type MissedReason,
  type MissedVisit,
  type MiteWash,
  type Move,
  type Note,
  OUTCOMES,
  type Outcome,
  outcome,
  QUEEN_AT_INTAKE,
  type QueenCage,
  queenTaken,
  REMOVAL_TYPES,
  SEARCHED,
  SETTLES,
  SIGNS,
  SYRUPS,
  tag,
  temper,
} from './entry.ts'
export { type Happening, happeningOf } from './happening.ts'
export {
  contradictions,
  type History,
  historyAs,
  historyOf,
  lastOpening,
  replacements,
  type StandingEntry,
  standing,
} from './history.ts'
export { eachKind, isVisit, KIND_TABLE, never, wasThere } from './kinds.ts'
export { type Problem, problemLine, problemsOf } from './problem.ts'
export { natural, type StandPlace, standOrder } from './stand-order.ts'
