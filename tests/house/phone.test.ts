/** The service worker is the server's pages without the server: nothing it imports may need Node or the database. */
import { existsSync, readFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { expect, test } from 'vitest'
import { UNSAID } from '../../src/phone/unsaid.ts'

const ROOT = join(import.meta.dirname, '../..')
/** Packages that run in a worker. */
const SAFE = /^(hono(\/.*)?|zod\/mini|@stdlib\/.+|uuid|idb|fastest-levenshtein|uqr)$/

/** What stays when types are taken out: imports and exports of values. */
function importsOf(text: string): string[] {
  return [...text.matchAll(/^(?:import|export)\b(?!\s+type\b)([^'";]*?)\bfrom '([^']+)'|^import '([^']+)'/gm)]
    .filter(([, names = 'x']) => !/^\s*\{(\s*type [^,}]+,?)+\s*\}\s*$/.test(names))
    .map((m) => m[2] ?? m[3] ?? '')
}

/** Every file reached from one, by the imports that are left when it is built, and every package. */
function reached(from: string): { files: string[]; packages: Map<string, string> } {
  const files = new Set<string>()
  const packages = new Map<string, string>()
  const visit = (file: string): void => {
    if (files.has(file)) return
    files.add(file)
    for (const target of importsOf(readFileSync(file, 'utf8')))
      if (target.startsWith('.')) visit(join(dirname(file), target))
      else if (!packages.has(target)) packages.set(target, relative(ROOT, file))
  }
  visit(from)
  return { files: [...files], packages }
}

test('the worker reaches the pages of the round, and no package but those that run in a browser', () => {
  const { files, packages } = reached(join(ROOT, 'src/phone/service-worker.ts'))
  const names = files.map((f) => relative(ROOT, f))
  expect(names).toContain('src/features/today/route.tsx')
  expect(names).toContain('src/store/append.ts')
  expect(names.every((name) => existsSync(join(ROOT, name)))).toBe(true)
  expect(
    [...packages].filter(([name]) => !SAFE.test(name)).map(([name, by]) => `${by} imports ${name}`),
  ).toEqual([])
})

/** A line that takes words of one of those parts of the catalogue. */
const says = new RegExp(
  `\\bwords(\\b.*\\.words)?\\.(${UNSAID.join('|')})\\b|\\{[^}]*\\b(${UNSAID.join('|')})\\b[^}]*\\} = .*\\bwords\\b`,
)

test('no page of the worker says what it is built without', () => {
  const { files } = reached(join(ROOT, 'src/phone/service-worker.ts'))
  expect(files.filter((f) => says.test(readFileSync(f, 'utf8'))).map((f) => relative(ROOT, f))).toEqual([])
  for (const name of UNSAID) {
    const { files: all } = reached(join(ROOT, 'src/node/app.ts'))
    const said = new RegExp(`\\b${name}\\b`)
    expect(
      all.some((f) => says.test(readFileSync(f, 'utf8')) && said.test(readFileSync(f, 'utf8'))),
      name,
    ).toBe(true)
  }
})

test('the rule itself can fail', () => {
  expect(importsOf("import { readFileSync } from 'node:fs'")).toEqual(['node:fs'])
  expect(importsOf("import type { Server } from 'node:http'")).toEqual([])
  expect(importsOf("import { type A, type B } from './a.ts'\nexport { c } from './c.ts'")).toEqual(['./c.ts'])
  expect(reached(join(ROOT, 'src/node/listen.ts')).packages.has('@hono/node-server')).toBe(true)
})
