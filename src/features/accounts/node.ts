/** What other parts may import from here, of what needs Node; README.md explains. */
export { account } from './account-route.tsx'
export { invite } from './invite-route.tsx'
export { people } from './people-route.tsx'
export { noStrangers, visitor } from './session.ts'
export { setUp } from './set-up-route.tsx'
export { signIn } from './sign-in-route.tsx'
