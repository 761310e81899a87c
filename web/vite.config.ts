import { brotliCompressSync, gzipSync } from 'node:zlib'
import { defineConfig, type Plugin } from 'vite'

const here = (path: string): string => new URL(path, import.meta.url).pathname

/** What runs in the browser or styles it, one bundle each, by its path here. A new island is one line. */
const INPUT = {
  print: here('islands/print.ts'),
  record: here('islands/record.ts'),
  styles: here('styles/index.css'),
}

/** Writes each text file a second and third time, compressed, so that the server only has to send it. */
const compressed = (): Plugin => ({
  name: 'compressed',
  apply: 'build',
  enforce: 'post',
  generateBundle(_options, bundle) {
    for (const [name, file] of Object.entries(bundle)) {
      if (!/\.(js|css)$/.test(name)) continue
      const source = Buffer.from(file.type === 'chunk' ? file.code : file.source)
      this.emitFile({ type: 'asset', fileName: `${name}.br`, source: brotliCompressSync(source) })
      this.emitFile({ type: 'asset', fileName: `${name}.gz`, source: gzipSync(source, { level: 9 }) })
    }
  },
})

/** Builds what runs in the browser: hashed names under assets/, and a manifest the server reads. */
export default defineConfig({
  root: here('.'),
  publicDir: 'public',
  plugins: [compressed()],
  build: {
    outDir: '../dist/web',
    emptyOutDir: true,
    manifest: 'manifest.json',
    target: 'es2022',
    rollupOptions: { input: INPUT },
  },
})
