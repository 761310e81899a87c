/** Built styles and browser code: names by their source, from the build's manifest; files under /assets never change. */

import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { serveStatic } from '@hono/node-server/serve-static'
import { Hono } from 'hono'
import { z } from 'zod'
import type { Assets, Env } from '../app/index.ts'

export const BUILT = fileURLToPath(new URL('../../dist/web', import.meta.url))

const manifest = z.record(z.string(), z.object({ file: z.string() }))

/** The build in a folder; with no build there, pages come without styles. */
export function assetsIn(folder = BUILT): Assets {
  const file = join(folder, 'manifest.json')
  const files = existsSync(file) ? manifest.parse(JSON.parse(readFileSync(file, 'utf8'))) : {}
  return {
    folder,
    built: (source) => {
      const made = Object.hasOwn(files, source) ? files[source] : undefined
      return made === undefined ? null : `/${made.file}`
    },
  }
}

const YEAR = 31_536_000

/** Serves the build. Hashed names may be kept for ever; the few others are asked for again. */
export function assetFiles(assets: Assets): Hono<Env> {
  const app = new Hono<Env>()
  const serve = (cache: string) =>
    serveStatic({
      root: assets.folder,
      precompressed: true,
      onFound: (_path, c) => {
        c.header('Cache-Control', cache)
      },
    })
  app.use('/assets/*', serve(`public, max-age=${YEAR}, immutable`))
  const day = serve('public, max-age=86400')
  for (const path of ['/icon.svg', '/icons/*', '/manifest.webmanifest']) app.use(path, day)
  // Asked for anew each time: it is how a browser finds out that there is a newer version.
  app.use('/service-worker.js', serve('no-cache'))
  return app
}
