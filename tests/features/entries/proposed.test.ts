/** The tag and the stand proposed for an intake: src/features/entries/propose.ts. */
import { describe, expect, test } from 'vitest'
import { freeStand, nextTag } from '../../../src/features/entries/propose.ts'

type Colonies = Parameters<typeof nextTag>[0]

const colonies = (...at: [tag: string, stand?: string | null, yard?: string][]): Colonies =>
  at.map(([tag, stand = null, yard = 'Quarry']) => ({ tag, stand, yard })) as unknown as Colonies

describe('the next tag', () => {
  test.each([
    ['W-09', ['W-07', 'W-09'], 'W-10'],
    ['W-2', ['W-1', 'W-2'], 'W-3'],
    ['W-099', ['W-099'], 'W-100'],
    // The highest of the series counts, not the last one given: W-12 stands already.
    ['W-03', ['W-12', 'W-03'], 'W-13'],
    // Capitals make no other series: W-10 would be refused.
    ['W-09', ['w-10', 'W-09'], 'W-11'],
    // Other series do not matter.
    ['T-4', ['W-50', 'T-4'], 'T-5'],
    ['17', ['16', '17'], '18'],
    ['2026-031', ['2026-030', '2026-031'], '2026-032'],
  ])('after %s among %j is %s', (last, tags, next) => {
    expect(nextTag(colonies(...tags.map((tag): [string] => [tag])), last)).toBe(next)
  })

  test('is not guessed where tags are in no series, or there is none yet', () => {
    expect(nextTag(colonies(['Old oak']), 'Old oak')).toBe('')
    expect(nextTag([], null)).toBe('')
  })

  test('does not need the last one to stand in the yard still', () => {
    expect(nextTag(colonies(['W-1']), 'W-5')).toBe('W-6')
  })
})

describe('the free stand', () => {
  test('is the lowest number on which nothing stands, in that yard alone', () => {
    const all = colonies(['W-1', '1'], ['W-2', '2'], ['W-3', '4'], ['T-1', '3', 'Tannery'])
    expect(freeStand(all, 'Quarry')).toBe('3')
    expect(freeStand(all, 'Tannery')).toBe('1')
  })

  test('is not guessed where stands have names, or none is noted', () => {
    expect(freeStand(colonies(['W-1', 'by the oak']), 'Quarry')).toBe('')
    expect(freeStand(colonies(['W-1', null]), 'Quarry')).toBe('')
    expect(freeStand([], 'Quarry')).toBe('')
  })
})
