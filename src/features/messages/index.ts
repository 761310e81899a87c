/** The door of this room; README.md says what is behind it. */
export type { HookRules } from './hook-rules.ts'
export type { Mailer } from './mail.ts'
export type { Messages, MessagesDeps } from './messages.ts'
