/** What other parts may import from here, of what needs Node; README.md explains. */
export { addressOf, DIRECT, isSecure, originOf, outsideFrom } from './address.ts'
export { dailyOf } from './daily.ts'
export { errorForLog, logged, loggerFrom, pathForLog, SILENT } from './logging.ts'
export { remakerOf } from './recompute.ts'
export { nothingThere } from './secret-address.ts'
export { headers, ownPagesOnly } from './security.ts'
export { inSlices, mappedInSlices, othersFirst } from './slices.ts'
export { type Times, timeLimit } from './time-limit.ts'
