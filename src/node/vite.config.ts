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

/** Builds all that Node runs into one file, with its source map: dist/server/resettle.js. */
export default defineConfig({
  root: top,
  publicDir: false,
  plugins: [noted('server')],
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
