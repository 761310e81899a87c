/** The store: one append-only journal in SQLite and the projections made of it. README.md in this folder explains. */
export { dataFile, dataFolder } from './data-folder.ts'
export type { ColonyImports, ImportNote, KeptImport, NewImport } from './imports.ts'
export { DamagedError, OlderError, StoreError } from './migrate.ts'
export { type OpenOptions, openConnection, openStore, storeOn } from './open.ts'
export type { ProtocolChange, Protocols, Remaking } from './protocols.ts'
export type { Box, Removals, SavedSheet, SheetVersion } from './removals.ts'
export { SETTINGS, type SettingKey, type Settings, type SettingValue } from './settings.ts'
export type * from './types.ts'
