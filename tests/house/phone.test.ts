/** The service worker is the server's pages without the server: nothing it imports may need Node or the database. */
import { existsSync, readFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { expect, test } from 'vitest'
import { OF_THE_SERVER } from '../../web/vite.config.ts'

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

/** Words that are said: 'words.paper', or taken out of them: '{ paper } = frame.words'. */
const SAYS = new RegExp(
  `\\b(w|words)\\.(${OF_THE_SERVER.join('|')})\\b|\\b(${OF_THE_SERVER.join('|')})\\b[^}\\n]*\\}(: | = .*)([wW]ords|\\bw\\b)`,
)

test('the worker says no words that it is built without', () => {
  const says = (from: string): string[] =>
    reached(join(ROOT, from))
      .files.filter((file) => !file.includes('/src/words/') && SAYS.test(readFileSync(file, 'utf8')))
      .map((file) => relative(ROOT, file))
  expect(says('src/phone/service-worker.ts')).toEqual([])
  // Of the server each is said somewhere.
  for (const page of ['paper/page.tsx', 'calendar/page.tsx', 'messages/page.tsx', 'api/tokens-page.tsx'])
    expect(says(`src/features/${page}`), page).not.toEqual([])
})

test('the rule itself can fail', () => {
  expect(importsOf("import { readFileSync } from 'node:fs'")).toEqual(['node:fs'])
  expect(importsOf("import type { Server } from 'node:http'")).toEqual([])
  expect(importsOf("import { type A, type B } from './a.ts'\nexport { c } from './c.ts'")).toEqual(['./c.ts'])
  expect(reached(join(ROOT, 'src/node/listen.ts')).packages.has('@hono/node-server')).toBe(true)
})
