/** What a phone needs to put the app on its home screen (W3C Web Application Manifest; PNG: ISO/IEC 15948, 11.2.2 IHDR). */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, it } from 'vitest'
import { assetsIn } from '../../src/node/assets.ts'
import { testYard } from '../support/yard-app.ts'

const PUBLIC = fileURLToPath(new URL('../../web/public', import.meta.url))
const yard = testYard({ deps: { assets: assetsIn(PUBLIC) } })

/** Width and height out of the head of a PNG. */
function sizeOf(png: Buffer): string {
  expect(png.subarray(0, 8).toString('latin1')).toBe('\x89PNG\r\n\x1a\n')
  expect(png.subarray(12, 16).toString('latin1')).toBe('IHDR')
  return `${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`
}

interface Manifest {
  start_url: string
  scope: string
  display: string
  name: string
  icons: { src: string; sizes: string; type: string; purpose?: string }[]
}

it('gives the manifest and its icons to everybody, each of the size it says', async () => {
  const answer = await yard.ask(null, '/manifest.webmanifest')
  expect(answer.status).toBe(200)
  expect(answer.headers.get('Content-Type')).toContain('application/manifest+json')
  const manifest = (await answer.json()) as Manifest
  expect(manifest).toMatchObject({ name: 'Resettle', start_url: '/', scope: '/', display: 'standalone' })
  expect(manifest.icons.map((i) => i.sizes)).toEqual(expect.arrayContaining(['192x192', '512x512']))
  expect(manifest.icons.some((i) => i.purpose === 'maskable')).toBe(true)
  for (const icon of manifest.icons) {
    const shown = await yard.ask(null, icon.src)
    expect(shown.headers.get('Content-Type'), icon.src).toContain(icon.type)
    if (icon.type === 'image/png') expect(sizeOf(Buffer.from(await shown.arrayBuffer()))).toBe(icon.sizes)
  }
})

it('names the manifest and an icon for the home screen on every page, the door included', async () => {
  for (const [role, path] of [
    ['helper', '/'],
    [null, '/sign-in'],
  ] as const) {
    const page = await (await yard.ask(role, path)).text()
    expect(page).toContain('<link rel="manifest" href="/manifest.webmanifest"/>')
    expect(page).toContain('<link rel="apple-touch-icon" href="/icons/icon-touch-180.png"/>')
  }
  expect(sizeOf(readFileSync(join(PUBLIC, 'icons/icon-touch-180.png')))).toBe('180x180')
})
