/** The door of this room for what needs Node; README.md says what is behind it. */
export { addressOf, DIRECT, isSecure, originOf, outsideFrom } from './address.ts'
export { errorForLog, logged, loggerFrom, pathForLog, SILENT } from './logging.ts'
export { headers, ownPagesOnly, timeLimit } from './security.ts'
export { inSlices, mappedInSlices } from './slices.ts'
