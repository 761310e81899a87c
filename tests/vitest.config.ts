import { defineConfig } from 'vitest/config'
import { PATIENCE } from './support/long.ts'

const root = new URL('..', import.meta.url).pathname

/**
 * `quiet` needs no browser, `journeys` drives Chromium, `speed` does too, alone. Files share a worker's modules, which are loaded once:
 * nothing in src keeps state of its own beside caches. A worker serves one kind only, and each kind reads and loads everything again:
 * so for the whole run (TOGETHER=1) the first two are one kind.
 */
const project = (name: string, include: string[], timeout: number, globalSetup: string[] = []) => ({
  extends: true as const,
  test: {
    name,
    include,
    isolate: false,
    testTimeout: PATIENCE * timeout,
    hookTimeout: PATIENCE * 240_000,
    // What is waited for comes when it comes on a busy machine; the second that is usual is an absolute time-out.
    expect: { poll: { timeout: 60_000 } },
    globalSetup: ['tests/support/one-run.ts', ...globalSetup],
  },
})

const QUIET = ['tests/**/*.test.{ts,tsx}']
const JOURNEYS = ['tests/journeys/**/*.journey.ts']
const BROWSER = ['tests/support/one-browser.ts']

export default defineConfig({
  root,
  oxc: { jsx: { runtime: 'automatic', importSource: 'hono/jsx' } },
  test: {
    projects: [
      ...(process.env.TOGETHER === '1'
        ? [project('together', [...QUIET, ...JOURNEYS], 240_000, BROWSER)]
        : [project('quiet', QUIET, 120_000), project('journeys', JOURNEYS, 240_000, BROWSER)]),
      project('speed', ['tests/journeys/**/*.speed.ts'], 240_000),
    ],
  },
})
