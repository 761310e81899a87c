/** What other parts may import from here, of what needs Node; README.md explains. */

export {
  type Backup,
  backupFolder,
  backupProblem,
  listBackups,
  type Prove,
  takeBackup,
} from './backup.ts'
export { backupServiceOf } from './backup-service.ts'
export { dataFile, dataFolder } from './data-folder.ts'
export { isServed, lockFolder } from './folder-lock.ts'
export { assertComplete, assertIntact, assertNotLost, lossWords, wayOut } from './integrity.ts'
export { lettersOf } from './letters.ts'
export { lossAgainst } from './loss.ts'
export { DamagedError, OlderError, StoreError } from './migrate.ts'
export { withOlderCopy } from './older-copy.ts'
export { openConnection, openStore, readingStoreOn, storeOn } from './open.ts'
export { removalsOf } from './removals.ts'
export { restore } from './restore.ts'
export { rulesStamp } from './rules-stamp.ts'
export { SETTINGS, settingsOf } from './settings.ts'
