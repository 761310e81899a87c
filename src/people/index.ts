/** People: accounts, sessions, invitations, and what each role may do. README.md in this folder explains. */
export type { Outcome } from './accounts.ts'
export type { ApiToken, ApiTokens, Scope, TokenHolder } from './api-tokens.ts'
export type { Shows } from './calendar-address-schema.ts'
export type { CameBack } from './came-back.ts'
export type { Invitation } from './invites.ts'
export type { Limits } from './limits.ts'
export { nameKey, type Person, type PersonState } from './names.ts'
export type { Cost } from './passphrase.ts'
export type { People } from './people.ts'
export {
  ACTION_OF_KIND,
  ACTIONS,
  type Action,
  actionAt,
  forWhom,
  may,
  mayOpen,
  ROLES,
  type Role,
} from './permissions.ts'
export { withoutPrivate } from './privacy.ts'
export { repositoryFor, storeFor } from './repository-for.ts'
