/** Counts what a test run did, from the runner's own JSON report: nothing is taken on trust. */
import { z } from 'zod'

/** The part of vitest's JSON report that is counted. */
const report = z.object({
  testResults: z.array(
    z.object({
      name: z.string(),
      status: z.string(),
      message: z.string().optional(),
      assertionResults: z.array(z.object({ status: z.string(), fullName: z.string() })),
    }),
  ),
})

export interface Tally {
  passed: number
  failed: number
  /** What failed, one line each. */
  failures: string[]
}

export const NOTHING: Tally = { passed: 0, failed: 0, failures: [] }

export const plus = (a: Tally, b: Tally): Tally => ({
  passed: a.passed + b.passed,
  failed: a.failed + b.failed,
  failures: [...a.failures, ...b.failures],
})

/** A step that is not made of tests (types, lint, build): nothing when well, one failure otherwise. */
export const oneFailure = (what: string): Tally => ({ passed: 0, failed: 1, failures: [what] })

/**
 * The tally of a vitest JSON report. Anything but 'passed' is a failure: skipped, todo and pending tests too, because a
 * test that did not run proved nothing. A file that could not be loaded is one failure. A run that reports no test at
 * all, or whose exit code was not 0 though every test passed (an error outside the tests), is one failure.
 */
export function tallyOf(text: string | null, step: string, exitCode: number): Tally {
  if (text === null) return oneFailure(`${step}: the test runner left no report (exit code ${exitCode})`)
  const parsed = parse(text)
  if (parsed === null) return oneFailure(`${step}: the test runner's report cannot be read`)
  let tally = NOTHING
  for (const file of parsed.testResults) {
    if (file.assertionResults.length === 0)
      tally = plus(tally, oneFailure(`${file.name}: no test ran ${file.message ?? ''}`.trimEnd()))
    for (const test of file.assertionResults)
      tally =
        test.status === 'passed'
          ? { ...tally, passed: tally.passed + 1 }
          : plus(tally, oneFailure(`${file.name}: ${test.fullName} (${test.status})`))
  }
  if (tally.passed + tally.failed === 0) return oneFailure(`${step}: no tests were found`)
  if (exitCode !== 0 && tally.failed === 0)
    return plus(tally, oneFailure(`${step}: every test passed but the runner ended with code ${exitCode}`))
  return tally
}

function parse(text: string): z.infer<typeof report> | null {
  try {
    return report.parse(JSON.parse(text))
  } catch {
    return null
  }
}

/** The closing line of the test run. */
export const closingLine = (t: Tally): string => `${t.passed} passed, ${t.failed} failed`
