/** What other parts may import from here; README.md explains. */
export type { Outside } from './address.ts'
export type { AppContext, Assets, DemoSignIn, Deps, Env, PageDeps, SheetHistory, Viewer } from './context.ts'
export {
  bareFrame,
  broken,
  colonyIn,
  tooLarge,
  tooManyTries,
  unknownColony,
  unknownEntry,
  unknownPage,
} from './errors.tsx'
export {
  type ForecastCache,
  forecastCache,
  type Ground,
  groundIn,
  type Known,
  STANDS_AHEAD,
  SUPPLIES_AHEAD,
} from './forecasts.ts'
export { idIn, signedIn, takesKeysBack, typedIn, withIds } from './form.ts'
export { frame, frameFor, todayOf, viewerOf, zoneOf } from './frame.tsx'
export { grouped, groupOf } from './group.ts'
export { type Histories, yardHistories } from './histories.ts'
export { journalLines, savedTogether } from './journal-lines.ts'
export type { Logger } from './logging.ts'
export { nearestTags } from './nearest.ts'
export { allowed } from './permission.tsx'
export { withPhotos } from './photos-in.ts'
export { NO_SNIFFING_AROUND } from './policy.ts'
export { problemResponse } from './problem.ts'
export { colonyPath, formPage, page, refusalStatus, sendsJson, toColony } from './respond.tsx'
export { onward, thenOf } from './return-to.ts'
export { boxPath, endPath, roundPath, thenTo, type Where } from './round-paths.ts'
export { formIn, jsonIn } from './sent.ts'
export { keepPageLanguage, languageChosen, languageFor } from './spoken.ts'
export { streamed } from './stream.ts'
export { submit } from './submit.ts'
