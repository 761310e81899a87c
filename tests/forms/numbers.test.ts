import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { numberTyped } from '../../src/forms/numbers.ts'

describe('numbers as people type them', () => {
  it.each([
    ['1.5', 1.5],
    ['1,5', 1.5],
    [' 12 ', 12],
    ['½', 0.5],
    ['1½', 1.5],
    ['2 ¼', 2.25],
    ['1 1/2', 1.5],
    ['3/4', 0.75],
    ['-3', -3],
    ['−3', -3],
    ['.5', 0.5],
    ['0', 0],
  ])('%s is %d', (text, n) => expect(numberTyped(text)).toBe(n))

  it.each(['', 'two', '1.2.3', '1e5', '0x10', '1/0', 'NaN', 'Infinity', '--1', '12 frames', '1 2'])(
    '"%s" is no number',
    (text) => expect(numberTyped(text)).toBeNull(),
  )

  it('gives a finite number or none, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const n = numberTyped(text)
        expect(n === null || Number.isFinite(n)).toBe(true)
      }),
    )
  })
})
