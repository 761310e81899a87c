import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { brotliCompressSync, constants, gzipSync } from 'node:zlib'
import { build, defineConfig, type Plugin } from 'vite'
import type { Built } from '../src/phone/index.ts'
import { UNSAID } from '../src/phone/unsaid.ts'
import { noted } from '../src/what-is-inside.mjs'

const here = (path: string): string => new URL(path, import.meta.url).pathname

/** What runs in the browser or styles it, one bundle each, by its path here. A new island is one line. */
const INPUT = {
  beside: here('islands/beside.ts'),
  print: here('islands/print.ts'),
  phone: here('islands/phone.ts'),
  photos: here('islands/photos.ts'),
  record: here('islands/record.ts'),
  share: here('islands/share.ts'),
  sign: here('islands/sign.ts'),
  reviewCharts: here('islands/review-charts.ts'),
  styles: here('styles/index.css'),
}

/** Blocks of 128 KB: the worker is some hundred bytes smaller than with those that Brotli takes by itself. */
const params = { [constants.BROTLI_PARAM_LGBLOCK]: 17 }

/** Writes each text file a second and third time, compressed, so that the server only has to send it. */
const compressed = (): Plugin => ({
  name: 'compressed',
  apply: 'build',
  enforce: 'post',
  // Last of all: what is compressed must be what is written, with the addresses that the build puts in at the end.
  generateBundle: {
    order: 'post',
    handler(_options, bundle) {
      for (const [name, file] of Object.entries(bundle)) {
        if (!/\.(js|css)$/.test(name)) continue
        const source = Buffer.from(file.type === 'chunk' ? file.code : file.source)
        this.emitFile({
          type: 'asset',
          fileName: `${name}.br`,
          source: brotliCompressSync(source, { params }),
        })
        this.emitFile({ type: 'asset', fileName: `${name}.gz`, source: gzipSync(source, { level: 9 }) })
      }
    },
  },
})

/** What a phone keeps to work without signal, by source name; icons and the manifest of the app besides. */
const ROUND = [
  'styles/index.css',
  'islands/beside.ts',
  'islands/phone.ts',
  'islands/photos.ts',
  'islands/record.ts',
  'islands/share.ts',
  'islands/sign.ts',
]

type Chunks = Record<string, { file: string; imports?: string[]; dynamicImports?: string[] }>

/** What the worker has to know of the other files. */
function builtFrom(folder: string): Built {
  const text = readFileSync(`${folder}/manifest.json`, 'utf8')
  const chunks = JSON.parse(text) as Chunks
  const found = new Set<string>()
  // What is fetched only when it is needed may be needed without signal; and files may import each other.
  const add = (name: string): void => {
    const chunk = chunks[name]
    if (chunk === undefined || found.has(`/${chunk.file}`)) return
    found.add(`/${chunk.file}`)
    for (const other of [...(chunk.imports ?? []), ...(chunk.dynamicImports ?? [])]) add(other)
  }
  for (const name of ROUND) add(name)
  const icons = readdirSync(`${folder}/icons`).map((name) => `/icons/${name}`)
  return {
    version: createHash('sha256').update(text).digest('hex').slice(0, 12),
    files: Object.fromEntries(Object.entries(chunks).map(([name, { file }]) => [name, `/${file}`])),
    keep: [...found, '/icon.svg', '/manifest.webmanifest', ...icons],
  }
}

/** The worker without the words of pages that no phone draws; tests/house/phone.test.ts holds that it says none of them. */
const unsaid = (): Plugin => ({
  name: 'unsaid',
  enforce: 'pre',
  resolveId(source, importer) {
    const [, name = ''] = /^\.\/(\w+)\.ts$/.exec(source) ?? []
    return UNSAID.includes(name) && /src\/words\/\w\w\/index\.ts$/.test(importer ?? '')
      ? `\0unsaid:${name}`
      : null
  },
  load: (id) => (id.startsWith('\0unsaid:') ? `export const ${id.slice('\0unsaid:'.length)} = {}` : null),
})

/** Builds the service worker last, as one plain script: not every browser takes a module for a worker. */
const serviceWorker = (): Plugin => ({
  name: 'service-worker',
  apply: 'build',
  async closeBundle() {
    const folder = here('../dist/web')
    await build({
      configFile: false,
      root: here('.'),
      publicDir: false,
      logLevel: 'warn',
      plugins: [unsaid(), compressed(), noted('phone')],
      define: { BUILT: JSON.stringify(builtFrom(folder)) },
      resolve: {
        alias: [
          // One router instead of three: a phone has some hundred addresses, and asks for one page at a time.
          { find: /^hono$/, replacement: 'hono/tiny' },
          { find: /^hono\/accepts$/, replacement: here('accepts.mjs') },
        ],
      },
      build: {
        outDir: folder,
        emptyOutDir: false,
        // All pages of the round in one file, fetched once a version, beside the pages that do not wait for it.
        chunkSizeWarningLimit: 1000,
        target: 'es2022',
        rollupOptions: {
          input: here('../src/phone/service-worker.ts'),
          checks: { bundlerTimings: false },
          // These do nothing by being imported: a worker draws no live page, and keeps no move-out record.
          treeshake: {
            moduleSideEffects: [{ test: /node_modules\/hono\/|src\/records\//, sideEffects: false }],
          },
          output: { format: 'iife', entryFileNames: 'service-worker.js' },
        },
      },
    })
  },
})

/** What the code of every page shares, in one file: each file more is a kilobyte of headers. */
const EVERYWHERE = {
  name: 'words',
  test: /(islands\/words|src\/(languages|days|words\/(page-words|people|(en|es)\/(door|frame|islands|today|dates))))\.ts$|rolldown-runtime|preload-helper/,
}

/** Pages run the words of their own language; the worker, which draws pages in any, has all. */
const ownLanguage = (): Plugin => ({
  name: 'own-language',
  enforce: 'pre',
  async resolveId(source, importer) {
    if (!source.endsWith('/catalogue.ts')) return null
    const found = await this.resolve(source, importer, { skipSelf: true })
    return found?.id === here('../src/words/catalogue.ts') ? here('../src/words/live-catalogue.ts') : null
  },
})

/** Builds what runs in the browser: hashed names under assets/, and a manifest the server reads. */
export default defineConfig({
  root: here('.'),
  publicDir: 'public',
  plugins: [ownLanguage(), compressed(), noted('web'), serviceWorker()],
  build: {
    outDir: '../dist/web',
    emptyOutDir: true,
    manifest: 'manifest.json',
    target: 'es2022',
    rollupOptions: {
      input: INPUT,
      checks: { bundlerTimings: false },
      output: { codeSplitting: { groups: [EVERYWHERE] } },
    },
  },
})
