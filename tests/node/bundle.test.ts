/** The one file that Node runs, and what goes into the package: no sources, no tests, and nothing that has to be fetched but what is native. */
import { spawn, spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { isBuiltin } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { beforeAll, describe, expect, test } from 'vitest'
import { readerOf } from '../../src/node/reader/reader.ts'
import { testYard } from '../support/yard-app.ts'

const ROOT = join(import.meta.dirname, '../..')
const BUILT = join(ROOT, 'dist/server/resettle.js')
const pkg = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as {
  name: string
  dependencies: Record<string, string>
  bin: Record<string, string>
}

describe('the package', () => {
  // In a checkout the command builds what it runs where that is older than the sources.
  beforeAll(() => {
    const help = spawnSync(process.execPath, [join(ROOT, 'src/bin.mjs'), '--help'], { encoding: 'utf8' })
    expect(help.stdout).toContain('usage: resettle')
  })

  test('has at most four dependencies, and the file imports no others', () => {
    const imports = readFileSync(BUILT, 'utf8').matchAll(/^import\b[^'"\n]*["']([^'"]+)["']/gm)
    const outside = [...imports].map((m) => m[1] ?? '').filter((name) => !isBuiltin(name))
    expect([...new Set(outside)]).toEqual(Object.keys(pkg.dependencies))
    expect(outside.length).toBeLessThanOrEqual(4)
  })

  test('says whose work is in it, under which licence, and holds a bill of materials of just that', () => {
    spawnSync(process.execPath, [join(ROOT, 'src/what-is-inside.mjs')], { cwd: ROOT })
    const licences = readFileSync(join(ROOT, 'dist/licences.txt'), 'utf8')
    const { components } = JSON.parse(readFileSync(join(ROOT, 'dist/sbom.json'), 'utf8')) as {
      components: { name: string; version: string; licenses?: unknown[] }[]
    }
    const named = new Set(components.map((c) => c.name))
    const map = JSON.parse(readFileSync(`${BUILT}.map`, 'utf8')) as { sources: string[] }
    const packages = map.sources.flatMap((s) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(s)?.[1] ?? [])
    expect(new Set(packages).size).toBeGreaterThan(10)
    for (const name of new Set(packages)) {
      expect(licences, name).toContain(`\n${name} `)
      expect([...named], name).toContain(name)
    }
    for (const name of Object.keys(pkg.dependencies)) expect([...named]).toContain(name)
    expect(components.filter((c) => (c.licenses ?? []).length === 0).map((c) => c.name)).toEqual([])
    expect([...named]).not.toContain('vitest')
    expect(licences).not.toContain('Licence: not stated')
  })

  test('tells where in the sources something failed', () => {
    const map = JSON.parse(readFileSync(`${BUILT}.map`, 'utf8')) as { sources: string[] }
    expect(map.sources.some((s) => s.endsWith('src/recovery/plan.ts'))).toBe(true)
  })

  test('makes long pages in its thread', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'resettle-bundle-'))
    const file = join(folder, 'resettle.db')
    const yard = testYard({ file })
    const reader = readerOf({ program: pathToFileURL(BUILT), file, zone: 'UTC', report: () => {} })
    const answer = await reader.answer({
      method: 'GET',
      url: 'http://yard.test/review',
      headers: new Headers({ host: 'yard.test', accept: 'text/html' }),
      viewer: {
        id: 'o',
        name: 'Odalys',
        role: 'operator',
        state: 'active',
        language: null,
        createdAt: '',
        createdBy: null,
        session: 's',
      },
      now: new Date(),
      signal: new AbortController().signal,
    })
    expect(answer.status).toBe(200)
    expect(await answer.text()).toContain('<h1>')
    await reader.close()
    yard.services.close()
    rmSync(folder, { recursive: true, force: true })
  })

  test('unpacked beside what is native, with no network, serves the yard; no source of the house is in it', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'resettle-installed-'))
    const home = join(folder, 'node_modules')
    const at = join(home, pkg.name)
    const packed = spawnSync('npm', ['pack', '--json', '--ignore-scripts', '--pack-destination', folder], {
      cwd: ROOT,
      encoding: 'utf8',
    })
    const [{ filename = '', files = [] } = {}] = JSON.parse(packed.stdout) as {
      filename?: string
      files?: { path: string }[]
    }[]
    const paths = files.map((f) => f.path)
    expect(paths.filter((p) => /^migrations\/\d+.*\.sql$/.test(p)).length).toBeGreaterThan(5)
    // The command itself, which starts the one file; no other source.
    expect(paths.filter((p) => /^(src|tests|demo|web)\//.test(p))).toEqual([pkg.bin.resettle])

    mkdirSync(at, { recursive: true })
    spawnSync('tar', ['-xzf', join(folder, filename), '--strip-components=1', '-C', at])
    // What npm fetches for it: the one native package, with what it finds its binary by.
    for (const name of ['better-sqlite3', 'bindings', 'file-uri-to-path'])
      cpSync(join(ROOT, 'node_modules', name), join(home, name), {
        recursive: true,
        filter: (from) => !/better-sqlite3\/(deps|src)$/.test(from),
      })
    const server = spawn(process.execPath, [join(at, pkg.bin.resettle ?? ''), 'serve', '--port', '0'], {
      cwd: folder,
      env: { PATH: process.env.PATH ?? '', RESETTLE_DATA: join(folder, 'yard') },
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    try {
      const url = await new Promise<string>((found, failed) => {
        let said = ''
        const read = (chunk: Buffer): void => {
          said += chunk.toString()
          const address = /http:\/\/[\w.:]+\d/.exec(said)?.[0]
          if (address !== undefined) found(address)
        }
        server.stdout.on('data', read)
        server.stderr.on('data', read)
        server.on('exit', () => failed(new Error(said)))
      })
      const page = await fetch(url)
      const text = await page.text()
      expect(page.status).toBe(200)
      const style = /href="([^"]+\.css)"/.exec(text)?.[1] ?? ''
      expect((await fetch(new URL(style, url))).headers.get('content-type')).toContain('text/css')
    } finally {
      server.removeAllListeners('exit')
      const gone = new Promise((done) => server.on('exit', done))
      server.kill()
      await gone
      rmSync(folder, { recursive: true, force: true })
    }
  })
})
