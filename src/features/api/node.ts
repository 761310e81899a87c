/** What other parts may import from here, of what needs Node; README.md explains. */
export { api } from './route.ts'
export { apiTokens } from './tokens-route.tsx'
