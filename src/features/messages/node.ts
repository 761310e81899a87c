/** What other parts may import from here, of what needs Node; README.md explains. */
export { choicesOn } from './choices.ts'
export { hookRulesFrom } from './hook-rules.ts'
export { mailerFrom } from './mail.ts'
export { messengerOf, startMessenger } from './messenger.ts'
export { messages } from './route.tsx'
export { sentOn } from './sent.ts'
