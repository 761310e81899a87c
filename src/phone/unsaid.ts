/** Parts of the catalogue that no page of the phone says: the worker is built without them (web/vite.config.ts). */
export const UNSAID: readonly string[] = [
  'account',
  'calendar',
  'health',
  'invite',
  'islands',
  'messages',
  'paper',
  'tokens',
]
