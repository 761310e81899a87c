import { defineConfig } from 'vitest/config'
import { PATIENCE } from './support/long.ts'

const root = new URL('..', import.meta.url).pathname

/**
 * `quiet` needs no browser, `journeys` drives Chromium, `speed` does too, alone. Files share a worker's modules, which are loaded once:
 * nothing in src keeps state of its own beside caches. A worker serves one kind only, so each kind more loads everything again.
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
    globalSetup,
  },
})

export default defineConfig({
  root,
  oxc: { jsx: { runtime: 'automatic', importSource: 'hono/jsx' } },
  test: {
    projects: [
      project('quiet', ['tests/**/*.test.{ts,tsx}'], 120_000),
      project('journeys', ['tests/journeys/**/*.journey.ts'], 240_000, ['tests/support/one-browser.ts']),
      project('speed', ['tests/journeys/**/*.speed.ts'], 240_000),
    ],
  },
})
