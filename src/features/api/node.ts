/** The door of this room for what needs Node; README.md says what is behind it. */
export { api } from './route.ts'
export { apiTokens } from './tokens-route.tsx'
