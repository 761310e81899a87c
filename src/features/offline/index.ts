/** What other parts may import from here; README.md explains. */
export { NoSignalPage, NotKeptPage } from './no-signal-page.tsx'
export {
  type OutboxItem,
  OutboxPage,
  type OwnItem,
  type SheetItem,
  SignOutPage,
  TakeOutPage,
  UnlistedPage,
} from './outbox-page.tsx'
export {
  FORMAT,
  type RoundBundle,
  type RoundColony,
  type RoundSettings,
  type RoundSheet,
  type RoundViewer,
} from './round-bundle.ts'
export { offline } from './route.tsx'
