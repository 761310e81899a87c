/** The store: one append-only journal in SQLite and the projections made of it. README.md in this folder explains. */
export { append } from './append.ts'
export type { BackupService, BackupState } from './backup-service.ts'
export type { Connection } from './connection.ts'
export { type Exposures, exposuresAmong } from './exposures.ts'
export { canonical, fingerprint, fold, fractionOf, knownBy } from './fold.ts'
export type { ColonyImports, ImportNote } from './imports.ts'
export { type Joined, joinings } from './joined.ts'
export type { SentLetter } from './letters.ts'
export { NO_AFTER } from './no-after.ts'
export { NO_REMOVALS } from './no-removals.ts'
export { type Planner, plannerOf, ratesIn } from './planner.ts'
export { type Projected, project } from './project.ts'
export type { RefusedEntry } from './refused.ts'
export type { Jobs, SavedSheet, SheetVersion } from './removals.ts'
export type { OwnRates, SettingKey, Settings, SettingValue, Tidied } from './settings.ts'
export type { ColonyStay } from './stays.ts'
export { matches, natural, summaryOf, walkingOrder } from './summaries.ts'
export type {
  AppendContext,
  AppendResult,
  ColonySummary,
  JournalLine,
  JournalRow,
  Repository,
  Store,
  TaggedRow,
} from './types.ts'
export { mentions, writtenIn } from './written.ts'
