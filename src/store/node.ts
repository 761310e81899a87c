/** What other parts may import from here, of what needs Node; README.md explains. */

export { backupFolder, takeBackup } from './backup.ts'
export { backupServiceOf } from './backup-service.ts'
export { dataFile } from './data-folder.ts'
export { assertIntact, assertNotLost, wayOut } from './integrity.ts'
export { lettersOf } from './letters.ts'
export { DamagedError, OlderError, StoreError } from './migrate.ts'
export { withOlderCopy } from './older-copy.ts'
export { openConnection, openStore, readingStoreOn, storeOn } from './open.ts'
export { restore } from './restore.ts'
export { rulesStamp } from './rules-stamp.ts'
export { SETTINGS, settingsOf } from './settings.ts'
