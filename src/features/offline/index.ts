/** What other parts may import from here; README.md explains. */
export { NoSignalPage, NotKeptPage } from './no-signal-page.tsx'
export { SignOutPage, TakeOutPage, TakeOutSheetPage, UnlistedPage } from './outbox-asks.tsx'
export type { OutboxItem, OwnItem, SheetItem } from './outbox-items.ts'
export { OutboxPage } from './outbox-page.tsx'
export {
  FORMAT,
  type RoundBundle,
  type RoundColony,
  type RoundSettings,
  type RoundSheet,
  type RoundViewer,
} from './round-bundle.ts'
export { offline } from './route.tsx'
