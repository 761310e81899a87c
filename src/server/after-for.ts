/** Letters and move-out records as one role may have them: none for a role that may not see what is private. */
import { may, type Role } from '../people/index.ts'
import type { After } from './house.ts'

const NONE: After = {
  letters: {
    list: () => [],
    add: () => {
      throw new Error('letters are not for this role')
    },
    open: () => null,
    revoke: () => false,
    revokeEvery: () => {},
  },
  records: {
    of: () => [],
    all: () => new Map(),
    save: () => ({ ok: false, problems: [{ field: '', message: 'is not for this role' }] }),
    erase: () => 0,
  },
}

export const afterFor = (role: Role, after: After): After => (may(role, 'see-private') ? after : NONE)
