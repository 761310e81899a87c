import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vite'
import { rulesStamp } from '../store/node.ts'
import { noted } from '../what-is-inside.mjs'

const top = fileURLToPath(new URL('../..', import.meta.url))

/** What must stay outside the one file: it is native. package.json names the same as its only dependencies. */
const OUTSIDE = Object.keys(
  (JSON.parse(readFileSync(`${top}/package.json`, 'utf8')) as { dependencies: Record<string, string> })
    .dependencies,
)

/**
 * Node keeps the text of what it runs: a byte a character, but two for all of them where one is beyond Latin-1. So those are
 * written as escapes, which costs a few columns in the source map and saves 5 MB in each thread.
 */
const escaped = {
  name: 'latin-1',
  generateBundle(_options: unknown, bundle: Record<string, { type: string; code?: string }>): void {
    for (const file of Object.values(bundle))
      if (file.code !== undefined) file.code = file.code.replaceAll(/[^\0-\xff]/g, asEscape)
  },
}

const asEscape = (unit: string): string => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`

/** Builds all that Node runs into one file, with its source map: dist/server/resettle.js. */
export default defineConfig({
  root: top,
  publicDir: false,
  plugins: [noted('server'), escaped],
  define: { RULES_STAMP: JSON.stringify(rulesStamp()) },
  ssr: { noExternal: true, external: OUTSIDE },
  build: {
    ssr: true,
    outDir: 'dist/server',
    emptyOutDir: true,
    sourcemap: true,
    target: 'node20',
    minify: false,
    rollupOptions: {
      input: 'src/cli.ts',
      checks: { bundlerTimings: false },
      output: {
        entryFileNames: 'resettle.js',
        codeSplitting: false,
        // The map says where; what stands there is in the checkout, and need not be read at every start.
        sourcemapExcludeSources: true,
      },
    },
  },
})
