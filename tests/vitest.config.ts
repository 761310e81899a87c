import { defineConfig } from 'vitest/config'

const root = new URL('..', import.meta.url).pathname

/**
 * `unit` is pure; `reference` checks published values; `server` opens SQLite and the app; `journeys` drives Chromium; `speed` does too, alone.
 * Files share a worker's modules, which are loaded once: nothing in src keeps state of its own beside caches.
 */
const project = (
  name: string,
  include: string[],
  exclude: string[] = [],
  timeout = 60_000,
  globalSetup: string[] = [],
) => ({
  extends: true as const,
  test: { name, include, exclude, isolate: false, testTimeout: timeout, hookTimeout: 240_000, globalSetup },
})

export default defineConfig({
  root,
  oxc: { jsx: { runtime: 'automatic', importSource: 'hono/jsx' } },
  test: {
    projects: [
      project(
        'unit',
        ['tests/**/*.test.{ts,tsx}'],
        ['tests/reference/**', 'tests/journeys/**', 'tests/**/*.http.test.{ts,tsx}'],
      ),
      project('reference', ['tests/reference/**/*.test.ts']),
      project('server', ['tests/**/*.http.test.{ts,tsx}'], [], 120_000),
      project('journeys', ['tests/journeys/**/*.journey.ts'], [], 240_000, ['tests/support/one-browser.ts']),
      project('speed', ['tests/journeys/**/*.speed.ts'], [], 240_000),
    ],
  },
})
