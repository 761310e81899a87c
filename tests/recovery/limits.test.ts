/** What a yard may say of its own rules. */
import { describe, expect, test } from 'vitest'
import { protocolOverrides } from '../../src/recovery/protocol.ts'

describe('the protocol', () => {
  // What a yard may say at least and at most (judgement, src/recovery/protocol.ts), and the step beyond each.
  test.each([
    ['holdDays', 7, 120, 1],
    ['minFramesOfBees', 0.5, 20, 0.25],
    ['miteThreshold', 0.1, 20, 0.05],
    ['miteWashValidDays', 1, 60, 1],
    ['diseaseLookValidDays', 1, 60, 1],
    ['heatLimitC', 15, 45, 0.5],
    ['cutMarginMm', 0, 25, 0.5],
  ])('takes %s from %d to %d', (field, least, most, step) => {
    const takes = (n: number): boolean => protocolOverrides.safeParse({ [field]: n }).success
    expect([least - step, least, most, most + step].map(takes)).toEqual([false, true, true, false])
  })

  test('takes a limit of mites for one month within the same limits', () => {
    const takes = (n: number): boolean =>
      protocolOverrides.safeParse({ miteThresholdByMonth: { '1': n } }).success
    expect([0.05, 0.1, 20, 20.5].map(takes)).toEqual([false, true, true, false])
  })
})
