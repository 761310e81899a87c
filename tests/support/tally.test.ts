import { describe, expect, it } from 'vitest'
import { closingLine, NOTHING, oneFailure, plus, tallyOf } from './tally.ts'

const file = (name: string, ...statuses: string[]) => ({
  name,
  status: statuses.every((s) => s === 'passed') ? 'passed' : 'failed',
  message: '',
  assertionResults: statuses.map((status, i) => ({ status, fullName: `test ${i + 1}` })),
})
const report = (...testResults: ReturnType<typeof file>[]): string => JSON.stringify({ testResults })

describe('counting a test run', () => {
  it('sums what passed over files', () => {
    const t = tallyOf(report(file('a', 'passed', 'passed'), file('b', 'passed')), 'unit', 0)
    expect(t).toEqual({ passed: 3, failed: 0, failures: [] })
  })

  it('names what failed', () => {
    const t = tallyOf(report(file('a', 'passed', 'failed')), 'unit', 1)
    expect(t).toEqual({ passed: 1, failed: 1, failures: ['a: test 2 (failed)'] })
  })

  it.each(['skipped', 'pending', 'todo', 'disabled'])('counts a %s test as a failure', (status) => {
    expect(tallyOf(report(file('a', 'passed', status)), 'unit', 0)).toMatchObject({ passed: 1, failed: 1 })
  })

  it('counts a file in which no test ran as a failure', () => {
    expect(tallyOf(report(file('a', 'passed'), file('b')), 'unit', 0)).toMatchObject({ passed: 1, failed: 1 })
  })

  it('does not pass a run without any test', () => {
    expect(tallyOf(report(), 'unit', 0)).toMatchObject({ passed: 0, failed: 1 })
  })

  it('does not pass a run that ended badly outside its tests', () => {
    expect(tallyOf(report(file('a', 'passed')), 'unit', 1)).toMatchObject({ passed: 1, failed: 1 })
  })

  it.each([
    ['missing', null],
    ['cut off', '{"testResults": ['],
    ['of another shape', '{"results": []}'],
  ])('does not pass a run whose report is %s', (_, text) => {
    expect(tallyOf(text, 'unit', 0)).toMatchObject({ passed: 0, failed: 1 })
  })

  it('adds tallies up and words the closing line', () => {
    const t = plus(plus(NOTHING, { passed: 4, failed: 0, failures: [] }), oneFailure('lint'))
    expect(closingLine(t)).toBe('4 passed, 1 failed')
    expect(t.failures).toEqual(['lint'])
  })
})
