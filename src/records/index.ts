/** What other parts may import from here; README.md explains. */
export {
  BLANKS,
  blocksOf,
  DEFAULT_TERMS,
  priceWords,
  TERMS_LIMIT,
  termsOf,
  unknownBlanks,
} from './agreement.ts'
export { drawingOf, FIELD, svgOf } from './drawing.ts'
export { MOST_PERMITS, type MoveRecord, moveRecord, permitWords } from './move-out-record.ts'
export {
  ACCESS,
  agreement,
  BEHIND,
  BYSTANDERS,
  CLEANED,
  check,
  DECISIONS,
  type Decision,
  decision,
  EMPTY_SHEET,
  FOUND_BY,
  type ForecastHour,
  HAZARDS,
  job,
  SEALED,
  type Sheet,
  type Signature,
  sheet,
  sheetName,
  signature,
  site,
  VACUUMS,
  type Work,
  work,
} from './removal-sheet.ts'
