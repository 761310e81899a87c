import { defineConfig } from 'vite'

/** Builds what runs in the browser: one bundle an island, hashed names, and a manifest the server reads. */
export default defineConfig({
  root: new URL('.', import.meta.url).pathname,
  publicDir: 'public',
  build: {
    outDir: '../dist/web',
    emptyOutDir: true,
    manifest: 'manifest.json',
    target: 'es2022',
    rollupOptions: { input: { record: new URL('islands/record.ts', import.meta.url).pathname } },
  },
})
