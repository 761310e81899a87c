/** The door of this room for what needs Node; README.md says what is behind it. */
export { choicesOn } from './choices.ts'
export { hookRulesFrom } from './hook-rules.ts'
export { mailerFrom } from './mail.ts'
export { messengerOf, startMessenger } from './messenger.ts'
export { messages } from './route.tsx'
export { sentOn } from './sent.ts'
