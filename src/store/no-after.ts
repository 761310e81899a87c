import { refused } from '../result.ts'
import type { After } from './types.ts'

/** What somebody gets who may not see what is private: no letters, no move-out records. */
export const NO_AFTER: After = {
  letters: {
    list: () => [],
    add: () => {
      throw new Error('letters are not for this role')
    },
    open: () => null,
    revoke: () => false,
    everything: () => [],
    take: () => {},
    revokeEvery: () => {},
  },
  records: {
    of: () => [],
    all: () => new Map(),
    everything: () => [],
    take: () => {},
    save: () => refused([{ field: '', message: 'is not for this role' }]),
    erase: () => 0,
  },
}
