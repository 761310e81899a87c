/** Builds a program of the tests into one file that node starts quickly. */
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { build, type Plugin } from 'vite'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))

/** Modules that look for files beside themselves (migrations, styles) must find them from where they were. */
const whereTheyWere: Plugin = {
  name: 'where-they-were',
  transform: (code, id) =>
    id.includes('node_modules')
      ? null
      : { code: code.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(id).href)), map: null },
}

/** The built file of `entry` (a path from the root of the project), in `folder`. */
export async function built(entry: string, folder: string): Promise<string> {
  await build({
    root: ROOT,
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    oxc: { jsx: { runtime: 'automatic', importSource: 'hono/jsx' } },
    plugins: [whereTheyWere],
    ssr: { noExternal: true, external: ['better-sqlite3', 'pino'] },
    build: {
      ssr: join(ROOT, entry),
      outDir: folder,
      emptyOutDir: false,
      minify: true,
      target: 'node20',
      rollupOptions: { output: { entryFileNames: 'program.mjs', codeSplitting: false } },
    },
  })
  return join(folder, 'program.mjs')
}
