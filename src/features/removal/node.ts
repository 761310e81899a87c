/** What other parts may import from here, of what needs Node; README.md explains. */
export { removalCallBack } from './call-back-route.tsx'
export { removalErase } from './erase-route.tsx'
export { historyOf } from './history.ts'
export { removalPrint } from './print-route.tsx'
export { goesFall, goFallsOf } from './set-back.ts'
export { signedText } from './signed-route.tsx'
export { removalSync } from './sync-route.ts'
