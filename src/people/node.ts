/** What other parts may import from here, of what needs Node; README.md explains. */
export { apiTokensOn, SCOPES, scopesFor, TOKEN_DAYS, TOKEN_NAME_LIMIT } from './api-tokens.ts'
export { calendarFeed, SHOWS } from './calendar-address-schema.ts'
export { accountsIn, heldAgainst } from './came-back.ts'
export { keysOn } from './keys.ts'
export { peopleOn } from './people.ts'
export { person } from './schema.ts'
export { ABSOLUTE_DAYS } from './sessions.ts'
export { digestOf, newToken, sameToken } from './tokens.ts'
