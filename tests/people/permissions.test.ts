import { describe, expect, test } from 'vitest'
import { ENTRY_KINDS } from '../../src/journal/entry.ts'
import {
  ACTION_OF_KIND,
  ACTIONS,
  type Action,
  actionAt,
  forWhom,
  may,
  mayOpen,
  PLACES,
  ROLES,
} from '../../src/people/permissions.ts'

/** The whole matrix written out once more by hand, from what the roles are for: operator, beekeeper, helper. */
const MATRIX: Record<Action, [boolean, boolean, boolean]> = {
  'see-colonies': [true, true, true],
  'record-visit': [true, true, true],
  'correct-own': [true, true, true],
  'own-account': [true, true, true],
  'log-intake': [true, true, false],
  'record-outcome': [true, true, false],
  'clear-disease': [true, true, false],
  'correct-any': [true, true, false],
  'sign-for-others': [true, true, false],
  'see-private': [true, true, false],
  'removal-sheets': [true, true, false],
  'review-survival': [true, false, false],
  'see-supplies': [true, false, false],
  'see-colony-changes': [true, true, false],
  'see-changes': [true, false, false],
  'change-settings': [true, false, false],
  'manage-people': [true, false, false],
  safekeeping: [true, false, false],
}

test('the matrix knows every action, and the table every one of the matrix', () =>
  expect(Object.keys(MATRIX).sort()).toEqual(Object.keys(ACTIONS).sort()))

describe.each(Object.entries(MATRIX))('%s', (action, row) => {
  test.each(ROLES.map((role, i) => [role, row[i]] as const))('%s: %s', (role, expected) =>
    expect(may(role, action as Action)).toBe(expected),
  )
})

test('every kind of entry asks for something', () => {
  expect(Object.keys(ACTION_OF_KIND).sort()).toEqual([...ENTRY_KINDS].sort())
  expect(ENTRY_KINDS.filter((k) => !may('helper', ACTION_OF_KIND[k])).sort()).toEqual([
    'disease-cleared',
    'intake',
    'outcome',
  ])
})

describe('places', () => {
  test('a path without a line is for operators', () => {
    expect(actionAt('/nowhere')).toBeNull()
    expect(ROLES.filter((r) => mayOpen(r, '/nowhere'))).toEqual(['operator'])
  })

  test.each([
    ['/colony/A-1/outcome', 'record-outcome'],
    ['/colony/A-1', 'see-colonies'],
    ['/colony/A-1/visit', 'see-colonies'],
    ['/colony/A-1/changes', 'see-colony-changes'],
    ['/people/1/role', 'manage-people'],
    ['/data', 'safekeeping'],
    ['/data/export', 'safekeeping'],
  ] as const)('%s asks for %s', (path, action) => expect(actionAt(path)).toBe(action))

  test('a narrower line stands before a wider one', () => {
    for (const [i, { path }] of PLACES.entries()) {
      const sample = path.replaceAll(/:[a-z]+/g, 'x').replace('/*', '/x/y')
      const first = PLACES.findIndex((p) => p.action === actionAt(sample))
      expect(first, path).toBeLessThanOrEqual(i)
    }
  })

  test('says for whom', () => {
    expect(forWhom('log-intake')).toBe('for beekeepers and operators')
    expect(forWhom('safekeeping')).toBe('for operators')
  })
})
