import { expect, it } from 'vitest'
import { byTurns } from './by-turns.ts'

it('takes two lists by turns, each in its order, so that both end together', () => {
  expect(byTurns(['A', 'B'], [])).toEqual(['A', 'B'])
  expect(byTurns(['A', 'B'], [1, 2, 3, 4, 5, 6].map(String)).join('')).toBe('A123B456')
})
