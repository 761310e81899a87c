import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'
import { ByTurns } from './support/by-turns.ts'
import { PATIENCE } from './support/long.ts'

const root = new URL('..', import.meta.url).pathname

/** What kinds differ in. */
interface Own {
  /** Milliseconds. */
  testTimeout: number
  globalSetup?: string[]
  maxWorkers?: number
  sequence?: { groupOrder: number }
}

/**
 * `quiet` needs no browser, `journeys` drives Chromium, `speed` does too, alone. Files share a worker's modules, which are loaded once:
 * nothing in src keeps state of its own beside caches. A worker serves one kind only, and each kind reads and loads everything again:
 * so for the whole run (TOGETHER=1) the first two are one kind, on one worker more than there are cores, because journeys often wait
 * for a page; then comes `speed`.
 */
const project = (name: string, include: string[], own: Own) => ({
  extends: true as const,
  test: {
    ...own,
    name,
    include,
    isolate: false,
    // Tests open hundreds of yards and drop them: with room for what is young, a twelfth of the processor's time is not spent on clearing up.
    execArgv: ['--max-semi-space-size=64'],
    testTimeout: PATIENCE * own.testTimeout,
    hookTimeout: PATIENCE * 240_000,
    // What is waited for comes when it comes on a busy machine; the second that is usual is an absolute time-out.
    expect: { poll: { timeout: 60_000 } },
    globalSetup: ['tests/support/one-run.ts', ...(own.globalSetup ?? [])],
  },
})

const QUIET = ['tests/**/*.test.{ts,tsx}']
const JOURNEYS = ['tests/journeys/**/*.journey.ts']
const MINUTES = { testTimeout: 240_000 }
const BROWSER = { ...MINUTES, globalSetup: ['tests/support/one-browser.ts'] }
const TOGETHER = { ...BROWSER, maxWorkers: availableParallelism() + 1 }
const LAST = { ...MINUTES, maxWorkers: 1, sequence: { groupOrder: 1 } }

export default defineConfig({
  root,
  oxc: { jsx: { runtime: 'automatic', importSource: 'hono/jsx' } },
  test: {
    sequence: { sequencer: ByTurns },
    // What a file is compiled to is kept by what it says: for another run here, not for the first in a fresh clone.
    experimental: { fsModuleCache: true, fsModuleCachePath: `${root}dist/tests` },
    projects: [
      ...(process.env.TOGETHER === '1'
        ? [project('together', [...QUIET, ...JOURNEYS], TOGETHER)]
        : [project('quiet', QUIET, { testTimeout: 120_000 }), project('journeys', JOURNEYS, BROWSER)]),
      project('speed', ['tests/journeys/**/*.speed.ts'], LAST),
    ],
  },
})
