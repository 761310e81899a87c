/** The morning digest: who wants it, what was sent, and what sends it. */
import type { Deps } from '../../app/index.ts'
import type { Choices } from './choices.ts'
import type { Messenger } from './messenger.ts'
import type { SentMessages } from './sent.ts'

export interface Messages {
  choices: Choices
  sent: SentMessages
  messenger: Messenger
}

export type MessagesDeps = Deps & { messages: Messages }
