/** What other parts may import from here; README.md explains. */
export type { HookRules } from './hook-rules.ts'
export type { Mailer } from './mail.ts'
export type { Messages, MessagesDeps } from './messages.ts'
